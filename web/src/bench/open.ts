import type { Job } from "../contract";
import { answerSoon } from "./answer";
import { chosenKey, first, job, jobId, ask, levers } from "./state";

/** The least a job can say: a house, a building, a run between them. */
export function blankJob(): Job {
  return {
    format: "toft-job/1",
    intake: { earthing: "TN-C-S" },
    buildings: [{ id: "house", at: "origin" }, { id: "outbuilding" }],
    runs: [{
      id: "feed", from: "house", to: "outbuilding",
      legs: [{ method: "buried direct", length_m: 20 }],
    }],
  };
}

export function lay(id: string, document: Job): void {
  jobId.value = id;
  job.value = document;
  chosenKey.value = null;
  first.value = null;
  ask.value = null;
  levers.value = null;
  answerSoon("tap");
}

export async function openJob(_id: string): Promise<void> {
  const demo = await import("../../../examples/demo.json");
  lay("demo", demo.default as unknown as Job);
}

export async function newJob(): Promise<void> {
  lay("new", blankJob());
}
