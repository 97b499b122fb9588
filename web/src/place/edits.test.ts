import { describe, expect, it } from "vitest";
import {
  addBuilding, addCircuit, addCorner, addLeg, addMetal, addRod, addRun, addStraightRun, freeSpot, giveMetal,
  moveBuilding, moveCorner, moveRod, nudge, redrawRun, remove, rename, splitLeg,
} from "./edits";
import { readFigure } from "./figure";
import { misfits } from "./fits";
import { drawnLength, pathLength } from "./geometry";
import type { Job, Point } from "./job";
import { isLoose, isProposed, outline, thingsOf } from "./outline";
import { bareJob, shedJob } from "./sample";

const lengths = (job: Job) => job.runs[0]!.legs.map((leg) => readFigure(leg.length_m));

describe("a first survey", () => {
  it("from a house alone to a job that the format takes", () => {
    const job = bareJob();
    const studio = addBuilding(job, [22, 9], "studio");
    addStraightRun(job, "house", "studio", "buried direct");
    job.buildings[1]!["load_w"] = 3000;
    expect(misfits(job).length).toBeGreaterThan(0);
    job.intake!.earthing = "TN-C-S";
    expect(misfits(job)).toEqual([]);
    expect(studio).toBe("/buildings/1");
    expect(job.runs[0]!.legs).toEqual([{
      method: "buried direct", length_m: { value: 23.8, basis: "assumed" }, through_m: [[22, 9]],
    }]);
  });

  it("gives each building and run a name of its own", () => {
    const job = bareJob();
    for (let i = 0; i < 3; ++i) addBuilding(job, freeSpot(job), "hot tub");
    addBuilding(job, [3, 3], null);
    expect(job.buildings.map((b) => b.id)).toEqual(["house", "hot-tub", "hot-tub-2", "hot-tub-3", "outbuilding"]);
    addStraightRun(job, "house", "hot-tub", "overhead");
    addStraightRun(job, "house", "hot-tub", "buried direct");
    expect(job.runs.map((r) => r.id)).toEqual(["hot-tub-feed", "hot-tub-feed-2"]);
  });

  it("proposes the lengths that are drawn, and says that they are assumed", () => {
    const job = bareJob();
    addBuilding(job, [10, 10], "shed");
    addRun(job, "house", "shed", [
      { method: "clipped", points: [[4, 0]] },
      { method: "buried direct", points: [[4, 10], [10, 10]] },
    ]);
    expect(lengths(job)).toEqual([
      { known: true, low: 4, high: 4, basis: "assumed" }, { known: true, low: 16, high: 16, basis: "assumed" },
    ]);
  });
});

describe("moving things", () => {
  it("a building takes the end of its run, its pipes and its rod along", () => {
    const job = shedJob();
    moveBuilding(job, "/buildings/1", [24, 10]);
    expect(job.buildings[1]!.at_m).toEqual([24, 10]);
    expect(job.runs[0]!.legs[2]!.through_m).toEqual([[24, 10]]);
    expect(job.buildings[1]!.metalwork![0]!.through_m).toEqual([[30, 0], [24, 10]]);
    expect(job.buildings[1]!.electrode!.at_m).toEqual([27, 12]);
  });

  it("changes lengths off the drawing and leaves measured ones", () => {
    const job = shedJob();
    moveBuilding(job, "/buildings/1", [24, 10]);
    expect(lengths(job).map((r) => r.high)).toEqual([5, 15, 10]);
    moveCorner(job, "/runs/0/legs/0", 1, [7, 0]);
    expect(lengths(job).map((r) => r.high)).toEqual([7, 15, 10]);
    expect(lengths(job)[1]!.basis).toBe("measured");
  });

  it("the house stays where it is", () => {
    const job = shedJob();
    moveBuilding(job, "/buildings/0", [5, 5]);
    nudge(job, "/buildings/0", [1, 0]);
    expect(job).toEqual(shedJob());
  });

  it("the last leg's end is the building and does not move alone", () => {
    const job = shedJob();
    nudge(job, "/runs/0/legs/2", [1, 0]);
    expect(job).toEqual(shedJob());
    nudge(job, "/runs/0/legs/1", [1, 0]);
    expect(job.runs[0]!.legs[1]!.through_m!.at(-1)).toEqual([15, 10]);
  });

  it("rods and the far end of a pipe move by themselves", () => {
    const job = shedJob();
    moveRod(job, "/buildings/1/electrode", [40, 1]);
    nudge(job, "/buildings/1/metalwork/0", [0, -1]);
    expect(job.buildings[1]!.electrode!.at_m).toEqual([40, 1]);
    expect(job.buildings[1]!.metalwork![0]!.through_m![0]).toEqual([30, -1]);
  });
});

describe("legs", () => {
  it("parted in two are as long as before on the drawing, and no longer measured", () => {
    const job = shedJob();
    const before = outline(job).stretches.reduce((sum, s) => sum + pathLength(s.path), 0);
    const made = splitLeg(job, "/runs/0/legs/1");
    expect(made).toBe("/runs/0/legs/2");
    expect(job.runs[0]!.legs).toHaveLength(4);
    const after = outline(job).stretches.reduce((sum, s) => sum + pathLength(s.path), 0);
    expect(after).toBeCloseTo(before, 6);
    expect(lengths(job).map((r) => r.basis)).toEqual(["assumed", "assumed", "assumed", "assumed"]);
  });

  it("a new corner changes no length", () => {
    const job = shedJob();
    addCorner(job, "/runs/0/legs/1");
    expect(job.runs[0]!.legs[1]!.through_m).toHaveLength(3);
    expect(lengths(job)).toEqual(lengths(shedJob()));
  });

  it("the last one taken away leaves a run that still ends at its building", () => {
    const job = shedJob();
    remove(job, "/runs/0/legs/2");
    expect(job.runs[0]!.legs.at(-1)!.through_m!.at(-1)).toEqual([20, 10]);
    remove(job, "/runs/0/legs/1");
    remove(job, "/runs/0/legs/0");
    expect(job.runs).toEqual([]);
  });

  it("a leg added without a drawing shares the straight way with the others", () => {
    const job = shedJob();
    addLeg(job, "/runs/0", "overhead", 12);
    const drawn = outline(job).stretches;
    expect(drawn.map((s) => s.drawn)).toEqual([false, false, false, false]);
    expect(pathLength(drawn[3]!.path) / pathLength(drawn[0]!.path)).toBeCloseTo(12 / 5, 6);
    expect(misfits(job)).toEqual([]);
  });

  it("drawn anew keep what else is known of the run", () => {
    const job = shedJob();
    job.runs[0]!["fed_from"] = "tails";
    redrawRun(job, "/runs/0", "house", [{ method: "overhead", points: [[20, 10]] }]);
    expect(job.runs[0]).toMatchObject({ id: "shed-feed", fed_from: "tails", legs: [{ method: "overhead" }] });
    expect(misfits(job)).toEqual([]);
  });
});

describe("taking away never says that there is nothing", () => {
  it("the last pipe leaves metal not known, not none", () => {
    const job = shedJob();
    remove(job, "/buildings/1/metalwork/0");
    expect("metalwork" in job.buildings[1]!).toBe(false);
  });

  it("the last circuit leaves the load not known", () => {
    const job = shedJob();
    remove(job, "/buildings/1/circuits/0");
    expect(job.buildings[1]!.circuits).toHaveLength(1);
    remove(job, "/buildings/1/circuits/0");
    expect("circuits" in job.buildings[1]!).toBe(false);
  });

  it("a building takes its runs along, the house is not taken", () => {
    const job = shedJob();
    remove(job, "/buildings/0");
    expect(job).toEqual(shedJob());
    remove(job, "/buildings/1");
    expect(job.buildings.map((b) => b.id)).toEqual(["house"]);
    expect(job.runs).toEqual([]);
  });

  it("a rod goes whole", () => {
    const job = shedJob();
    remove(job, "/buildings/1/electrode");
    expect("electrode" in job.buildings[1]!).toBe(false);
  });
});

describe("a leg that is only drawn", () => {
  it("parted and half of it taken off is drawn to the building and as long as it is drawn", () => {
    for (const [x, y] of [[12.3, 6.1], [9.7, 9.7], [18, 6]] as Point[]) {
      const job = shedJob();
      job.buildings[1]!.at_m = [x, y];
      job.runs = [];
      addStraightRun(job, "house", "shed", "clipped");
      const other = splitLeg(job, "/runs/0/legs/0");
      for (const s of outline(job).stretches) expect(isProposed(s.length, s.path)).toBe(true);
      remove(job, other);
      const [leg] = outline(job).stretches;
      expect(leg!.path.at(-1)).toEqual([x, y]);
      expect(leg!.length).toEqual({ value: drawnLength(leg!.path), basis: "assumed" });
      expect(isLoose(leg!.length)).toBe(true);
    }
  });
});

describe("what belongs to a building", () => {
  it("a circuit takes the place of a total", () => {
    const job = shedJob();
    delete job.buildings[1]!.circuits;
    job.buildings[1]!["load_w"] = 3000;
    addCircuit(job, "/buildings/1", { name: "Saw", kind: "motor", load_w: 1500 });
    expect(job.buildings[1]).not.toHaveProperty("load_w");
    expect(misfits(job)).toEqual([]);
  });

  it("a pipe can be given to another building, and ends there", () => {
    const job = shedJob();
    const garage = addBuilding(job, [0, 30], "garage");
    expect(giveMetal(job, "/buildings/1/metalwork/0", garage)).toBe("/buildings/2/metalwork/0");
    expect(job.buildings[2]!.metalwork![0]!.through_m).toEqual([[30, 0], [0, 30]]);
    expect("metalwork" in job.buildings[1]!).toBe(false);
  });

  it("a name can be given and taken", () => {
    const job = shedJob();
    rename(job, "/buildings/1", "  Potting shed ");
    expect(job.buildings[1]!.name).toBe("Potting shed");
    rename(job, "/buildings/1", " ");
    expect("name" in job.buildings[1]!).toBe(false);
  });
});

/** The same numbers each time: a failure can be looked at. */
function dice(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 1664525 + 1013904223) % 4294967296;
    return state / 4294967296;
  };
}

function anyEdit(job: Job, roll: () => number): void {
  const pick = <T>(list: readonly T[]): T => list[Math.floor(roll() * list.length)]!;
  const at = (): Point => [roll() * 5000 - 2500, roll() * 200 - 100];
  const others = job.buildings.map((_, i) => `/buildings/${i}`).slice(1);
  const thing = pick(thingsOf(outline(job))).pointer;
  const legs = outline(job).stretches.map((s) => s.pointer);
  const acts: Array<() => void> = [
    () => addBuilding(job, at(), pick(["shed", "stable", "hot tub", null])),
    () => addRun(job, "house", job.buildings.at(-1)!.id, [{ method: "overhead", points: [at(), at()] }]),
    () => moveBuilding(job, pick(others), at()),
    () => moveCorner(job, pick(legs), 1, at()),
    () => splitLeg(job, pick(legs), roll()),
    () => addCorner(job, pick(legs)),
    () => addMetal(job, pick(others), "fence", [at(), at(), at()]),
    () => addRod(job, pick(others), at()),
    () => giveMetal(job, thing, pick(others)),
    () => nudge(job, thing, [roll() * 3 - 1, roll() * 3 - 1]),
    () => addCircuit(job, pick(others), { name: "Saw", kind: "motor", load_w: { value: 1500, basis: "declared" } }),
    () => rename(job, thing, "Über der Straße"),
    () => { if (job.buildings.length > 3) remove(job, thing); },
  ];
  if (others.length > 0 && legs.length > 0) pick(acts)();
  else addStraightRun(job, "house", job.buildings[Number(addBuilding(job, [9, 9], "shed").slice(11))]!.id, "overhead");
}

describe("any edits in any order", () => {
  it("leave a job that the schema takes and a drawing without holes", () => {
    for (let seed = 1; seed <= 40; ++seed) {
      const roll = dice(seed);
      const job = shedJob();
      for (let i = 0; i < 30; ++i) anyEdit(job, roll);
      if (job.runs.length === 0) continue;
      expect(misfits(job), `seed ${seed}`).toEqual([]);
      for (const thing of thingsOf(outline(job))) {
        const points = "path" in thing ? thing.path : [thing.at];
        expect(points.flat().every(Number.isFinite), `seed ${seed}`).toBe(true);
      }
    }
  });

  it("a length that is proposed stays what the drawing says", () => {
    for (let seed = 1; seed <= 20; ++seed) {
      const roll = dice(seed);
      const job = shedJob();
      for (const leg of job.runs[0]!.legs) leg.length_m = { value: 1, basis: "assumed" };
      redrawRun(job, "/runs/0", "house", [{ method: "clipped", points: [[4, 1]] }, { method: "overhead", points: [[20, 10]] }]);
      for (let i = 0; i < 10; ++i) {
        moveBuilding(job, "/buildings/1", [roll() * 90, roll() * 90]);
        moveCorner(job, "/runs/0/legs/0", 1, [roll() * 9, roll() * 9]);
      }
      for (const s of outline(job).stretches) expect(isProposed(s.length, s.path)).toBe(true);
    }
  });
});
