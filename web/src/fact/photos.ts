// Photos of a fact. Each is kept on the device first; the server gets it as soon as it is there, and
// then the device lets go of it.

import { effect, signal } from "@preact/signals";
import type { Photo } from "../contract";
import { author, jobId, revision, revisionShown, serverThere } from "../bench";
import { cabinet } from "../keep/cabinet";
import { Outbox, type Waiting } from "../keep/outbox";
import { call, LONG_MS } from "../keep/server";
import { asBlob, asText, shrunk } from "./shrink";

interface Kept extends Waiting {
  fact: string;
  note: string;
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
  /** What the server said against it. */
  refused?: string;
}

/** All photos of the job on the bench. */
export const photos = signal<Shown[]>([]);
let photosOf: string | null = null;

const path = (job: string) => `/api/jobs/${encodeURIComponent(job)}/photos`;

const outbox = new Outbox<Kept>("photo", cabinet, ({ job, id, thing }) => {
  const { fact, note, revision: of } = thing;
  const query = new URLSearchParams({
    fact, id, ...(note ? { note } : {}), ...(of ? { revision: String(of) } : {}),
  });
  return call(`${path(job)}?${query}`,
    { method: "POST", body: asBlob(thing.data), by: thing.by, wait: LONG_MS });
});

async function onDevice(job: string): Promise<Shown[]> {
  return (await outbox.all(job)).map(({ key, thing: { fact, note, data, refused } }) =>
    ({ key, fact, note, source: data, sent: false, ...(refused ? { refused } : {}) }));
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
  const before = photosOf === job ? photos.peek().filter((p) => p.sent) : [];
  photosOf = job;
  photos.value = [...(server ?? before), ...device];
}

/** Sends what only this device has, of every job, each once. What cannot be sent now stays. */
export async function sendPhotos(): Promise<void> {
  if (serverThere.peek() !== true || revision.peek() === 0) return;
  await outbox.flush().catch(console.warn);
  await lookAgain();
}

export async function addPhoto(fact: string, file: Blob, note = ""): Promise<void> {
  const job = jobId.peek();
  if (!job) return;
  const data = await asText(await shrunk(file));
  await outbox.add(job,
    { fact, note, data, at: new Date().toISOString(), by: author.peek(), revision: revisionShown() });
  await lookAgain();
  void sendPhotos();
}

export async function removePhoto(photo: Shown): Promise<void> {
  if (photo.sent) await call(`/api/photos/${photo.key}`, { method: "DELETE", by: author.peek() });
  else await outbox.remove(photo.key);
  await lookAgain();
}

effect(() => {
  if (!jobId.value) return;
  const there = serverThere.value === true && revision.value > 0;
  void (there ? sendPhotos() : lookAgain());
});
