// What is to be done next so that there is an answer at all, read from the job alone.

import { isHouse, type Building, type Job } from "./job";
import { isProposed, outline } from "./outline";

export type Step =
  | { step: "building" }
  | { step: "route"; building: string; id: string }
  | { step: "earthing" }
  | { step: "load"; building: string }
  | { step: "length"; leg: string }
  | { step: "done" };

function hasLoad(building: Building): boolean {
  return building["load_w"] != null || building["load_a"] != null
    || (building.circuits?.length ?? 0) > 0;
}

export function nextStep(job: Job): Step {
  const others = job.buildings.map((building, i) => ({ building, pointer: `/buildings/${i}` }))
    .filter(({ building }) => !isHouse(building));
  if (others.length === 0) return { step: "building" };
  const unfed = others.find(({ building }) => !job.runs.some((run) => run.to === building.id));
  if (unfed) return { step: "route", building: unfed.pointer, id: unfed.building.id };
  const idle = others.find(({ building }) => !hasLoad(building));
  if (idle) return { step: "load", building: idle.pointer };
  if (!job.intake?.earthing) return { step: "earthing" };
  const loose = outline(job).stretches.find((s) => isProposed(s.length, s.path));
  return loose ? { step: "length", leg: loose.pointer } : { step: "done" };
}
