// Brings what this device holds to the server.

import type { ClashProblem, Job, JobState } from "../contract";
import { isPending, titleOf, type Device, type DeviceJob } from "./device";
import { rebase } from "./merge";
import { Refused, type Server } from "./server";

export type Pushed =
  | { outcome: "saved"; record: DeviceJob; merged: boolean }
  | { outcome: "clash"; clash: ClashProblem };

export interface Pusher {
  device: Device;
  server: Server;
  by: string;
}

export function wordsOf(record: DeviceJob): string {
  const distinct = [...new Set(record.words)];
  return distinct.slice(0, 3).join("; ") + (distinct.length > 3 ? " …" : "");
}

/**
 * The record once the server has acknowledged what was sent as `state`; edits made since `base`, the
 * job that the device held then, stay.
 */
export function acknowledged(old: DeviceJob, base: Job, seen: number, state: JobState): DeviceJob {
  const job = rebase(base, old.job, state.job);
  return {
    ...old, job, title: titleOf(job), archived: state.archived,
    changed_at: state.changed_at, changed_by: state.changed_by, edit: old.edit + 1,
    server: {
      revision: state.revision, job: state.job,
      canUndo: state.can_undo, canRedo: state.can_redo,
    },
    words: old.words.slice(seen),
  };
}

async function send(record: DeviceJob, { server, by }: Pusher): Promise<JobState> {
  const { id, job } = record;
  if (!record.server) {
    try {
      return await server.create(id, job, by);
    } catch (error) {
      if (!(error instanceof Refused) || error.status !== 409) throw error;
      const there = await server.read(id);  // an earlier call arrived, its answer did not
      return server.write(id, { base: there.revision, job, what: wordsOf(record) }, by);
    }
  }
  const put = { base: record.server.revision, job, what: wordsOf(record) };
  try {
    return await server.write(id, put, by);
  } catch (error) {
    if (!(error instanceof Refused) || error.status !== 404) throw error;
    return server.create(id, job, by);  // another store stands behind this address now
  }
}

/** `kept`, or where the device has no room for it, what this page alone knows. */
async function orAfloat(kept: Promise<DeviceJob>, otherwise: () => DeviceJob): Promise<DeviceJob> {
  try {
    return await kept;
  } catch (error) {
    console.warn(error);
    return { ...otherwise(), afloat: true };
  }
}

/**
 * Sends a record's pending edits. Throws NotThere or Refused; a clash is an outcome. `base` is the job
 * that the device holds where it had no room for the record's.
 */
export async function push(record: DeviceJob, pusher: Pusher, base = record.job): Promise<Pushed> {
  if (!isPending(record)) return { outcome: "saved", record, merged: false };
  const seen = record.words.length;
  try {
    const state = await send(record, pusher);
    const kept = await orAfloat(
      pusher.device.update(record.id, (old) => acknowledged(old, base, seen, state)),
      () => acknowledged(record, record.job, seen, state));
    return { outcome: "saved", record: kept, merged: !!(state as { merged?: boolean }).merged };
  } catch (error) {
    const clash = error instanceof Refused ? error.clash : undefined;
    if (clash) return { outcome: "clash", clash };
    throw error;
  }
}

/** Brings the server's newest state to the device, under what is pending here. */
export async function pull(id: string, { device, server }: Pusher): Promise<DeviceJob> {
  const state = await server.read(id);
  const old = await device.read(id);
  if (!old) return orAfloat(device.put(recordOf(state)), () => recordOf(state));
  // Another, not a greater one: an undo goes back to a smaller number.
  if (old.server?.revision === state.revision) return old;
  if (isPending(old)) return old;  // pushing merges them
  const next = (edit: number): DeviceJob => ({ ...recordOf(state), edit: edit + 1 });
  return orAfloat(device.update(id, (now) => (isPending(now) ? now : next(now.edit))),
    () => next(old.edit));
}

export function recordOf(state: JobState): DeviceJob {
  return {
    id: state.id, title: state.title, job: state.job, archived: state.archived,
    changed_at: state.changed_at, changed_by: state.changed_by, edit: 1,
    server: {
      revision: state.revision, job: state.job,
      canUndo: state.can_undo, canRedo: state.can_redo,
    },
    words: [],
  };
}
