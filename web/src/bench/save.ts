// Keeps the open job: first on this device, then at the server, one call at a time. `sync` says
// "saved" only once the server has acknowledged, "offline" once the device has.

import { cabinet } from "../keep/cabinet";
import { deviceJobs, isPending, type Device, type DeviceJob } from "../keep/device";
import { newId } from "../keep/id";
import { note, strike, takeUp } from "../keep/journal";
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
/** The job as the keeper has it, as far as this page knows. */
let record: DeviceJob | null = null;
/** What the device holds of it: older than `record` where it had no room. */
let held: DeviceJob | null = null;
/** What of the job on the bench is in the record. */
let written: Job | null = null;
/** What the clash is about: the job as it was sent. */
let disputed: Job | null = null;
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

function hold(next: DeviceJob): void {
  record = next;
  if (!next.afloat) held = next;
  else if (held?.id !== next.id) held = null;
}

/** Lays a record on the bench; nothing of another job is left there. */
export function take(next: DeviceJob): void {
  hold(next);
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
  const begun = record;
  if (!begun || begun.server) return;
  const here = await device();
  const told = (await here.revisions(begun.id)).slice(-50);
  const states = await Promise.all(told.map(({ revision: n }) => here.revision(begun.id, n)));
  if (record !== begun || timeline.past.length > 0) return;
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
  hold(next);
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
  const here = await writeHere(steps);
  if (here === "clash" || sync.peek() === "clash") return;
  await pushNow(steps, here);
}

type Steps = ReturnType<Timeline["unsent"]>;
type Here = "kept" | "unkept" | "clash";

async function writeHere(steps: Steps): Promise<Here> {
  const now = job.peek()!;
  if (!record || (same(now, written) && !record.afloat)) {
    struck();
    return "kept";
  }
  const words = steps.at(-1)?.words ?? "";
  const from = { ...held ?? record, server: record.server };
  try {
    const kept = await (await device()).write(
      { id: record.id, from, job: now, words, by: author.peek() });
    if (kept.clashes.length > 0) {
      clashHere(kept.record, kept.clashes, now);
      return "clash";
    }
    written = now;
    adopt(kept.record);
    struck();
    news?.postMessage({ id: record.id });
    return "kept";
  } catch (error) {
    console.warn(error);
    return "unkept";  // the server may still take it
  }
}

/** The record that is sent: with what is on the bench where the device had no room for it. */
function toSend(steps: Steps, here: Here): DeviceJob {
  if (here === "kept") return record!;
  return { ...record!, job: job.peek()!, words: steps.map(({ words }) => words), afloat: true };
}

async function pushNow(steps: Steps, here: Here): Promise<void> {
  const sending = toSend(steps, here);
  if (serverThere.peek() !== true) return settledHere(here);
  try {
    const pushed = await push(sending, await pusher(), here === "kept" ? sending.job : held?.job);
    heard();
    if (record?.id !== sending.id) return;
    if (pushed.outcome === "clash") {
      clash.value = pushed.clash;
      disputed = sending.job;
      sync.value = "clash";
      return;
    }
    if (here !== "kept") written = sending.job;
    timeline.sent(steps, pushed.record.server!.revision);
    refused.value = null;
    adopt(pushed.record);
    news?.postMessage({ id: sending.id });
    if (pushed.merged) said.value = "merged";
    sync.value = same(job.peek(), written) ? "saved" : "saving";
  } catch (error) {
    if (error instanceof NotThere) unheard();
    else if (error instanceof Refused) refused.value = error.problem;
    else console.warn(error);
    await settledHere(here);
  }
}

async function settledHere(here: Here): Promise<void> {
  const lasting = (await device()).lasting && here === "kept";
  if (here === "kept" && !same(job.peek(), written)) sync.value = "saving";
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
  hold(there);
  written = there.job;
  disputed = mine;
  sync.value = "clash";
}

/**
 * Ends a clash with the job as chosen, which is saved on top of what the other made. What was changed
 * here while both were looked at goes on top of that.
 */
export function resolve(chosen: Job): Promise<void> {
  return inTurn(async () => {
    const problem = clash.peek();
    if (!problem || !record) return;
    const { current } = problem;
    const server = current.revision === 0 ? record.server : {
      revision: current.revision, job: current.job,
      canUndo: current.can_undo, canRedo: current.can_redo,
    };
    const before = job.peek()!;
    const after = disputed ? rebase(disputed, before, chosen) : chosen;
    record = { ...record, server };
    job.value = after;
    timeline.did({ before, after, words: "", revision: null }, false);
    clash.value = null;
    disputed = null;
    sync.value = "saving";
    answerSoon("tap");
    await saveNow();
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
export function catchUp(told?: number): Promise<void> {
  return inTurn(async () => {
    if (!record || sync.peek() === "clash" || serverThere.peek() === "never") return;
    if (told !== undefined && told === record.server?.revision) return;
    if (isPending(record) || !same(job.peek(), written)) return saveNow();
    try {
      const next = await pull(record.id, await pusher());
      heard();
      if (next.id === record?.id && next.edit !== record.edit) {
        adopt(next);
        said.value = "changed-elsewhere";
      }
      settledAsHeld();
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
    if (!there || there.edit === record.edit || !same(job.peek(), written)) return;
    adopt(there);
    settledAsHeld();
  });
});

const LOOK_MS = 3000;

/** Of what another page wrote: "saved" only where the server has it. If it has not soon, we send it. */
function settledAsHeld(): void {
  if (!same(job.peek(), written)) return;
  const pending = isPending(record!);
  if (sync.peek() === "clash" && pending) return;
  clash.value = null;  // decided in another page
  disputed = null;
  sync.value = pending ? "offline" : "saved";
  if (!pending || serverThere.peek() !== true) return;
  clearTimeout(timer);
  timer = setTimeout(() => void save(), LOOK_MS);
}

const page = newId();

const textStore = (): Storage | null => {
  try {
    return localStorage;
  } catch {
    return null;
  }
};

/** Notes at once what the device does not have yet. False: leaving now would lose it. */
export function noteUnwritten(): boolean {
  const now = job.peek();
  if (!record || !now || same(now, written)) return sync.peek() !== "unkept";
  const store = textStore();
  const { job: was, edit } = held ?? record;
  const words = timeline.unsent().at(-1)?.words ?? "";
  return !!store && note(page, { id: record.id, was, edit, job: now, words, by: author.peek() }, store);
}

function struck(): void {
  const store = textStore();
  if (store) strike(page, store);
}

/** What a page that was left noted last. */
export async function takeUpNoted(): Promise<void> {
  const store = textStore();
  if (store) await takeUp(await device(), store);
}
