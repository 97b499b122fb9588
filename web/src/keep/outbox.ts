// What waits on this device for the server beside jobs: readings, photos. Each has an id of its own,
// so that the server takes it once even where its answer was lost; what it refuses is kept and told,
// and holds nothing else up.

import type { Cabinet } from "./cabinet";
import { newId } from "./id";
import { NotThere, Refused } from "./server";

export interface Waiting {
  at: string;
  by: string;
  /** Revision of the job that it was taken of; null where that was not saved yet. */
  revision: number | null;
  /** What the server said against it. */
  refused?: string;
}

export interface Held<T extends Waiting> {
  key: string;
  id: string;
  job: string;
  thing: T;
}

/** Answers by which the server says that it will never take this. */
const NEVER = new Set([400, 409, 413, 415, 422]);

export class Outbox<T extends Waiting> {
  #sending: Promise<void> | undefined;
  /** Refused since this page was opened: not asked again. */
  #refused = new Set<string>();

  constructor(
    readonly room: string,
    readonly things: () => Promise<Cabinet>,
    readonly send: (held: Held<T>) => Promise<unknown>,
  ) {}

  async add(job: string, thing: T): Promise<void> {
    const key = `${this.room}/${job}/${newId()}`;
    await (await this.things()).update<T>(key, () => thing);
  }

  /** Of one job, or of all, in the order of their times. */
  async all(job?: string): Promise<Array<Held<T>>> {
    const things = await this.things();
    const keys = await things.keys(job === undefined ? `${this.room}/` : `${this.room}/${job}/`);
    const found = await Promise.all(keys.map(async (key) => {
      const [, of = "", id = ""] = key.split("/");
      return { key, job: of, id, thing: await things.read<T>(key) };
    }));
    return found.filter((one): one is Held<T> => one.thing !== undefined && one.id !== "")
      .sort((a, b) => a.thing.at.localeCompare(b.thing.at));
  }

  async remove(key: string): Promise<void> {
    await (await this.things()).update(key, () => undefined);
  }

  /** Sends what waits, of every job; one call at a time, however often it is asked. */
  flush(): Promise<void> {
    this.#sending ??= this.#sendAll().finally(() => { this.#sending = undefined; });
    return this.#sending;
  }

  async #sendAll(): Promise<void> {
    for (const held of await this.all()) {
      if (this.#refused.has(held.key)) continue;
      try {
        await this.send(held);
        await this.remove(held.key);
      } catch (error) {
        if (error instanceof NotThere) return;
        if (!(error instanceof Refused)) throw error;
        if (NEVER.has(error.status)) await this.#refuse(held, error);
      }
    }
  }

  async #refuse({ key }: Held<T>, error: Refused): Promise<void> {
    this.#refused.add(key);
    await (await this.things()).update<T>(key, (old) => old && { ...old, refused: error.message });
  }
}
