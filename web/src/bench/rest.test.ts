// @vitest-environment happy-dom
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import type { First, Job } from "../contract";

const asked: Array<{ done: (answer: unknown) => void; failed: (error: Error) => void }> = [];
let fetched = 0;
vi.mock("../engine", async () => {
  const faults = await import("../engine/faults");
  return {
    ...faults, takeOver: () => {}, clearSlow: () => {}, practiseFor: async () => ({}),
    work: () => new Promise(() => {}),
    workFirst: () => new Promise((done, failed) => asked.push({ done, failed })),
    fetchRest: async () => {
      fetched += 1;
      rest.value = "coming";
      await Promise.resolve();
      rest.value = "away";
      throw new RestAway("toft.wasm: 404");
    },
  };
});

const { rest } = await import("../engine/rest");
const { RestAway } = await import("../engine/faults");
const { answerNow, answerRest } = await import("./answer");
const { keepTryingRest } = await import("./rest");
const { faults, first, job, jobId, NOT_WHOLE } = await import("./state");
let end = () => {};

beforeEach(() => {
  vi.useFakeTimers();
  asked.length = 0;
  fetched = 0;
  rest.value = "later";
  first.value = null;
  faults.value = [];
  jobId.value = "a";
  job.value = {} as Job;
  end = keepTryingRest();
});
afterEach(() => {
  end();
  vi.useRealTimers();
});

test("a job that lacked the whole module is answered when it came, whoever fetched it", async () => {
  const lacked = answerNow();
  rest.value = "away";
  asked[0]!.failed(new RestAway("toft.wasm: 404"));
  await lacked;
  expect(faults.value[0]!.code).toBe(NOT_WHOLE);
  rest.value = "coming";
  rest.value = "here";
  expect(asked.length).toBe(2);
  asked[1]!.done({ job: "a" } as unknown as First);
  await vi.waitFor(() => expect(faults.value).toEqual([]));
  expect(first.value!.job).toBe("a");
});

test("an answer that is on its way is not asked for twice, nor one that was not lacking", async () => {
  const lacked = answerNow();
  asked[0]!.failed(new RestAway("toft.wasm: 404"));
  await lacked;
  void answerNow();
  rest.value = "here";
  expect(asked.length).toBe(2);
  faults.value = [];
  rest.value = "coming";
  rest.value = "here";
  expect(asked.length).toBe(2);
});

test("only tries of its own make the wait longer: changes meanwhile do not", async () => {
  for (let n = 0; n < 6; n += 1) {
    await answerRest();
    await vi.advanceTimersByTimeAsync(10);
  }
  expect(fetched).toBe(6);
  await vi.advanceTimersByTimeAsync(4000);
  expect(fetched).toBe(7);
  await vi.advanceTimersByTimeAsync(4000);
  expect(fetched).toBe(7);
  await vi.advanceTimersByTimeAsync(4000);
  expect(fetched).toBe(8);
});
