// The price book in use: kept on this device and by the server, and used by the answer at once.

import { effect, signal, untracked } from "@preact/signals";
import { choose, chosenKey, job, ownPrices, rest, serverThere } from "../bench";
import type { Fault, PriceBook } from "../contract";
import { EngineFaults, RestAway, work } from "../engine";
import { cabinet } from "../keep/cabinet";
import { call, NotThere, Refused } from "../keep/server";
import type { Item } from "./table";

interface Kept {
  /** null: back to the engine's own book. */
  csv: string | null;
  name: string;
  /** False while the server has not been told. */
  told: boolean;
}

const PLACE = "prices";
const OWN_NAME = "own price book";

interface Draft {
  csv: string;
  name: string;
  faults: Fault[];
  /** True until the engine has looked it through. */
  unread: boolean;
}

/** A book that has faults, or has not been looked through: shown, not used. */
export const draft = signal<Draft | null>(null);
export const bookName = signal("");
/** True while the server keeps the same book, or there is no server. */
export const bookKept = signal(true);

export interface Listed {
  book: string;
  items: Item[];
}

export async function listed(): Promise<Listed> {
  const prices = ownPrices.peek();
  return (await work("prices", prices ? { prices } : {})) as unknown as Listed;
}

/** What is wrong with a book; nothing, where it can be used. */
export async function faultsOf(csv: string): Promise<Fault[]> {
  try {
    await work("prices", { prices: csv });
    return [];
  } catch (error) {
    if (error instanceof EngineFaults) return error.faults;
    throw error;
  }
}

function use(csv: string | null, name: string): void {
  if (ownPrices.peek() === csv && bookName.peek() === name) return;
  ownPrices.value = csv;
  bookName.value = csv === null ? "" : name;
  if (job.peek()) choose(chosenKey.peek());
}

async function tellServer(kept: Kept): Promise<void> {
  if (serverThere.peek() !== true) {
    bookKept.value = serverThere.peek() === "never";
    return;
  }
  try {
    if (kept.csv === null) await call<void>("/api/prices", { method: "DELETE" });
    else
      await call<PriceBook>("/api/prices", {
        method: "PUT",
        body: { name: kept.name, csv: kept.csv },
      });
    await (await cabinet()).update<Kept>(PLACE, () => ({ ...kept, told: true }));
    bookKept.value = true;
  } catch (error) {
    bookKept.value = false;
    if (!(error instanceof NotThere) && !(error instanceof Refused)) throw error;
  }
}

/** Raised with each book that is taken or dropped: what was found in an earlier one is idle. */
let newest = 0;

export function dropDraft(): void {
  newest += 1;
  draft.value = null;
}

/**
 * Uses a book from now on, if it has no faults; else shows them. One that cannot be looked through
 * yet stays as a draft. Says whether it is used.
 */
export async function take(csv: string, name = bookName.peek() || OWN_NAME): Promise<boolean> {
  newest += 1;
  const mine = newest;
  const unread = { csv, name, faults: [], unread: true };
  if (rest.peek() !== "here") draft.value = unread;
  let faults: Fault[];
  try {
    faults = await faultsOf(csv);
  } catch (error) {
    if (!(error instanceof RestAway)) console.warn(error);
    if (mine === newest) draft.value = unread;
    return false;
  }
  if (mine !== newest) return false;
  if (faults.length > 0) {
    draft.value = { csv, name, faults, unread: false };
    return false;
  }
  draft.value = null;
  use(csv, name);
  const kept: Kept = { csv, name, told: false };
  await (await cabinet()).update<Kept>(PLACE, () => kept);
  await tellServer(kept);
  return true;
}

/** Looks the draft through that could not be before. */
export function retake(): void {
  const now = draft.peek();
  if (now?.unread) void take(now.csv, now.name);
}

export async function backToInvented(): Promise<void> {
  dropDraft();
  use(null, "");
  const kept: Kept = { csv: null, name: "", told: false };
  await (await cabinet()).update<Kept>(PLACE, () => kept);
  await tellServer(kept);
}

/** Takes up the book again: what this device has not told the server yet goes before its book. */
export async function recallBook(): Promise<void> {
  const kept = await (await cabinet()).read<Kept>(PLACE);
  if (kept) use(kept.csv, kept.name);
  if (serverThere.peek() !== true) {
    bookKept.value = kept?.told ?? true;
    return;
  }
  if (kept && !kept.told) {
    await tellServer(kept);
    return;
  }
  try {
    const book = await call<PriceBook>("/api/prices");
    const own = book.own ? book.csv : null;
    use(own, book.own ? book.name : "");
    await (
      await cabinet()
    ).update<Kept>(PLACE, () => ({ csv: own, name: book.own ? book.name : "", told: true }));
    bookKept.value = true;
  } catch (error) {
    if (!(error instanceof NotThere) && !(error instanceof Refused)) throw error;
  }
}

/** Once when the page begins, and each time the server comes back; a draft when the engine is whole. */
export function keepBook(): () => void {
  void recallBook();
  const end = effect(() => {
    if (rest.value === "here") untracked(retake);
  });
  let was = serverThere.peek();
  const endToo = serverThere.subscribe((now) => {
    if (now === true && was !== true) void recallBook();
    was = now;
  });
  return () => {
    end();
    endToo();
  };
}
