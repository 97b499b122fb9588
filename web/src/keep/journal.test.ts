import { beforeEach, expect, test } from "vitest";
import type { Job } from "../contract";
import { inMemory } from "./cabinet";
import { deviceJobs, type Device } from "./device";
import { note, strike, takeUp } from "./journal";

const job = (title: string, ze = 0.21) =>
  ({ format: "toft-job/1", title, intake: { ze_ohm: ze }, buildings: [], runs: [] }) as unknown as Job;

/** As much of the browser's Storage as a journal needs; its keys are members, as there. */
function storage(): Storage {
  const made = {} as Record<string, string>;
  const acts = {
    getItem: (key: string) => made[key] ?? null,
    setItem: (key: string, text: string) => { made[key] = text; },
    removeItem: (key: string) => { delete made[key]; },
  };
  return Object.setPrototypeOf(made, acts) as Storage;
}

let device: Device;
let store: Storage;
beforeEach(async () => {
  device = deviceJobs(inMemory());
  store = storage();
  await device.write({ id: "a", from: null, job: job("Shed"), words: "", by: "" });
});
const entry = (next: Job) => ({ id: "a", was: job("Shed"), edit: 1, job: next, words: "Title", by: "A" });
const titleAndZe = async () => {
  const { job: held } = (await device.read("a"))!;
  return [held.title, held.intake.ze_ohm];
};

test("what was typed last is there at the next start, once", async () => {
  note("page", entry(job("Barn")), store);
  await takeUp(device, store);
  expect(await titleAndZe()).toEqual(["Barn", 0.21]);
  expect(Object.keys(store)).toEqual([]);
});

test("what another page wrote meanwhile stays", async () => {
  const from = (await device.read("a"))!;
  note("page", entry(job("Barn")), store);
  await device.write({ id: "a", from, job: job("Shed", 0.5), words: "", by: "" });
  await takeUp(device, store);
  expect(await titleAndZe()).toEqual(["Barn", 0.5]);
});

test("what the device took in the end is struck off", async () => {
  note("page", entry(job("Barn")), store);
  strike("page", store);
  await takeUp(device, store);
  expect(await titleAndZe()).toEqual(["Shed", 0.21]);
});

test("a journal that cannot be written says so", () => {
  const full = { setItem: () => { throw new Error("no room"); } } as unknown as Storage;
  expect(note("page", entry(job("Barn")), full)).toBe(false);
});

test("what the device has no room for stays noted", async () => {
  note("page", entry(job("Barn")), store);
  const full = { ...device, write: async () => { throw new Error("no room"); } } as Device;
  await takeUp(full, store);
  expect(Object.keys(store).length).toBe(1);
});
