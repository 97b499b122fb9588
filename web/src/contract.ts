// What the page, its engine and the server promise one another. Answers of the engine are told here
// as far as the page reads them; schema/*.json says them whole.

import type { Fact, Job } from "./job";

export type * from "./job";

export interface Fault {
  code: string;
  /** Place in the job, as a JSON pointer; empty for the whole. */
  pointer: string;
  says: string;
  nearest: string | null;
  allowed: string[];
}

export interface Faults {
  format: "toft-faults/1";
  faults: Fault[];
}

export type Verdict = "meets" | "fails" | "caution" | "not known" | "does not apply";

export interface Basis {
  kind?: string;
  clause?: string;
  source?: string;
  locator?: string;
  basis?: string;
  note?: string;
}

export interface Finding {
  rule: string;
  clause: string;
  subject: string;
  value: number | null;
  limit: number | null;
  unit: string;
  at_least: boolean;
  use: number | null;
  verdict: string;
  says: string;
  basis: Basis | Basis[] | null;
}

export interface SchemePrice {
  net: number;
  vat: number;
  total: number;
  low?: number;
  high?: number;
  currency: string;
  basis: string;
}

/** One line of the list of schemes. */
export interface SchemeLine {
  rank: number;
  key: string;
  words: string;
  sentence: string;
  conditional_on: string[];
  price: SchemePrice;
  headroom: number;
  governed_by: string;
  dependability: number;
  earthing: unknown;
  feeds: unknown;
}

/** A whole scheme, as in toft-answer/1. */
export interface Scheme extends SchemeLine {
  buildings: Record<string, Record<string, unknown>>;
  runs: Record<string, Record<string, unknown>>;
  findings: Finding[];
  selectivity: Array<Record<string, unknown>>;
  house_work: unknown[];
  tell: Array<{ who: string; when: string; why: string }>;
  needs_a_person: string[];
  cautions: string[];
  [other: string]: unknown;
}

export interface Dropped {
  rule: string;
  count: number;
  says: string;
  nearest: unknown;
}

/** toft-first/1: what is on screen after each change. */
export interface First {
  format: "toft-first/1";
  job: string;
  sound: boolean;
  schemes: SchemeLine[];
  chosen: Scheme | null;
  chosen_key: string | null;
  dropped: Dropped[];
  assumed: string[];
  cautions: string[];
  demand: unknown;
  proved: boolean;
  stopped: boolean;
  search: Record<string, number>;
  rulebook?: { id: string; edition: string; data_version: string };
  edition?: string;
}

/** A fact that is open, and what hangs on it. */
export interface Unknown {
  fact: string;
  says: string;
  range: [number, number] | null;
  unit: string;
  from: "survey" | "rulebook";
  effect: "decides" | "changes the price only" | "does not matter" | "not looked at";
  hangs: string;
  answers: Array<{
    from: number; to: number; sound: boolean; key: string | null; scheme: string | null;
    price: [number, number] | null;
  }>;
  only_together: boolean;
  with: string[];
  may_save: number | null;
  may_save_with_others: number | null;
  worth: number | null;
  ask: boolean;
  why: string;
  question: string;
  how: string;
  by: "anyone" | "electrician" | "operator" | "";
  minutes: number | null;
}

export interface Ask {
  format: "toft-ask/1";
  job: string;
  sound: boolean;
  conditional: boolean;
  stands: string | null;
  price: number | null;
  stopped: boolean;
  proved: boolean;
  find_out: Unknown[];
  leave: Unknown[];
  assumed: string[];
  cautions: string[];
}

export interface Lever {
  lever: string;
  change: string;
  brings: string;
  opens: boolean;
  saves: number | null;
  cost: number | null;
  cost_says: string;
  net: number | null;
  headroom: number;
  dependability: number;
  key: string;
  scheme: string;
  price: number;
  places: string[];
}

export interface Levers {
  format: "toft-levers/1";
  sound: boolean;
  conditional: boolean;
  key: string | null;
  scheme: string | null;
  price: number | null;
  stopped: boolean;
  proved: boolean;
  levers: Lever[];
  cautions: string[];
}

export interface Picture {
  format: "toft-picture/1";
  svg: string;
}

export interface Paper {
  format: "toft-paper/1";
  title: string;
  sheets: string[];
}

export interface Expected {
  what: string;
  where: string;
  unit: string;
  expected: number | null;
  limit: number | null;
  at_least: boolean;
  says: string;
  instrument: string;
}

export interface Readings {
  format: "toft-readings/1";
  readings: Expected[];
}

export interface EngineAbout {
  program: string;
  version: string;
  edition: string;
  data_version: string;
}

/** Verb → [body, answer]; a fault is thrown as EngineFaults (engine/faults.ts). */
export interface Verbs {
  first: [{ job: Job; key?: string; prices?: string }, First];
  design: [{ job: Job; all?: boolean; prices?: string }, Record<string, unknown>];
  ask: [{ job: Job; prices?: string }, Ask];
  levers: [{ job: Job; prices?: string }, Levers];
  explain: [
    { job: Job; figure: string; key?: string; run?: string; prices?: string },
    Record<string, unknown>,
  ];
  why: [{ job: Job; prices?: string }, Record<string, unknown>];
  picture: [
    { job: Job; picture: string; key?: string; run?: string; width?: number; prices?: string },
    Picture,
  ];
  paper: [
    { job: Job; kind: string; rank?: number; key?: string; date: string; prices?: string },
    Paper,
  ];
  readings: [{ job: Job; key?: string; prices?: string }, Readings];
  prices: [{ prices?: string }, Record<string, unknown>];
  check: [{ job: Job }, Record<string, never>];
  about: [Record<string, never>, EngineAbout];
}

export type Verb = keyof Verbs;
export type BodyOf<V extends Verb> = Verbs[V][0];
export type AnswerOf<V extends Verb> = Verbs[V][1];

// Over the wire.

export interface Problem {
  type: string;
  title: string;
  status: number;
  detail: string;
  faults?: Fault[];
}

export interface About extends EngineAbout {
  by: string;
  lan: boolean;
  paired: boolean;
}

/** How another device is let in now; `code` is empty where it is no longer valid. */
export interface PairingNow {
  address: string;
  addresses: string[];
  code: string;
  seconds_left: number;
}

export interface PairedDevice {
  device: string;
  name: string;
  at: string;
}

/** A line of the list of jobs. */
export interface JobLine {
  id: string;
  title: string;
  revision: number;
  changed_at: string;
  changed_by: string;
  archived: boolean;
  sketch?: string;
}

export interface JobState {
  id: string;
  revision: number;
  job: Job;
  title: string;
  archived: boolean;
  changed_at: string;
  changed_by: string;
  can_undo: boolean;
  can_redo: boolean;
}

export interface Saved extends JobState {
  merged: boolean;
}

/** A fact that two people changed in two ways; a value left out was not there. */
export interface Clash {
  pointer: string;
  says: string;
  was?: unknown;
  yours?: unknown;
  theirs?: unknown;
}

export interface ClashProblem extends Problem {
  clashes: Clash[];
  current: JobState;
  /** Both changes, with theirs kept where they clash. */
  merged_job: Job;
}

export interface Revision {
  revision: number;
  at: string;
  by: string;
  what: string;
  undone?: boolean;
}

export interface RevisionState extends Revision {
  job: Job;
}

export interface Photo {
  photo: number;
  fact: string;
  note: string;
  type: string;
  bytes: number;
  at: string;
  by: string;
}

export interface Reading {
  reading: number;
  fact: string;
  value: number;
  unit: string;
  instrument: string;
  note: string;
  at: string;
  by: string;
}

export interface Issue {
  issue: number;
  at: string;
  by: string;
  revision: number;
  files: Array<{ name: string; title: string; type: string; bytes: number; url: string }>;
}

export interface PriceBook {
  own: boolean;
  name: string;
  csv: string;
}

/** The single figure of a fact, or undefined when it is a range or not known. */
export function figureOf(fact: Fact | null | undefined): number | undefined {
  if (typeof fact === "number") return fact;
  return fact?.value ?? undefined;
}
