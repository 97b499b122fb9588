// Opening, beginning and ending jobs.

import type { Job, JobLine } from "../contract";
import { isPending } from "../keep/device";
import { newId } from "../keep/id";
import { pull, push } from "../keep/push";
import { NotThere, server } from "../keep/server";
import { answerSoon } from "./answer";
import { heard, serverThere, tryServer, unheard } from "./reach";
import { catchUp, device, pushOthers, pusher, recallSteps, save, take, takeUpNoted } from "./save";
import { ask, author, chosenKey, faults, first, job, jobId, levers } from "./state";
import { watch } from "./watch";

/** A job of which nothing is known yet but that there is a house: the earthing too is found out. */
export function blankJob(title?: string): Job {
  return {
    format: "toft-job/1",
    ...(title ? { title } : {}),
    intake: {} as Job["intake"],
    buildings: [{ id: "house", at: "origin" }],
    runs: [],
  };
}

function cleared(): void {
  chosenKey.value = null;
  first.value = null;
  ask.value = null;
  levers.value = null;
  faults.value = [];
}

const LAST = "toft/last-job";
const remembered = (id?: string): string | null => {
  try {
    if (id) localStorage.setItem(LAST, id);
    return localStorage.getItem(LAST);
  } catch {
    return null;
  }
};

function follow(id: string): void {
  const there = serverThere.peek() === true;
  watch(there ? id : null, (revision) => void catchUp(revision));
}

/** Opens a job: from the server where it has it, else as this device keeps it. */
export async function openJob(id: string): Promise<boolean> {
  await save();
  let record = await (await device()).read(id);
  if (serverThere.peek() === true && !(record && isPending(record))) {
    try {
      record = await pull(id, await pusher());
    } catch (error) {
      if (error instanceof NotThere) unheard();
    }
  }
  if (!record) return false;
  cleared();
  take(record);
  remembered(id);
  answerSoon("tap");
  follow(id);
  void recallSteps();
  void catchUp();
  return true;
}

/** Begins a job, on this device first; the server is told when it can be. */
export async function newJob(document: Job = blankJob()): Promise<string> {
  await save();
  const id = newId();
  const { record } = await (await device()).write(
    { id, from: null, job: document, words: "begun", by: author.peek() });
  cleared();
  take(record);
  remembered(id);
  answerSoon("tap");
  void save().then(() => follow(id));
  return id;
}

/** All jobs that server or device know, newest change first. */
export async function listJobs(find: string, archived: boolean): Promise<JobLine[]> {
  const lines = new Map<string, JobLine>();
  const words = find.trim().toLowerCase();
  for (const record of await (await device()).all()) {
    if (record.archived !== archived || !record.title.toLowerCase().includes(words)) continue;
    const { id, title, changed_at, changed_by } = record;
    lines.set(id, {
      id, title, changed_at, changed_by, archived, revision: record.server?.revision ?? 0,
    });
  }
  if (serverThere.peek() === true) {
    try {
      for (const line of await server.list(find.trim(), archived)) {
        if (line.archived === archived) lines.set(line.id, { ...line, archived: line.archived });
      }
      heard();
    } catch (error) {
      if (error instanceof NotThere) unheard();
    }
  }
  return [...lines.values()].sort((a, b) => b.changed_at.localeCompare(a.changed_at));
}

export async function archiveJob(id: string, archived: boolean): Promise<void> {
  const here = await device();
  let record = await here.read(id);
  if (serverThere.peek() === true) {
    if (record && isPending(record)) await push(record, await pusher());
    await server.archive(id, archived, author.peek());
    record = await here.read(id);
  }
  if (record) await here.update(id, (old) => ({ ...old, archived, edit: old.edit + 1 }));
}

/** What the page begins with: the job inside it, the last one, the server's newest, the demo. */
export async function openFirst(): Promise<void> {
  await takeUpNoted();
  const inside = document.getElementById("toft-job");
  if (inside?.textContent) return openInside(JSON.parse(inside.textContent));
  await Promise.race([tryServer(), new Promise((done) => setTimeout(done, 1200))]);
  const last = remembered();
  if (last && await openJob(last)) return;
  const [newest] = await listJobs("", false);
  if (newest && await openJob(newest.id)) return;
  await newJob(await demoJob());
}

interface Inside { id: string; job: Job }

/** A pocket page brings its job; what was changed in it before is kept by the device. */
async function openInside({ id, job: document }: Inside): Promise<void> {
  if (await openJob(id)) return;
  const { record } = await (await device()).write(
    { id, from: null, job: document, words: "begun", by: author.peek() });
  cleared();
  take(record);
  answerSoon("tap");
}

export async function demoJob(): Promise<Job> {
  return (await import("../../../examples/demo.json")).default as unknown as Job;
}

/** After the server came back: what waits is sent, and the open job is watched again. */
export async function serverBack(): Promise<void> {
  await catchUp();
  await pushOthers();
  const id = jobId.peek();
  if (id && job.peek()) follow(id);
}
