// Jobs as this device keeps them. Everything is written here first; what the server has
// acknowledged stands beside it, so that what it has not can be sent later.

import type { Clash, Job, Revision, RevisionState } from "../contract";
import { same } from "../bench/pointer";
import type { Cabinet } from "./cabinet";
import { merge } from "./merge";

export interface DeviceJob {
  id: string;
  title: string;
  job: Job;
  archived: boolean;
  changed_at: string;
  changed_by: string;
  /** Raised by each write on this device. */
  edit: number;
  /** What the server acknowledged last; null when it has not seen the job. */
  server: { revision: number; job: Job; canUndo: boolean; canRedo: boolean } | null;
  /** Words of what the server has not seen. */
  words: string[];
  /** True of a record that the device had no room for: only this page has it. */
  afloat?: true;
}

export interface Write {
  id: string;
  /** The record that the writer began from. */
  from: DeviceJob | null;
  job: Job;
  words: string;
  by: string;
}

export interface Written {
  record: DeviceJob;
  clashes: Clash[];
}

const KEPT_REVISIONS = 200;

export const titleOf = (job: Job): string => job.title ?? "";
export const isPending = (record: DeviceJob): boolean =>
  !record.server || !same(record.server.job, record.job);

const jobKey = (id: string) => `job/${id}`;
const revisionKey = (id: string, edit: number) =>
  `revision/${id}/${String(edit).padStart(9, "0")}`;

export function deviceJobs(things: Cabinet) {
  const read = (id: string) => things.read<DeviceJob>(jobKey(id));

  async function all(): Promise<DeviceJob[]> {
    const found = await Promise.all(
      (await things.keys("job/")).map((key) => things.read<DeviceJob>(key)));
    return found.filter((record) => record !== undefined);
  }

  /** Writes the job. Where another page wrote meanwhile both are merged; clashes are not written. */
  async function write({ id, from, job, words, by }: Write): Promise<Written> {
    let clashes: Clash[] = [];
    const record = await things.update<DeviceJob>(jobKey(id), (old) => {
      let next = job;
      if (old && from && old.edit !== from.edit) {
        const merged = merge(from.job, job, old.job);
        clashes = merged.clashes;
        if (clashes.length > 0) return old;
        next = merged.value;
      }
      return {
        id, title: titleOf(next), job: next, archived: old?.archived ?? false,
        changed_at: new Date().toISOString(), changed_by: by, edit: (old?.edit ?? 0) + 1,
        server: (old && old.edit === from?.edit ? from.server : old?.server) ?? null,
        words: words ? [...(old?.words ?? []), words] : old?.words ?? [],
      };
    });
    if (clashes.length === 0 && record && !record.server) await remember(record, words);
    return { record: record!, clashes };
  }

  async function update(id: string, edit: (old: DeviceJob) => DeviceJob): Promise<DeviceJob> {
    return (await things.update<DeviceJob>(jobKey(id), (old) => (old ? edit(old) : old)))!;
  }

  async function put(record: DeviceJob): Promise<DeviceJob> {
    return (await things.update<DeviceJob>(jobKey(record.id), () => record))!;
  }

  /** Only of jobs that no server keeps. */
  async function remember(record: DeviceJob, what: string): Promise<void> {
    const { id, edit, job, changed_at: at, changed_by: by } = record;
    await things.update<RevisionState>(revisionKey(id, edit), () =>
      ({ revision: edit, at, by, what, job }));
    const keys = await things.keys(`revision/${id}/`);
    for (const key of keys.slice(0, Math.max(0, keys.length - KEPT_REVISIONS))) {
      await things.update(key, () => undefined);
    }
  }

  async function revisions(id: string): Promise<Revision[]> {
    const found = await Promise.all((await things.keys(`revision/${id}/`))
      .map((key) => things.read<RevisionState>(key)));
    return found.filter((state) => state !== undefined)
      .map(({ revision, at, by, what }) => ({ revision, at, by, what }));
  }

  const revision = (id: string, edit: number) =>
    things.read<RevisionState>(revisionKey(id, edit));

  return { read, all, write, update, put, revisions, revision, lasting: things.lasting };
}

export type Device = ReturnType<typeof deviceJobs>;
