import { expect, test } from "vitest";
import type { Job } from "../contract";
import { Timeline } from "./timeline";

const job = (title: string, ze = 0.2): Job => ({
  format: "toft-job/1", title, intake: { earthing: "TT", ze_ohm: ze }, buildings: [], runs: [],
});
const step = (before: Job, after: Job, words = "changed") =>
  ({ before, after, words, revision: null });

test("goes back and forth", () => {
  const line = new Timeline();
  line.did(step(job("1"), job("2")), false);
  line.did(step(job("2"), job("3")), false);
  expect(line.back(job("3"))).toEqual(job("2"));
  expect(line.back(job("2"))).toEqual(job("1"));
  expect(line.back(job("1"))).toBeUndefined();
  expect(line.forth(job("1"))).toEqual(job("2"));
});

test("letters of one word are one step, taps are not", () => {
  const line = new Timeline();
  line.did(step(job("a"), job("ab"), "Title"), true);
  line.did(step(job("ab"), job("abc"), "Title"), true);
  expect(line.back(job("abc"))).toEqual(job("a"));
  line.did(step(job("a"), job("b"), "Title"), false);
  line.did(step(job("b"), job("c"), "Title"), false);
  expect(line.back(job("c"))).toEqual(job("b"));
});

test("a step back leaves what someone else changed meanwhile", () => {
  const line = new Timeline();
  line.did(step(job("1"), job("2")), false);
  expect(line.back(job("2", 0.7))).toEqual(job("1", 0.7));
});

test("a new change ends what could be done again", () => {
  const line = new Timeline();
  line.did(step(job("1"), job("2")), false);
  line.back(job("2"));
  line.did(step(job("1"), job("4")), false);
  expect(line.forth(job("4"))).toBeUndefined();
});

test("steps of one revision go back together when the server takes it back", () => {
  const line = new Timeline();
  line.did(step(job("1"), job("2")), false);
  line.sent(line.unsent(), 5);
  line.did(step(job("2"), job("3")), false);
  line.did(step(job("3"), job("4")), false);
  line.sent(line.unsent(), 6);
  line.serverBack(6);
  expect(line.past.length).toBe(1);
  expect(line.future.length).toBe(2);
});
