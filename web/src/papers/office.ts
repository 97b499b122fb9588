// Papers at the server: looked at, fetched as PDF, issued.

import type { Issue, Job } from "../contract";
import { call, LONG_MS, NotThere, Refused } from "../keep/server";

export interface Wish {
  job: Job;
  kind: string;
  key?: string;
  date: string;
}

const jobPapers = (id: string) => `/api/jobs/${encodeURIComponent(id)}/papers`;

export async function issues(id: string): Promise<Issue[]> {
  return (await call<{ issues: Issue[] }>(jobPapers(id))).issues;
}

export interface IssueWish {
  kinds?: string[];
  key?: string;
  date: string;
  /** The revision on screen: the server freezes no other. */
  revision: number;
}

export async function issue(id: string, wish: IssueWish, by: string): Promise<Issue> {
  return call<Issue>(jobPapers(id), { method: "POST", body: wish, by, wait: LONG_MS });
}

/** One paper as the server prints it; it keeps nothing of it. */
export async function pdf(wish: Wish): Promise<Blob> {
  let answer: Response;
  try {
    answer = await fetch("/api/preview", {
      method: "POST",
      credentials: "same-origin",
      cache: "no-store",
      headers: { "content-type": "application/json", "toft-page": "1" },
      body: JSON.stringify(wish),
    });
  } catch (error) {
    throw new NotThere(String(error));
  }
  if (answer.ok && answer.headers.get("content-type")?.startsWith("application/pdf")) {
    return answer.blob();
  }
  if (answer.headers.get("content-type")?.startsWith("application/problem+json")) {
    throw new Refused(answer.status, await answer.json());
  }
  throw new NotThere(String(answer.status));
}

/** Gives the browser a file to save. */
export function handOver(file: Blob, name: string): void {
  const address = URL.createObjectURL(file);
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
