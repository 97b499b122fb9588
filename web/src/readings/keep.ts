// Readings as they are kept: on this device until the server has them, then by the server.

import { effect, signal } from "@preact/signals";
import { jobId, revision, revisionShown, serverThere } from "../bench";
import type { Reading } from "../contract";
import { cabinet } from "../keep/cabinet";
import { Outbox, type Held, type Waiting } from "../keep/outbox";
import { call, NotThere } from "../keep/server";
import { say } from "../words";

export interface Written {
  fact: string;
  value: number;
  unit: string;
  instrument: string;
  note: string;
}

type Noted = Written & Waiting;

export type Kept = Written & {
  key: string;
  at: string;
  by: string;
  /** Only this device has it. */
  held: boolean;
  refused?: string;
};

export const readings = signal<Kept[]>([]);

const address = (id: string): string => `/api/jobs/${encodeURIComponent(id)}/readings`;

/** Those of the server and those still held here, in the order they were taken. */
export function together(theirs: Reading[], held: Array<Held<Noted>>): Kept[] {
  const all: Kept[] = [
    ...theirs.map((one) => ({ ...one, key: String(one.reading), held: false })),
    ...held.map(({ key, thing }) => ({ ...thing, key, held: true })),
  ];
  return all.sort((a, b) => a.at.localeCompare(b.at));
}

const LATE_MS = 60_000;

/** The server dates a reading when it gets it: one that comes late says when it was taken. */
export function noteWithTime(note: string, at: string, now: Date): string {
  if (now.getTime() - new Date(at).getTime() < LATE_MS) return note;
  return [note, say("readings.taken", { at })].filter(Boolean).join("; ");
}

const outbox = new Outbox<Noted>("reading", cabinet, ({ job, id, thing }) => {
  const { fact, value, unit, instrument, note, at, by, revision: of } = thing;
  return call<Reading>(address(job), {
    method: "POST",
    by,
    body: {
      id, fact, value, unit, instrument, note: noteWithTime(note, at, new Date()),
      ...(of === null ? {} : { revision: of }),
    },
  });
});

async function theirsOf(id: string): Promise<Reading[]> {
  if (serverThere.peek() !== true) return [];
  try {
    await outbox.flush();
    return (await call<{ readings: Reading[] }>(address(id))).readings;
  } catch (error) {
    if (!(error instanceof NotThere)) console.warn(error);
    return [];
  }
}

let readingsOf: string | null = null;

export async function recall(): Promise<void> {
  const id = jobId.peek();
  if (!id) return;
  if (readingsOf !== id) readings.value = [];
  readingsOf = id;
  const theirs = await theirsOf(id);
  const held = await outbox.all(id);
  if (jobId.peek() === id) readings.value = together(theirs, held);
}

/** Keeps a reading: on this device first, then at the server. */
export async function keep(written: Written, by: string): Promise<void> {
  const id = jobId.peek();
  if (!id) return;
  const at = new Date().toISOString();
  await outbox.add(id, { ...written, by, at, revision: revisionShown() });
  await recall();
}

/** Lets go of a reading that the server does not take. */
export async function letGo({ key }: Kept): Promise<void> {
  await outbox.remove(key);
  await recall();
}

effect(() => {
  if (serverThere.value === true && revision.value > 0) void outbox.flush().catch(console.warn);
});
