// @vitest-environment happy-dom
import { render } from "preact";
import { expect, it, vi } from "vitest";
import type { First, Job } from "../contract";

const asked: Array<{ done: (answer: unknown) => void; failed: (error: Error) => void }> = [];
const { RestAway } = vi.hoisted(() => ({ RestAway: class extends Error {} }));
let fetching: Promise<void> = Promise.resolve();
vi.mock("../engine", () => ({
  fetchRest: () => fetching,
  work: () => new Promise((done, failed) => asked.push({ done, failed })),
  workFirst: () => new Promise(() => {}),
  clearSlow: () => {},
  EngineFaults: class extends Error {},
  NotLoaded: class extends Error {},
  RestAway,
  Overtaken: class extends Error {},
}));

const { first, job, jobId, rest } = await import("../bench");
const { useWork } = await import("./fetch");

function Readings() {
  const { answer, failed } = useWork("readings", {});
  return <p>{JSON.stringify(answer)} {failed ? "failed" : ""}</p>;
}

const settled = () => new Promise((done) => setTimeout(done, 200));

it("never shows under one job what another was answered", async () => {
  const place = document.body.appendChild(document.createElement("div"));
  jobId.value = "a";
  job.value = {} as Job;
  first.value = { job: "a" } as First;
  render(<Readings />, place);
  await vi.waitFor(() => expect(asked.length).toBe(1), 5000);
  asked.at(-1)!.done({ of: "a" });
  await settled();
  expect(place.textContent).toContain('"of":"a"');
  jobId.value = "b";
  first.value = null;
  await vi.waitFor(() => expect(asked.length).toBe(2), 5000);
  expect(place.textContent).not.toContain('"of":"a"');
  asked.at(-1)!.failed(new Error("unreachable"));
  await settled();
  expect(place.textContent).not.toContain('"of":"a"');
  expect(place.textContent).toContain("failed");
  render(null, place);
});

it("goes on waiting for the rest of the engine, and asks again when it is here", async () => {
  const place = document.body.appendChild(document.createElement("div"));
  jobId.value = "c";
  first.value = { job: "c" } as First;
  const before = asked.length;
  render(<Readings />, place);
  await vi.waitFor(() => expect(asked.length).toBe(before + 1), 5000);
  rest.value = "away";
  asked.at(-1)!.failed(new RestAway("toft.wasm: 404"));
  await settled();
  expect(place.textContent).not.toContain("failed");
  expect(asked.length).toBe(before + 1);
  rest.value = "here";
  await vi.waitFor(() => expect(asked.length).toBe(before + 2), 5000);
  asked.at(-1)!.done({ of: "c" });
  await settled();
  expect(place.textContent).toContain('"of":"c"');
  render(null, place);
});

it("of what waits for the rest asks only the newest when it is here, and nothing once closed", async () => {
  const place = document.body.appendChild(document.createElement("div"));
  let here = () => {};
  fetching = new Promise((done) => { here = done; });
  rest.value = "coming";
  const before = asked.length;
  render(<Readings />, place);
  for (let n = 0; n < 6; n += 1) {
    first.value = { job: `c${n}` } as First;
    await settled();
  }
  expect(asked.length).toBe(before);
  here();
  await settled();
  expect(asked.length).toBe(before + 1);
  render(null, place);
  fetching = new Promise((done) => { here = done; });
  render(<Readings />, place);
  await settled();
  render(null, place);
  await settled();
  here();
  await settled();
  expect(asked.length).toBe(before + 1);
});
