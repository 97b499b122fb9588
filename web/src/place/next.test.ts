import { describe, expect, it } from "vitest";
import { addBuilding, addStraightRun } from "./edits";
import { nextStep } from "./next";
import { bareJob, shedJob } from "./sample";
import { crossed, touching } from "./touching";
import { outline } from "./outline";

describe("what is to be done next", () => {
  it("leads from a bare house to an answer", () => {
    const job = bareJob();
    expect(nextStep(job)).toEqual({ step: "building" });
    addBuilding(job, [20, 0], "shed");
    expect(nextStep(job)).toEqual({ step: "route", building: "/buildings/1", id: "shed" });
    addStraightRun(job, "house", "shed", "overhead");
    expect(nextStep(job)).toEqual({ step: "load", building: "/buildings/1" });
    job.buildings[1]!["load_w"] = 3000;
    expect(nextStep(job)).toEqual({ step: "earthing" });
    job.intake!.earthing = "TN-S";
    expect(nextStep(job)).toEqual({ step: "length", leg: "/runs/0/legs/0" });
    job.runs[0]!.legs[0]!.length_m = 22;
    expect(nextStep(job)).toEqual({ step: "done" });
  });

  it("never takes an earthing for granted", () => {
    const job = shedJob();
    job.intake!.earthing = null;
    expect(nextStep(job)).toEqual({ step: "earthing" });
    delete job.intake;
    expect(nextStep(job)).toEqual({ step: "earthing" });
  });
});

describe("what touches what", () => {
  it("a building is touched by its run's end, its pipe and its rod", () => {
    expect(touching(outline(shedJob()), "/buildings/1")).toEqual([
      "/runs/0/legs/2", "/buildings/1/metalwork/0", "/buildings/1/electrode",
    ]);
    expect(touching(outline(shedJob()), "/buildings/9")).toEqual([]);
  });

  it("a route crosses a pipe on the way, not at the building both enter", () => {
    const job = shedJob();
    expect(crossed(outline(job))).toEqual([]);
    job.buildings[1]!.metalwork![0]!.through_m = [[10, -5], [10, 5], [20, 10]];
    expect(crossed(outline(job))).toEqual([
      { leg: "/runs/0/legs/1", metal: "/buildings/1/metalwork/0", at: [10, 0] },
      { leg: "/runs/0/legs/1", metal: "/buildings/1/metalwork/0", at: [14, 7] },
    ]);
  });
});
