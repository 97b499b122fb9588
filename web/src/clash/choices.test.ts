import { expect, test } from "vitest";
import type { Clash, ClashProblem, Job } from "../contract";
import { decided, undecided, type Side } from "./choices";

const clashes: Clash[] = [
  { pointer: "/title", says: "", was: "Shed", yours: "Barn", theirs: "Garage" },
  { pointer: "/intake/looped", says: "", was: false, theirs: true },
];
const merged = {
  format: "toft-job/1", title: "Garage", intake: { earthing: "TT", looped: true, tails_m: 3 },
  buildings: [], runs: [],
} as unknown as Job;
const problem = { clashes, merged_job: merged } as unknown as ClashProblem;
const chosen = (title: Side, looped: Side) =>
  new Map<string, Side>([["/title", title], ["/intake/looped", looped]]);

test("theirs everywhere is the merge as it came", () => {
  expect(decided(problem, chosen("theirs", "theirs"))).toEqual(merged);
});

test("yours takes your value, and takes out what you had taken out", () => {
  const job = decided(problem, chosen("yours", "yours"));
  expect(job.title).toBe("Barn");
  expect(job.intake).toEqual({ earthing: "TT", tails_m: 3 });
});

test("each is chosen for itself", () => {
  const job = decided(problem, chosen("yours", "theirs"));
  expect([job.title, job.intake.looped]).toEqual(["Barn", true]);
});

test("what is not chosen yet is counted", () => {
  expect(undecided(clashes, new Map())).toBe(2);
  expect(undecided(clashes, new Map([["/title", "yours"]]))).toBe(1);
});
