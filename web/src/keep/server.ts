// The server over HTTP. Every failure to reach it is NotThere; what it refuses is Refused.

import type {
  About, ClashProblem, JobLine, JobState, Job, PairedDevice, PairingNow, Problem, Revision,
  RevisionState, Saved,
} from "../contract";

/** No server answered. */
export class NotThere extends Error {}

/** The server answered that it will not. */
export class Refused extends Error {
  constructor(readonly status: number, readonly problem: Problem) {
    super(problem.detail || problem.title || String(status));
  }

  get clash(): ClashProblem | undefined {
    const problem = this.problem as ClashProblem;
    return this.status === 409 && Array.isArray(problem.clashes) ? problem : undefined;
  }
}

const WAIT_MS = 8000;
/** For what takes long to make or to carry: papers, photos, whole stores. */
export const LONG_MS = 120_000;

export interface Call {
  method?: string;
  body?: unknown;
  by?: string;
  /** How long an answer is waited for, ms. */
  wait?: number;
}

/** One call; JSON comes back, or nothing where the server says nothing. */
export async function call<T>(path: string, how: Call = {}): Promise<T> {
  const { method = "GET", body, by, wait = WAIT_MS } = how;
  const headers: Record<string, string> = { accept: "application/json" };
  if (method !== "GET") headers["toft-page"] = "1";
  if (by) headers["toft-by"] = encodeURIComponent(by);
  const raw = body instanceof Blob;
  if (body !== undefined && !raw) headers["content-type"] = "application/json";
  let answer: Response;
  try {
    answer = await fetch(path, {
      method, headers, credentials: "same-origin", cache: "no-store",
      signal: AbortSignal.timeout(wait),
      ...(body === undefined ? {} : { body: raw ? body : JSON.stringify(body) }),
    });
  } catch (error) {
    throw new NotThere(String(error));
  }
  return read<T>(answer);
}

async function read<T>(answer: Response): Promise<T> {
  if (answer.status === 204) return undefined as T;
  const kind = answer.headers.get("content-type") ?? "";
  if (!/^application\/(problem\+)?json/.test(kind)) {
    throw new NotThere(`${answer.status}, ${kind || "nothing"}`);
  }
  let document: unknown;
  try {
    document = await answer.json();
  } catch (error) {
    throw new NotThere(String(error));
  }
  if (!answer.ok) throw new Refused(answer.status, document as Problem);
  return document as T;
}

const jobPath = (id: string) => `/api/jobs/${encodeURIComponent(id)}`;

export const server = {
  about: () => call<About>("/api/about"),
  pair: (code: string, name: string) =>
    call<void>("/api/pair", { method: "POST", body: { code, name } }),
  list: async (find: string, archived: boolean): Promise<JobLine[]> => {
    const query = new URLSearchParams({ ...(find ? { find } : {}), ...(archived ? { archived: "1" } : {}) });
    return (await call<{ jobs: JobLine[] }>(`/api/jobs?${query}`)).jobs;
  },
  create: (id: string, job: Job, by: string) =>
    call<JobState>("/api/jobs", { method: "POST", body: { job, id }, by }),
  read: (id: string) => call<JobState>(jobPath(id)),
  write: (id: string, put: { base: number; job: Job; what: string }, by: string) =>
    call<Saved>(jobPath(id), { method: "PUT", body: put, by }),
  undo: (id: string, base: number, by: string) =>
    call<JobState>(`${jobPath(id)}/undo`, { method: "POST", body: { base }, by }),
  redo: (id: string, base: number, by: string) =>
    call<JobState>(`${jobPath(id)}/redo`, { method: "POST", body: { base }, by }),
  archive: (id: string, archived: boolean, by: string) =>
    call<JobState>(`${jobPath(id)}/archived`, { method: "POST", body: { archived }, by }),
  revisions: async (id: string) =>
    (await call<{ revisions: Revision[] }>(`${jobPath(id)}/revisions`)).revisions,
  revision: (id: string, number: number) =>
    call<RevisionState>(`${jobPath(id)}/revisions/${number}`),
  exported: (id: string | null) =>
    call<Record<string, unknown>>(
      id ? `${jobPath(id)}/export` : "/api/export", { wait: LONG_MS }),
  imported: (file: unknown, by: string) =>
    call<Record<string, unknown>>("/api/import", { method: "POST", body: file, by, wait: LONG_MS }),
  pairing: () => call<PairingNow>("/api/pair"),
  renewCode: () => call<PairingNow>("/api/pair/renew", { method: "POST" }),
  devices: async () => (await call<{ devices: PairedDevice[] }>("/api/pair/devices")).devices,
  forget: (device: string) =>
    call<void>(`/api/pair/devices/${encodeURIComponent(device)}`, { method: "DELETE" }),
};

export type Server = typeof server;
