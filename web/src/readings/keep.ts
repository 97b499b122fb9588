// Readings as they are kept: by the server, and on this device until the server has them.

import { signal } from "@preact/signals";
import { jobId, serverThere } from "../bench";
import type { Reading } from "../contract";
import { cabinet } from "../keep/cabinet";
import { call, NotThere } from "../keep/server";
import { say } from "../words";

export interface Written {
  fact: string;
  value: number;
  unit: string;
  instrument: string;
  note: string;
}

/** A reading of this device that the server does not have. */
export interface Held extends Written {
  at: string;
  by: string;
  held: true;
}

export type Kept = (Reading & { held?: false }) | Held;

export const readings = signal<Kept[]>([]);

const place = (id: string): string => `readings/${id}`;
const address = (id: string): string => `/api/jobs/${encodeURIComponent(id)}/readings`;

/** Those of the server and those still held here, in the order they were taken. */
export function together(theirs: Reading[], held: Held[]): Kept[] {
  return [...theirs, ...held].sort((a, b) => a.at.localeCompare(b.at));
}

async function heldHere(id: string): Promise<Held[]> {
  return (await (await cabinet()).read<Held[]>(place(id))) ?? [];
}

const LATE_MS = 60_000;

/** The server dates a reading when it gets it: one that comes late says when it was taken. */
export function noteWithTime(note: string, at: string, now: Date): string {
  if (now.getTime() - new Date(at).getTime() < LATE_MS) return note;
  return [note, say("readings.taken", { at })].filter(Boolean).join("; ");
}

/** Sends what is held here, each once: what the server took is struck off before the next. */
async function sendHeld(id: string): Promise<void> {
  for (const one of await heldHere(id)) {
    const { fact, value, unit, instrument, note, at } = one;
    const said = noteWithTime(note, at, new Date());
    await call<Reading>(address(id), {
      method: "POST",
      by: one.by,
      body: { fact, value, unit, instrument, note: said },
    });
    await (await cabinet()).update<Held[]>(place(id), (all) => all?.filter((h) => h.at !== at));
  }
}

export async function recall(): Promise<void> {
  const id = jobId.peek();
  if (!id) return;
  let theirs: Reading[] = [];
  if (serverThere.peek() === true) {
    try {
      await sendHeld(id);
      theirs = (await call<{ readings: Reading[] }>(address(id))).readings;
    } catch (error) {
      if (!(error instanceof NotThere)) console.warn(error);
    }
  }
  const held = await heldHere(id);
  if (jobId.peek() === id) readings.value = together(theirs, held);
}

/** Keeps a reading: on this device first, then at the server. */
export async function keep(written: Written, by: string): Promise<void> {
  const id = jobId.peek();
  if (!id) return;
  const held: Held = { ...written, by, at: new Date().toISOString(), held: true };
  await (await cabinet()).update<Held[]>(place(id), (all) => [...(all ?? []), held]);
  await recall();
}
