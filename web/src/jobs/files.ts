// Jobs as files on this machine.

import type { Job } from "../contract";

export class BadFile extends Error {}

export function saveFile(name: string, content: unknown): void {
  const text = `${JSON.stringify(content, null, 2)}\n`;
  const url = URL.createObjectURL(new Blob([text], { type: "application/json" }));
  const link = Object.assign(document.createElement("a"), { href: url, download: name });
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}

export function fileName(job: Job): string {
  const plain = (job.title ?? "").normalize("NFKD").toLowerCase()
    .replace(/[^a-z0-9]+/g, "-").replace(/^-+|-+$/g, "").slice(0, 60);
  return `${plain || "job"}.json`;
}

/** A job file, or a file of many jobs; anything else is a BadFile. */
export async function readFile(file: Blob): Promise<{ job: Job } | { store: unknown }> {
  let read: unknown;
  try {
    read = JSON.parse(await file.text());
  } catch (error) {
    throw new BadFile((error as Error).message);
  }
  const format = (read as { format?: unknown } | null)?.format;
  if (format === "toft-job/1") return { job: read as Job };
  if (format === "toft-store/1") return { store: read };
  throw new BadFile(String(format ?? typeof read));
}
