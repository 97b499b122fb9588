import { beforeEach, expect, test } from "vitest";
import type { Job } from "../contract";
import { inMemory } from "./cabinet";
import { deviceJobs, isPending, type Device } from "./device";
import { newId } from "./id";

const job = (title: string, ze = 0.21): Job => ({
  format: "toft-job/1", title, intake: { earthing: "TN-S", ze_ohm: ze },
  buildings: [{ id: "house", at: "origin" }], runs: [],
});

let device: Device;
beforeEach(() => { device = deviceJobs(inMemory()); });

const write = (id: string, from: Parameters<Device["write"]>[0]["from"], next: Job) =>
  device.write({ id, from, job: next, words: "changed", by: "Ann" });

test("a job written is there, by its title, and waits for the server", async () => {
  const { record } = await write("a", null, job("Shed"));
  expect(await device.read("a")).toEqual(record);
  expect(record.title).toBe("Shed");
  expect(isPending(record)).toBe(true);
});

test("two pages that wrote different facts find both", async () => {
  const { record } = await write("a", null, job("Shed"));
  await write("a", record, job("Garage"));
  const second = await write("a", record, job("Shed", 0.5));
  expect(second.clashes).toEqual([]);
  expect(second.record.job.title).toBe("Garage");
  expect(second.record.job.intake.ze_ohm).toBe(0.5);
});

test("two pages that wrote the same fact in two ways: the first stands, the second is told", async () => {
  const { record } = await write("a", null, job("Shed"));
  await write("a", record, job("Garage"));
  const second = await write("a", record, job("Barn"));
  expect(second.clashes).toEqual(
    [{ pointer: "/title", says: "", was: "Shed", yours: "Barn", theirs: "Garage" }]);
  expect((await device.read("a"))?.job.title).toBe("Garage");
});

test("every state of a job that no server has can be looked at again", async () => {
  let { record } = await write("a", null, job("1"));
  ({ record } = await write("a", record, job("2")));
  expect((await device.revisions("a")).map(({ revision }) => revision)).toEqual([1, 2]);
  expect((await device.revision("a", 1))?.job.title).toBe("1");
});

test("ids are UUIDs of version 4, and differ", () => {
  const ids = Array.from({ length: 50 }, newId);
  for (const id of ids) {
    expect(id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
  }
  expect(new Set(ids).size).toBe(50);
});
