import { beforeEach, expect, test, vi } from "vitest";
import type { First, Job } from "../contract";

const waiting: Array<{ done: (answer: unknown) => void; failed: (error: Error) => void }> = [];
vi.mock("../engine", () => {
  class EngineFaults extends Error {}
  class Overtaken extends Error {}
  class NotLoaded extends Error {}
  class RestAway extends NotLoaded {}
  return {
    EngineFaults, Overtaken, NotLoaded, RestAway, fetchRest: async () => {}, takeOver: () => {},
    practiseFor: async () => ({}), clearSlow: () => {},
    work: () => new Promise(() => {}),
    workFirst: () => new Promise((done, failed) => waiting.push({ done, failed })),
  };
});

const { answerNow } = await import("./answer");
const { NotLoaded, RestAway } = await import("../engine");
const { BROKE_OFF, faults, first, job, jobId, NOT_LOADED, NOT_WHOLE } = await import("./state");
const answer = (of: string) => ({ job: of }) as First;

beforeEach(() => {
  waiting.length = 0;
  first.value = null;
  faults.value = [];
  jobId.value = "a";
  job.value = {} as Job;
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
