// The last edits of a page that is left before the device has them: written in one go, without
// waiting, and taken up at the next start.

import type { Job } from "../contract";
import type { Device, DeviceJob } from "./device";
import { rebase } from "./merge";

export interface Entry {
  id: string;
  /** What the device held when the edits began, and as which write. */
  was: Job;
  edit: number;
  job: Job;
  words: string;
  by: string;
}

const PREFIX = "toft-journal/";

/** Says whether it could be written. */
export function note(page: string, entry: Entry, store: Storage): boolean {
  try {
    store.setItem(PREFIX + page, JSON.stringify(entry));
    return true;
  } catch {
    return false;
  }
}

export function strike(page: string, store: Storage): void {
  store.removeItem(PREFIX + page);
}

/** Writes what stands in the journal to the device. What it has no room for stays in the journal. */
export async function takeUp(device: Device, store: Storage): Promise<void> {
  for (const key of Object.keys(store).filter((one) => one.startsWith(PREFIX))) {
    try {
      const { id, was, edit, job, words, by } = JSON.parse(store.getItem(key)!) as Entry;
      const old = await device.read(id);
      const next = old && old.edit !== edit ? rebase(was, job, old.job) : job;
      await device.write({ id, from: (old ?? null) as DeviceJob | null, job: next, words, by });
      store.removeItem(key);
    } catch (error) {
      console.warn(error);
      if (error instanceof SyntaxError) store.removeItem(key);
    }
  }
}
