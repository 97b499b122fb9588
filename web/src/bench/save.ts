// Keeps the open job: first on this device, then at the server, one call at a time. `sync` says
// "saved" only once the server has acknowledged, "offline" once the device has.

import { cabinet } from "../keep/cabinet";
import { deviceJobs, isPending, type Device, type DeviceJob } from "../keep/device";
import { rebase } from "../keep/merge";
import { pull, push, type Pusher } from "../keep/push";
import { NotThere, Refused, server } from "../keep/server";
import type { Clash, ClashProblem, Job } from "../contract";
import { answerSoon } from "./answer";
import { same } from "./pointer";
import { heard, serverThere, unheard } from "./reach";
import {
  author, canRedo, canUndo, clash, job, jobId, refused, revision, said, sync,
} from "./state";
import { Timeline } from "./timeline";

const SAVE_MS = 400;

export const timeline = new Timeline();
/** The record that this page last saw on the device. */
let record: DeviceJob | null = null;
/** What of the job on the bench has been written to the device. */
let written: Job | null = null;
let timer: ReturnType<typeof setTimeout> | undefined;
let turn: Promise<void> = Promise.resolve();
let opened: Promise<Device> | undefined;

const news = typeof BroadcastChannel === "undefined" ? null : new BroadcastChannel("toft");

export function device(): Promise<Device> {
  return (opened ??= cabinet().then(deviceJobs));
}

export async function pusher(): Promise<Pusher> {
  return { device: await device(), server, by: author.peek() };
}

/** One after the other: what changes the record waits for what changed it before. */
function inTurn<T>(task: () => Promise<T>): Promise<T> {
  const result = turn.then(task);
  turn = result.then(() => {}, () => {});
  return result;
}

export function toldUndo(): void {
  canUndo.value = timeline.past.length > 0 || !!(serverThere.peek() && record?.server?.canUndo);
  canRedo.value = timeline.future.length > 0 || !!(serverThere.peek() && record?.server?.canRedo);
}

/** Lays a record on the bench; nothing of another job is left there. */
export function take(next: DeviceJob): void {
  record = next;
  written = next.job;
  timeline.clear();
  jobId.value = next.id;
  revision.value = next.server?.revision ?? 0;
  clash.value = null;
  refused.value = null;
  sync.value = isPending(next) ? "offline" : "saved";
  job.value = next.job;
  toldUndo();
}

/** Of a job that no server keeps, the device remembers the steps across visits. */
export async function recallSteps(): Promise<void> {
  const held = record;
  if (!held || held.server) return;
  const here = await device();
  const told = (await here.revisions(held.id)).slice(-50);
  const states = await Promise.all(told.map(({ revision: n }) => here.revision(held.id, n)));
  if (record !== held || timeline.past.length > 0) return;
  states.forEach((state, i) => {
    const before = states[i - 1]?.job;
    if (!state || !before) return;
    timeline.past.push({ before, after: state.job, words: state.what, revision: 0 });
  });
  toldUndo();
}

/** Takes over what came back, under what was changed here since. */
function adopt(next: DeviceJob): void {
  const now = job.peek();
  const merged = now && written ? rebase(written, now, next.job) : next.job;
  record = next;
  written = next.job;
  revision.value = next.server?.revision ?? 0;
  if (!same(now, merged)) {
    job.value = merged;
    answerSoon("tap");
  }
  toldUndo();
}

export function saveSoon(): void {
  if (sync.peek() !== "clash") sync.value = "saving";
  clearTimeout(timer);
  timer = setTimeout(() => void save(), SAVE_MS);
}

/** Saves what is not saved; settles when device and server (where there is one) have answered. */
export function save(): Promise<void> {
  clearTimeout(timer);
  return inTurn(saveNow);
}

async function saveNow(): Promise<void> {
  if (!record || !job.peek()) return;
  const steps = timeline.unsent();
  if (!(await writeHere(steps))) return;
  if (sync.peek() === "clash") return;
  await pushNow(steps);
}

async function writeHere(steps: ReturnType<Timeline["unsent"]>): Promise<boolean> {
  const now = job.peek()!;
  if (!record || same(now, written)) return true;
  const words = steps.at(-1)?.words ?? "";
  try {
    const kept = await (await device()).write(
      { id: record.id, from: record, job: now, words, by: author.peek() });
    if (kept.clashes.length > 0) {
      clashHere(kept.record, kept.clashes, now);
      return false;
    }
    written = now;
    adopt(kept.record);
    news?.postMessage({ id: record.id });
    return true;
  } catch (error) {
    console.warn(error);
    sync.value = "unkept";
    return true;  // the server may still take it
  }
}

async function pushNow(steps: ReturnType<Timeline["unsent"]>): Promise<void> {
  const sending = record!;
  if (serverThere.peek() !== true) return settledHere();
  try {
    const pushed = await push(sending, await pusher());
    heard();
    if (record?.id !== sending.id) return;
    if (pushed.outcome === "clash") {
      clash.value = pushed.clash;
      sync.value = "clash";
      return;
    }
    timeline.sent(steps, pushed.record.server!.revision);
    refused.value = null;
    adopt(pushed.record);
    if (pushed.merged) said.value = "merged";
    sync.value = same(job.peek(), written) ? "saved" : "saving";
  } catch (error) {
    if (error instanceof NotThere) unheard();
    else if (error instanceof Refused) refused.value = error.problem;
    else console.warn(error);
    settledHere();
  }
}

async function settledHere(): Promise<void> {
  const lasting = (await device()).lasting;
  if (!same(job.peek(), written)) sync.value = "saving";
  else sync.value = lasting ? "offline" : "unkept";
}

function clashHere(there: DeviceJob, clashes: Clash[], mine: Job): void {
  const merged = rebase(record!.job, mine, there.job);
  clash.value = {
    type: "about:blank", title: "", status: 409, detail: "", clashes, merged_job: merged,
    current: {
      id: there.id, revision: there.server?.revision ?? 0, job: there.job, title: there.title,
      archived: there.archived, changed_at: there.changed_at, changed_by: there.changed_by,
      can_undo: false, can_redo: false,
    },
  } satisfies ClashProblem;
  record = there;
  written = there.job;
  sync.value = "clash";
}

/** Ends a clash with the job as chosen, which is saved on top of what the other made. */
export function resolve(chosen: Job): Promise<void> {
  return inTurn(async () => {
    const problem = clash.peek();
    if (!problem || !record) return;
    const { current } = problem;
    const server = current.revision === 0 ? record.server : {
      revision: current.revision, job: current.job,
      canUndo: current.can_undo, canRedo: current.can_redo,
    };
    record = await (await device()).update(record.id, (old) =>
      ({ ...old, job: chosen, server, edit: old.edit + 1 }));
    const before = job.peek()!;
    written = chosen;
    job.value = chosen;
    timeline.did({ before, after: chosen, words: "", revision: null }, false);
    clash.value = null;
    sync.value = "saving";
    answerSoon("tap");
    await pushNow(timeline.unsent());
  });
}

/** One step back or forth at the server, which remembers them across visits. */
export function stepAtServer(way: "undo" | "redo"): Promise<boolean> {
  return inTurn(async () => {
    if (!record?.server || isPending(record)) return false;
    const { id } = record;
    const from = record.server.revision;
    try {
      const state = await server[way](id, from, author.peek());
      heard();
      const kept = await (await device()).update(id, (old) => ({
        ...old, job: state.job, title: state.title, edit: old.edit + 1, words: [],
        server: { revision: state.revision, job: state.job,
          canUndo: state.can_undo, canRedo: state.can_redo },
      }));
      if (record?.id !== id) return true;
      adopt(kept);
      sync.value = "saved";
      return true;
    } catch (error) {
      if (error instanceof NotThere) unheard();
      return false;
    }
  });
}

/** Whether the next step back is one that the server made. */
export function serverRevision(): number | null {
  return record?.server && !isPending(record) ? record.server.revision : null;
}

/** Looks what the server has, and sends what it has not. `told`: a revision that it told of. */
export function catchUp(told = Infinity): Promise<void> {
  return inTurn(async () => {
    if (!record || sync.peek() === "clash" || serverThere.peek() === "never") return;
    if (record.server && told <= record.server.revision) return;
    if (isPending(record) || !same(job.peek(), written)) return saveNow();
    try {
      const next = await pull(record.id, await pusher());
      heard();
      if (next.id === record?.id && next.edit !== record.edit) {
        adopt(next);
        said.value = "changed-elsewhere";
      }
      sync.value = "saved";
    } catch (error) {
      if (error instanceof NotThere) unheard();
    }
  });
}

/** Jobs that are not on the bench and have edits that the server has not seen. */
export async function pushOthers(): Promise<void> {
  for (const other of await (await device()).all()) {
    if (other.id === record?.id || !isPending(other)) continue;
    try {
      await push(other, await pusher());
    } catch (error) {
      if (error instanceof NotThere) return unheard();
    }
  }
}

news?.addEventListener("message", ({ data }) => {
  void inTurn(async () => {
    if (!record || data.id !== record.id) return;
    const there = await (await device()).read(record.id);
    if (there && there.edit !== record.edit && same(job.peek(), written)) adopt(there);
  });
});
