// Photos of a fact. Each is kept on the device first; the server gets it as soon as it is there, and
// then the device lets go of it.

import { effect, signal } from "@preact/signals";
import type { Photo } from "../contract";
import { author, jobId, revision, serverThere } from "../bench";
import { cabinet } from "../keep/cabinet";
import { newId } from "../keep/id";
import { call, NotThere } from "../keep/server";
import { asBlob, asText, shrunk } from "./shrink";

interface Kept {
  fact: string;
  note: string;
  at: string;
  data: string;
}

export interface Shown {
  key: string;
  fact: string;
  note: string;
  /** What an image element can show. */
  source: string;
  /** False while only this device has it. */
  sent: boolean;
}

/** All photos of the job on the bench. */
export const photos = signal<Shown[]>([]);

const path = (job: string) => `/api/jobs/${encodeURIComponent(job)}/photos`;
const prefix = (job: string) => `photo/${job}/`;

async function onDevice(job: string): Promise<Shown[]> {
  const things = await cabinet();
  const keys = await things.keys(prefix(job));
  const kept = await Promise.all(keys.map(async (key) => ({ key, photo: await things.read<Kept>(key) })));
  return kept.flatMap(({ key, photo }) =>
    photo ? [{ key, fact: photo.fact, note: photo.note, source: photo.data, sent: false }] : []);
}

async function onServer(job: string): Promise<Shown[]> {
  if (serverThere.peek() !== true || revision.peek() === 0) return [];
  const { photos: list } = await call<{ photos: Photo[] }>(path(job));
  return list.map(({ photo, fact, note }) =>
    ({ key: String(photo), fact, note, source: `/api/photos/${photo}`, sent: true }));
}

/** Looks again what there is. */
export async function lookAgain(): Promise<void> {
  const job = jobId.peek();
  if (!job) return;
  const [device, server] = await Promise.all([onDevice(job), onServer(job).catch(() => null)]);
  if (job !== jobId.peek()) return;
  const before = photos.peek().filter((p) => p.sent);
  photos.value = [...(server ?? before), ...device];
}

let sending: Promise<void> | undefined;

/** Sends what only this device has, each once. What cannot be sent now stays. */
export function sendPhotos(): Promise<void> {
  sending ??= sendAll().finally(() => { sending = undefined; });
  return sending;
}

async function sendAll(): Promise<void> {
  const job = jobId.peek();
  if (!job || serverThere.peek() !== true || revision.peek() === 0) return;
  const things = await cabinet();
  for (const key of await things.keys(prefix(job))) {
    const kept = await things.read<Kept>(key);
    if (!kept) continue;
    const query = new URLSearchParams({ fact: kept.fact, ...(kept.note ? { note: kept.note } : {}) });
    try {
      await call(`${path(job)}?${query}`, { method: "POST", body: asBlob(kept.data), by: author.peek() });
      await things.update(key, () => undefined);
    } catch (error) {
      if (!(error instanceof NotThere)) console.warn(error);
      break;
    }
  }
  await lookAgain();
}

export async function addPhoto(fact: string, file: Blob, note = ""): Promise<void> {
  const job = jobId.peek();
  if (!job) return;
  const data = await asText(await shrunk(file));
  const things = await cabinet();
  await things.update<Kept>(`${prefix(job)}${newId()}`, () =>
    ({ fact, note, at: new Date().toISOString(), data }));
  await lookAgain();
  void sendPhotos();
}

export async function removePhoto(photo: Shown): Promise<void> {
  if (photo.sent) await call(`/api/photos/${photo.key}`, { method: "DELETE", by: author.peek() });
  else await (await cabinet()).update(photo.key, () => undefined);
  await lookAgain();
}

effect(() => {
  if (!jobId.value) return;
  const there = serverThere.value === true && revision.value > 0;
  void (there ? sendPhotos() : lookAgain());
});
