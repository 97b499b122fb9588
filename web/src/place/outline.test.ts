import { describe, expect, it } from "vitest";
import demo from "../../../examples/demo.json";
import { pathLength } from "./geometry";
import type { Job } from "./job";
import { boxAround, isProposed, offScale, outline, thingAt, thingOfFact } from "./outline";
import { shedJob } from "./sample";

describe("the place as a job tells it", () => {
  it("has every building, leg, pipe and rod, where it is said to be", () => {
    const of = outline(shedJob());
    expect(of.spots.map((s) => s.at)).toEqual([[0, 0], [20, 10]]);
    expect(of.stretches.map((s) => s.path)).toEqual([
      [[0, 0], [5, 0]], [[5, 0], [14, 0], [14, 10]], [[14, 10], [20, 10]],
    ]);
    expect(of.parts[0]!.path).toEqual([[30, 0], [20, 10]]);
    expect(of.rods[0]!.at).toEqual([23, 12]);
  });

  it("lays out a job that says no places: as far off as the run is long, legs in proportion", () => {
    const job = structuredClone(demo) as unknown as Job;
    delete job.buildings[1]!.at_m;
    const of = outline(job);
    const studio = of.spots[1]!;
    expect(studio.placed).toBe(false);
    expect(Math.hypot(...studio.at)).toBeCloseTo(30, 6);
    expect(of.stretches.map((s) => Math.round(pathLength(s.path)))).toEqual([7, 21, 2]);
    expect(of.stretches.every((s) => !s.drawn)).toBe(true);
    expect(of.stretches.at(-1)!.path.at(-1)).toEqual(studio.at);
  });

  it("draws what is not drawn between what is", () => {
    const job = shedJob();
    delete job.runs[0]!.legs[0]!.through_m;
    delete job.runs[0]!.legs[2]!.through_m;
    const paths = outline(job).stretches.map((s) => s.path);
    expect(paths[0]).toEqual([[0, 0], [14, 0]]);
    expect(paths[2]).toEqual([[14, 10], [20, 10]]);
  });

  it("leaves out a run whose buildings are not there", () => {
    const job = shedJob();
    job.runs[0]!.to = "nowhere";
    expect(outline(job).stretches).toEqual([]);
  });

  it("all lies within its box", () => {
    const box = boxAround(outline(shedJob()));
    expect(box).toMatchObject({ west: -6, south: -6, east: 30 });
    expect(box.north).toBeGreaterThanOrEqual(15);
  });
});

describe("a fact belongs to the thing it is asked of", () => {
  const of = outline(shedJob());
  it.each([
    ["/intake/ze_ohm", "/buildings/0"], ["/ground/soil", "/buildings/0"],
    ["/buildings/1/construction", "/buildings/1"],
    ["/buildings/1/metalwork/0/bonded_at_house", "/buildings/1/metalwork/0"],
    ["/buildings/1/metalwork", "/buildings/1"], ["/buildings/1/electrode/resistance_ohm", "/buildings/1/electrode"],
    ["/runs/0/legs/1/depth_m", "/runs/0/legs/1"], ["/runs/0/existing/condition", "/runs/0/legs/0"],
  ])("%s", (fact, thing) => {
    expect(thingOfFact(of, fact)?.pointer).toBe(thing);
  });
  it("and some belong to none", () => {
    expect(thingOfFact(of, "/wishes/prefer")).toBeUndefined();
    expect(thingAt(of, "/runs/7/legs/0")).toBeUndefined();
  });
});

describe("a length", () => {
  const path: Array<[number, number]> = [[0, 0], [10, 0]];
  it("is only drawn when it is assumed and as long as drawn", () => {
    expect(isProposed({ value: 10, basis: "assumed" }, path)).toBe(true);
    expect(isProposed({ value: 12, basis: "assumed" }, path)).toBe(false);
    expect(isProposed({ value: 10, basis: "measured" }, path)).toBe(false);
    expect(isProposed(10, path)).toBe(false);
    expect(isProposed({ low: 10, high: 10, basis: "assumed" }, path)).toBe(true);
    expect(isProposed(null, path)).toBe(false);
  });
  it("is off scale when the drawing shows quite another", () => {
    expect(offScale(10, path)).toBe(false);
    expect(offScale(20, path)).toBe(true);
    expect(offScale(4, path)).toBe(true);
    expect(offScale(undefined, path)).toBe(false);
  });
});
