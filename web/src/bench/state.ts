// What is on the bench: one job, what is known of it, and how it is kept. Signals only; what
// changes them stands beside (change.ts, answer.ts, keep.ts).

import { computed, signal } from "@preact/signals";
import type { Ask, ClashProblem, Fault, First, Job, Levers, Problem } from "../contract";

/** "offline": kept on this device; "unkept": neither server nor device holds it. */
export type Sync = "saved" | "saving" | "offline" | "clash" | "unkept";

export const job = signal<Job | null>(null);
export const title = computed(() => job.value?.title ?? "");
export const hasJob = computed(() => job.value !== null);
export const jobId = signal<string | null>(null);
/** Revision that the keeper acknowledged last; 0 before the first. */
export const revision = signal(0);

/** The revision on screen, where the server has the job as it is on screen; else null. */
export const revisionShown = (): number | null =>
  sync.peek() === "saved" && revision.peek() > 0 ? revision.peek() : null;

export const first = signal<First | null>(null);
/** Which scheme is looked at; null for the first of the list. */
export const chosenKey = signal<string | null>(null);
export const ask = signal<Ask | null>(null);
export const levers = signal<Levers | null>(null);
/** Codes of faults that are the page's own: its engine did not come, or did not answer. */
export const NOT_LOADED = "program-not-loaded";
export const BROKE_OFF = "program-broke-off";
/** This job needs the whole engine, and only its first module is here. */
export const NOT_WHOLE = "program-not-whole";
export const ofProgram = ({ code }: Fault): boolean =>
  code === NOT_LOADED || code === BROKE_OFF || code === NOT_WHOLE;

/** What the engine finds wrong with the job; the answer before it stays, as one of before. */
export const faults = signal<Fault[]>([]);
/** True once an answer has been waited for long enough to say so. */
export const working = signal(false);
/** True while `ask` and `levers` still speak of an earlier state of the job. */
export const behind = signal(false);

export const sync = signal<Sync>("saved");
export const clash = signal<ClashProblem | null>(null);
/** What the server says of a job that it does not take. */
export const refused = signal<Problem | null>(null);
export const author = signal("");
/** Words of the last change, for the live region. */
export const said = signal("");
export const canUndo = signal(false);
export const canRedo = signal(false);
/** Own price book as text; null for the book that the engine brings. */
export const ownPrices = signal<string | null>(null);
