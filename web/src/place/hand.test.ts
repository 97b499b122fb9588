import { describe, expect, it } from "vitest";
import { misfits } from "./fits";
import {
  endMetal, enter, layAs, mayFeed, rest, startRoute, takeBack, tapBuilding, tapGround, type Hand, type Next,
} from "./hand";
import { addBuilding, addStraightRun } from "./edits";
import type { Job, Point } from "./job";
import { outline, type Spot } from "./outline";
import { bareJob, shedJob } from "./sample";

const spotOf = (job: Job, id: string): Spot => outline(job).spots.find((s) => s.id === id)!;

function taps(job: Job, hand: Hand, points: Point[]): Hand {
  return points.reduce<Hand>((now, p) => tapGround(now, p, job).hand, hand);
}

function done(job: Job, next: Next): string {
  expect(next.hand).toEqual(rest);
  return next.act!(job);
}

describe("drawing a run", () => {
  it("taps along the way become legs, one for each way of laying", () => {
    const job = bareJob();
    addBuilding(job, [20, 0], "shed");
    let hand = layAs(startRoute("house", "shed"), "clipped");
    hand = taps(job, hand, [[4, 0]]);
    hand = taps(job, layAs(hand, "buried direct"), [[4, 6], [16, 6]]);
    const made = done(job, tapBuilding(layAs(hand, "clipped"), spotOf(job, "shed")));
    expect(made).toBe("/buildings/1");
    expect(job.runs[0]!.legs.map((leg) => [leg.method, leg.through_m])).toEqual([
      ["clipped", [[4, 0]]], ["buried direct", [[4, 6], [16, 6]]], ["clipped", [[20, 0]]],
    ]);
  });

  it("begins where the first building is tapped, and a corner may lie at its wall", () => {
    const job = shedJob();
    const begun = tapBuilding(startRoute(null, null), spotOf(job, "house")).hand;
    expect(begun).toMatchObject({ from: "house", drawn: [] });
    const corner = tapBuilding(begun, spotOf(job, "house"), [4, 1]).hand;
    expect(corner).toMatchObject({ drawn: [{ method: "buried direct", points: [[4, 1]] }] });
    expect(tapGround(startRoute(null, null), [3, 3], job).hand).toMatchObject({ from: null, drawn: [] });
  });

  it("a point can be taken back, down to the beginning", () => {
    const job = shedJob();
    let hand = taps(job, startRoute("house", "shed"), [[1, 1], [2, 2]]);
    hand = takeBack(hand);
    expect(hand).toMatchObject({ drawn: [{ points: [[1, 1]] }] });
    hand = takeBack(hand);
    expect(hand).toMatchObject({ from: "house", drawn: [] });
    expect(takeBack(hand)).toMatchObject({ from: null });
  });

  it("drawn anew it stays the same run", () => {
    const job = shedJob();
    const again = startRoute("house", "shed", "/runs/0");
    done(job, tapBuilding(again, spotOf(job, "shed")));
    expect(job.runs).toHaveLength(1);
    expect(job.runs[0]!.legs).toHaveLength(1);
    expect(misfits(job)).toEqual([]);
  });
});

describe("putting metal and rods", () => {
  it("a pipe ends at the building it enters", () => {
    const job = shedJob();
    const hand = taps(job, { does: "metal", what: "gas pipe", path: [] }, [[40, 0], [40, 9]]);
    expect(done(job, tapBuilding(hand, spotOf(job, "shed")))).toBe("/buildings/1/metalwork/1");
    expect(job.buildings[1]!.metalwork![1]).toEqual({ what: "gas pipe", through_m: [[40, 0], [40, 9], [20, 10]] });
  });

  it("a fence ends on the ground and belongs to the nearest outbuilding", () => {
    const job = shedJob();
    const hand = taps(job, { does: "metal", what: "fence", path: [] }, [[30, 0], [30, 30]]);
    done(job, endMetal(hand, job));
    expect(job.buildings[1]!.metalwork![1]!.through_m).toEqual([[30, 0], [30, 30]]);
    expect(endMetal({ does: "metal", what: "fence", path: [[1, 1]] }, job).act).toBeUndefined();
  });

  it("metal nobody drew is known all the same", () => {
    const job = shedJob();
    done(job, enter({ does: "metal", what: "frame", path: [] }, spotOf(job, "shed")));
    expect(job.buildings[1]!.metalwork![1]).toEqual({ what: "frame" });
  });

  it("what is not named is not put down", () => {
    const job = shedJob();
    expect(tapBuilding({ does: "metal", what: null, path: [[1, 1]] }, spotOf(job, "shed")).act).toBeUndefined();
  });

  it("a rod goes to the nearest outbuilding, and nowhere when there is none", () => {
    const job = shedJob();
    delete job.buildings[1]!.electrode;
    done(job, tapGround({ does: "rod", building: null }, [25, 11], job));
    expect(job.buildings[1]!.electrode).toEqual({ at_m: [25, 11] });
    expect(tapGround({ does: "rod", building: null }, [1, 1], bareJob()).act).toBeUndefined();
  });
});

describe("where a run may begin", () => {
  it("at the house or at what is fed without the building itself", () => {
    const job = shedJob();
    addBuilding(job, [40, 0], "garage");
    addStraightRun(job, "shed", "garage", "overhead");
    expect(mayFeed(job, "shed")).toEqual(["house"]);
    expect(mayFeed(job, "garage")).toEqual(["house", "shed"]);
    addBuilding(job, [60, 0], "gym");
    expect(mayFeed(job, "gym")).toEqual(["house", "shed", "garage"]);
  });
});
