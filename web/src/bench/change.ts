// Every change of the job goes through here: it has words for the history, can be undone, is saved
// and answered.

import type { Job } from "../contract";
import { answerSoon } from "./answer";
import { placeWords } from "../shell/format";
import { same, valueAt, withValue } from "./pointer";
import { save, saveSoon, serverRevision, stepAtServer, timeline, toldUndo } from "./save";
import { job, said } from "./state";

/** How a change comes: at once (a tap), or letter by letter. */
export type Pace = "tap" | "typing";

/** Edits a copy of the job. `edit` may change the copy or return another job. */
export function change(words: string, edit: (copy: Job) => Job | void, pace: Pace = "tap"): void {
  const before = job.peek();
  if (!before) return;
  const copy = structuredClone(before);
  const after = edit(copy) ?? copy;
  if (same(before, after)) return;
  timeline.did({ before, after, words, revision: null }, pace === "typing");
  lay(after, pace);
}

function lay(after: Job, pace: Pace): void {
  job.value = after;
  toldUndo();
  saveSoon();
  answerSoon(pace);
}

/** Puts one value into the job; undefined takes it out (not known). */
export function set(pointer: string, value: unknown, words = "", pace: Pace = "tap"): void {
  change(words || placeWords(pointer), (copy) => withValue(copy, pointer, value), pace);
}

export function get<T = unknown>(pointer: string): T | undefined {
  return valueAt(job.value, pointer) as T | undefined;
}

export const undo = (): Promise<void> => step("undo");
export const redo = (): Promise<void> => step("redo");

/**
 * What the server has not seen is taken back here at once. What it has is taken back there, so
 * that its history tells it; where it cannot be reached the step back is a new edit.
 */
async function step(way: "undo" | "redo"): Promise<void> {
  if (!job.peek()) return;
  if (timeline.unsent().length > 0 && way === "undo") await save();
  const last = way === "undo" ? timeline.past.at(-1) : timeline.future.at(-1);
  const from = serverRevision();
  const atServer = from !== null && (!last || last.revision !== null);
  if (atServer && await stepAtServer(way)) {
    if (way === "undo" && last) timeline.serverBack(last.revision!);
    if (way === "redo") forthWith(last?.revision ?? null);
    toldUndo();
  } else {
    const next = way === "undo" ? timeline.back(job.peek()!) : timeline.forth(job.peek()!);
    if (!next) return;
    lay(next, "tap");
  }
  said.value = way;
}

/** The steps that came back together with the server's. */
function forthWith(number: number | null): void {
  const now = serverRevision();
  while (number !== null && timeline.future.at(-1)?.revision === number) {
    timeline.past.push({ ...timeline.future.pop()!, revision: now });
  }
}
