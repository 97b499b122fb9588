// Every change of the job goes through here: it has words for the history, can be undone, is saved
// and answered.

import type { Job } from "../contract";
import { answerSoon } from "./answer";
import { valueAt, same, withValue } from "./pointer";
import { canRedo, canUndo, job } from "./state";

/** How a change comes: at once (a tap), or letter by letter. */
export type Pace = "tap" | "typing";

interface Step { job: Job; words: string }
let past: Step[] = [];
let future: Step[] = [];

function told(): void {
  canUndo.value = past.length > 0;
  canRedo.value = future.length > 0;
}

/** Edits a copy of the job. `edit` may change the copy or return another job. */
export function change(words: string, edit: (copy: Job) => Job | void, pace: Pace = "tap"): void {
  const before = job.peek();
  if (!before) return;
  const copy = structuredClone(before);
  const after = edit(copy) ?? copy;
  if (same(before, after)) return;
  past.push({ job: before, words });
  future = [];
  job.value = after;
  told();
  answerSoon(pace);
}

/** Puts one value into the job; undefined takes it out (not known). */
export function set(pointer: string, value: unknown, words = "", pace: Pace = "tap"): void {
  change(words || pointer, (copy) => withValue(copy, pointer, value), pace);
}

export function get<T = unknown>(pointer: string): T | undefined {
  return valueAt(job.value, pointer) as T | undefined;
}

export async function undo(): Promise<void> {
  const step = past.pop();
  if (!step || !job.peek()) return;
  future.push({ job: job.peek()!, words: step.words });
  job.value = step.job;
  told();
  answerSoon("tap");
}

export async function redo(): Promise<void> {
  const step = future.pop();
  if (!step || !job.peek()) return;
  past.push({ job: job.peek()!, words: step.words });
  job.value = step.job;
  told();
  answerSoon("tap");
}
