import { beforeEach, expect, test, vi } from "vitest";
import type { First, Job } from "../contract";

const waiting: Array<{ done: (answer: unknown) => void; failed: (error: Error) => void }> = [];
const works: Array<{ verb: string; body: { job: Job }; done: (answer: unknown) => void }> = [];
const practice: Array<() => void> = [];
let taken = 0;
vi.mock("../engine", () => {
  class EngineFaults extends Error {}
  class Overtaken extends Error {}
  class NotLoaded extends Error {}
  class RestAway extends NotLoaded {}
  return {
    EngineFaults, Overtaken, NotLoaded, RestAway, fetchRest: async () => {}, clearSlow: () => {},
    takeOver: () => { taken += 1; },
    practiseFor: () => new Promise<void>((done) => practice.push(done)),
    work: (verb: string, body: { job: Job }) =>
      new Promise((done) => works.push({ verb, body, done })),
    workFirst: () => new Promise((done, failed) => waiting.push({ done, failed })),
  };
});

const { answerNow, answerRest, answerSoon } = await import("./answer");
const { NotLoaded, RestAway } = await import("../engine");
const { ask, behind, BROKE_OFF, faults, first, job, jobId, levers, NOT_LOADED, NOT_WHOLE } =
  await import("./state");
const answer = (of: string) => ({ job: of }) as First;

beforeEach(() => {
  job.value = {} as Job;
  answerSoon("tap");  // whatever an earlier test has left waiting ends
  waiting.length = 0;
  works.length = 0;
  practice.length = 0;
  first.value = null;
  ask.value = null;
  levers.value = null;
  faults.value = [];
  jobId.value = "a";
});

test("an answer to a job that is no longer open is not shown under the one that is", async () => {
  const ofA = answerNow();
  jobId.value = "b";
  const ofB = answerNow();
  waiting[0]!.done(answer("a"));
  await ofA;
  expect(first.value).toBeNull();
  waiting[1]!.done(answer("b"));
  await ofB;
  expect(first.value!.job).toBe("b");
});

test("nor is a fault of it", async () => {
  const ofA = answerNow();
  jobId.value = "b";
  waiting[0]!.failed(new Error("unreachable"));
  await ofA;
  expect(faults.value).toEqual([]);
});

test("an engine that breaks off is told apart from one that did not come", async () => {
  const broke = answerNow();
  waiting[0]!.failed(new Error("unreachable"));
  await broke;
  expect(faults.value[0]!.code).toBe(BROKE_OFF);
  const away = answerNow();
  waiting[1]!.failed(new NotLoaded("toft.wasm: 404"));
  await away;
  expect(faults.value[0]!.code).toBe(NOT_LOADED);
  const part = answerNow();
  waiting[2]!.failed(new RestAway("toft.wasm: 404"));
  await part;
  expect(faults.value[0]!.code).toBe(NOT_WHOLE);
});

const soon = () => new Promise((done) => setTimeout(done));
const titled = (title: string) => ({ title }) as Job;

test("what a fact changed during practice makes old is neither asked for nor shown", async () => {
  job.value = titled("before");
  const before = answerRest();
  await soon();
  works[0]!.done({ of: "before" });
  await soon();
  expect(ask.value).toEqual({ of: "before" });
  job.value = titled("after");
  answerSoon("tap");
  practice[0]!();
  await before;
  expect([works.map(({ verb }) => verb), taken, levers.value]).toEqual([["ask"], 0, null]);
  expect(behind.value).toBe(true);
});

test("nor what it was that was being asked for, also while letters are still typed", async () => {
  const before = answerRest();
  await soon();
  answerSoon("typing");
  works[0]!.done({ of: "before" });
  await before;
  expect([ask.value, behind.value]).toEqual([null, true]);
});

test("a page at rest learns what to ask and what a change would bring, of one state", async () => {
  job.value = titled("now");
  const all = answerRest();
  await soon();
  works[0]!.done({ of: "ask" });
  await vi.waitFor(() => {
    practice.splice(0).forEach((done) => done());
    expect(works.length).toBe(2);
  }, { timeout: 3000, interval: 10 });
  expect(taken).toBe(1);
  works[1]!.done({ of: "levers" });
  await all;
  expect(works.map(({ verb, body }) => [verb, body.job.title]))
    .toEqual([["ask", "now"], ["levers", "now"]]);
  expect([ask.value, levers.value, behind.value])
    .toEqual([{ of: "ask" }, { of: "levers" }, false]);
});
