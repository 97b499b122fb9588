import { beforeEach, expect, test } from "vitest";
import type { Job, JobState, Problem, Saved } from "../contract";
import { inMemory } from "./cabinet";
import { deviceJobs, isPending, type Device, type DeviceJob } from "./device";
import { merge } from "./merge";
import { pull, push, wordsOf } from "./push";
import { NotThere, Refused, type Server } from "./server";

const job = (title: string, ze = 0.21): Job => ({
  format: "toft-job/1", title, intake: { earthing: "TN-S", ze_ohm: ze },
  buildings: [{ id: "house", at: "origin" }], runs: [],
});

/** A server in small: keeps every revision, merges by fact, as the contract says. */
function smallServer() {
  const kept = new Map<string, Job[]>();
  const state = (id: string): JobState => {
    const all = kept.get(id)!;
    return {
      id, revision: all.length, job: all.at(-1)!, title: all.at(-1)!.title ?? "", archived: false,
      changed_at: "2026-11-29T10:00:00Z", changed_by: "", can_undo: all.length > 1, can_redo: false,
    };
  };
  const problem = (status: number, more = {}): Refused =>
    new Refused(status, { type: "about:blank", title: "no", status, detail: "", ...more } as Problem);
  const server = {
    away: false,
    async create(id: string, first: Job) {
      if (server.away) throw new NotThere();
      if (kept.has(id)) throw problem(409);
      kept.set(id, [first]);
      return state(id);
    },
    async read(id: string) {
      if (server.away) throw new NotThere();
      if (!kept.has(id)) throw problem(404);
      return state(id);
    },
    async write(id: string, put: { base: number; job: Job }): Promise<Saved> {
      if (server.away) throw new NotThere();
      const all = kept.get(id);
      if (!all) throw problem(404);
      const merged = merge(all[put.base - 1]!, put.job, all.at(-1)!);
      if (merged.clashes.length > 0) {
        throw problem(409, { clashes: merged.clashes, current: state(id), merged_job: merged.value });
      }
      const others = put.base !== all.length;
      all.push(merged.value);
      return { ...state(id), merged: others };
    },
  };
  return server;
}

let device: Device;
let server: ReturnType<typeof smallServer>;
const pusher = () => ({ device, server: server as unknown as Server, by: "" });
const write = async (from: DeviceJob | null, next: Job): Promise<DeviceJob> =>
  (await device.write({ id: "a", from, job: next, words: "changed", by: "" })).record;

beforeEach(() => {
  device = deviceJobs(inMemory());
  server = smallServer();
});

async function begun(): Promise<DeviceJob> {
  const pushed = await push(await write(null, job("Shed")), pusher());
  if (pushed.outcome !== "saved") throw new Error("not saved");
  return pushed.record;
}

test("a job begun without a server keeps its id there, and is saved only then", async () => {
  server.away = true;
  const record = await write(null, job("Shed"));
  await expect(push(record, pusher())).rejects.toBeInstanceOf(NotThere);
  expect(isPending((await device.read("a"))!)).toBe(true);
  server.away = false;
  const pushed = await push(record, pusher());
  expect(pushed.outcome).toBe("saved");
  expect((await server.read("a")).job.title).toBe("Shed");
  expect(isPending((await device.read("a"))!)).toBe(false);
});

test("a job whose first answer was lost is not begun twice", async () => {
  const record = await write(null, job("Shed"));
  await server.create("a", record.job);
  expect((await push(record, pusher())).outcome).toBe("saved");
});

test("edits made away are merged with those made there", async () => {
  const record = await begun();
  await server.write("a", { base: 1, job: job("Garage") });
  const pushed = await push(await write(record, job("Shed", 0.5)), pusher());
  expect(pushed).toMatchObject({ outcome: "saved", merged: true });
  const both = (await device.read("a"))!.job;
  expect([both.title, both.intake.ze_ohm]).toEqual(["Garage", 0.5]);
});

test("a clash leaves both versions as they are", async () => {
  const record = await begun();
  await server.write("a", { base: 1, job: job("Garage") });
  const pushed = await push(await write(record, job("Barn")), pusher());
  expect(pushed).toMatchObject(
    { outcome: "clash", clash: { clashes: [{ pointer: "/title", theirs: "Garage" }] } });
  expect((await device.read("a"))!.job.title).toBe("Barn");
  expect((await server.read("a")).job.title).toBe("Garage");
});

test("what is edited while a call is under way is pending afterwards, not lost", async () => {
  const record = await begun();
  const sent = await write(record, job("Barn"));
  const under = push(sent, pusher());
  await write(sent, job("Barn", 0.9));
  await under;
  const held = (await device.read("a"))!;
  expect(held.job.intake.ze_ohm).toBe(0.9);
  expect(isPending(held)).toBe(true);
});

test("a store that does not know the job any more is given it", async () => {
  const record = await write(await begun(), job("Barn"));
  server = smallServer();
  expect((await push(record, pusher())).outcome).toBe("saved");
  expect((await server.read("a")).job.title).toBe("Barn");
});

test("pulling never overwrites what is pending", async () => {
  const record = await begun();
  await server.write("a", { base: 1, job: job("Garage") });
  await write(record, job("Barn"));
  expect((await pull("a", pusher())).job.title).toBe("Barn");
});

test("pulling brings what is newer there", async () => {
  await begun();
  await server.write("a", { base: 1, job: job("Garage") });
  expect((await pull("a", pusher())).job.title).toBe("Garage");
});

test("what an undo at the server brought back is pulled, though its number is smaller", async () => {
  await begun();
  await server.write("a", { base: 1, job: job("Garage") });
  await pull("a", pusher());
  const back = { ...pusher(), server: { ...server, read: async (id: string) =>
    ({ ...await server.read(id), revision: 1, job: job("Shed") }) } as unknown as Server };
  const now = await pull("a", back);
  expect([now.job.title, now.server!.revision]).toEqual(["Shed", 1]);
});

test("what the device has no room for is sent all the same, and is not undone by it later", async () => {
  const record = await begun();
  const full = { ...device, update: async () => { throw new Error("no room"); } } as Device;
  const afloat = { ...record, job: job("Barn"), words: ["Title"] };
  const pushed = await push(afloat, { ...pusher(), device: full }, record.job);
  expect(pushed).toMatchObject({ outcome: "saved", record: { afloat: true, words: [] } });
  expect((await server.read("a")).job.title).toBe("Barn");
  const later = await push({ ...record, job: job("Barn", 0.4) }, pusher(), record.job);
  expect(later.outcome).toBe("saved");
  const held = (await device.read("a"))!;
  expect([held.job.title, held.job.intake.ze_ohm, isPending(held)]).toEqual(["Barn", 0.4, false]);
});

test("many words become a few", () => {
  const record = { words: ["Ze", "Ze", "Length", "Use", "Title"] } as DeviceJob;
  expect(wordsOf(record)).toBe("Ze; Length; Use …");
});
