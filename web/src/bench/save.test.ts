import { beforeEach, expect, test, vi } from "vitest";
import type { ClashProblem, Job, JobState } from "../contract";

let full = false;
vi.mock("../keep/cabinet", async (original) => {
  const { inMemory } = await original<typeof import("../keep/cabinet")>();
  const one = inMemory();
  const update: typeof one.update = async (key, edit) => {
    if (full) throw new Error("no room");
    return one.update(key, edit);
  };
  return { inMemory, cabinet: async () => ({ ...one, lasting: true, update }) };
});
vi.mock("./answer", () => ({ answerSoon: () => {} }));

const { deviceJobs } = await import("../keep/device");
const { cabinet } = await import("../keep/cabinet");
const { Refused, server } = await import("../keep/server");
const { catchUp, noteUnwritten, resolve, save, take } = await import("./save");
const { serverThere } = await import("./reach");
const { clash, job, revision, sync } = await import("./state");

const made = (title: string, ze = 0.21, tails = 1) => ({
  format: "toft-job/1", title, intake: { ze_ohm: ze, tails_m: tails }, buildings: [], runs: [],
}) as unknown as Job;

/** The server's one job; `put` says what it answers to a save. */
let there: JobState;
const state = (number: number, document: Job): JobState => ({
  id: there?.id ?? "a", revision: number, job: document, title: document.title ?? "",
  archived: false, changed_at: "2026-11-29T10:00:00Z", changed_by: "", can_undo: true, can_redo: false,
});
let put: (document: Job) => JobState;
let jobs = 0;

beforeEach(async () => {
  full = false;
  serverThere.value = true;
  there = { id: `job-${jobs += 1}` } as JobState;
  there = state(1, made("Shed"));
  put = (document) => (there = state(there.revision + 1, document));
  server.read = async () => there;
  server.write = async (_, { job: document }) => ({ ...put(document), merged: false });
  const device = deviceJobs(await cabinet());
  const here = { revision: 1, job: there.job, canUndo: true, canRedo: false };
  take(await device.put({
    id: there.id, title: "Shed", job: there.job, archived: false, changed_at: "", changed_by: "",
    edit: 1, server: here, words: [],
  }));
});

test("what another took back is shown, though its number is smaller", async () => {
  there = state(2, made("Shed", 0.9));
  await catchUp(2);
  expect(job.value!.intake.ze_ohm).toBe(0.9);
  there = state(1, made("Shed"));
  await catchUp(1);
  expect([job.value!.intake.ze_ohm, revision.value, sync.value]).toEqual([0.21, 1, "saved"]);
});

test("what is changed while two versions are looked at is not lost", async () => {
  const theirs = made("Garage");
  put = () => {
    const current = there = state(2, theirs);
    throw new Refused(409, {
      type: "about:blank", title: "", status: 409, detail: "", current, merged_job: theirs,
      clashes: [{ pointer: "/title", says: "", was: "Shed", yours: "Barn", theirs: "Garage" }],
    } as ClashProblem);
  };
  job.value = made("Barn");
  await save();
  expect(sync.value).toBe("clash");
  job.value = made("Barn", 0.21, 7);
  await save();
  put = (document) => (there = state(3, document));
  await resolve(theirs);
  expect(clash.value).toBeNull();
  expect([there.job.title, there.job.intake.tails_m]).toEqual(["Garage", 7]);
  expect([job.value!.title, job.value!.intake.tails_m, sync.value]).toEqual(["Garage", 7, "saved"]);
});

test("a device without room keeps nothing from the server", async () => {
  full = true;
  job.value = made("Barn");
  await save();
  expect([there.job.title, sync.value]).toEqual(["Barn", "saved"]);
  job.value = made("Barn", 0.5);
  await save();
  full = false;
  job.value = made("Barn", 0.5, 4);
  await save();
  expect(there.job).toEqual(made("Barn", 0.5, 4));
  expect([job.value, sync.value]).toEqual([made("Barn", 0.5, 4), "saved"]);
  const held = await deviceJobs(await cabinet()).read(there.id);
  expect(held!.job).toEqual(made("Barn", 0.5, 4));
});

test("what neither device nor server holds is called so", async () => {
  full = true;
  serverThere.value = false;
  job.value = made("Barn");
  await save();
  expect(sync.value).toBe("unkept");
  expect(noteUnwritten()).toBe(false);
});

test("what another page kept on the device only is not called saved", async () => {
  const device = deviceJobs(await cabinet());
  serverThere.value = false;
  const from = (await device.read(there.id))!;
  await device.write({ id: there.id, from, job: made("Barn"), words: "Title", by: "" });
  new BroadcastChannel("toft").postMessage({ id: there.id });
  await vi.waitFor(() => expect(job.value!.title).toBe("Barn"));
  await vi.waitFor(() => expect(sync.value).toBe("offline"));
  await device.update(there.id, (old) => ({
    ...old, edit: old.edit + 1,
    server: { revision: 2, job: old.job, canUndo: true, canRedo: false },
  }));
  new BroadcastChannel("toft").postMessage({ id: there.id });
  await vi.waitFor(() => expect(sync.value).toBe("saved"));
});
