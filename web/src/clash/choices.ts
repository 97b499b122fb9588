import { withValue } from "../bench/pointer";
import type { Clash, ClashProblem, Job } from "../contract";

export type Side = "yours" | "theirs";
export type Choices = ReadonlyMap<string, Side>;

export const undecided = (clashes: Clash[], choices: Choices): number =>
  clashes.filter(({ pointer }) => !choices.has(pointer)).length;

/** The job with each clash decided; both changes are in it everywhere else. */
export function decided(problem: ClashProblem, choices: Choices): Job {
  return problem.clashes.reduce((job, { pointer, yours }) =>
    (choices.get(pointer) === "yours" ? withValue(job, pointer, yours ?? undefined) : job),
  problem.merged_job);
}
