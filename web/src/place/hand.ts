// What the hand is at: nothing, or putting something on the place tap by tap. Each tap gives the
// next state, and where something is finished the change of the job.

import { addBuilding, addMetal, addRod, addRun, redrawRun, type Drawn } from "./edits";
import { distance, tidy } from "./geometry";
import type { Job, Point } from "./job";
import { outline, type Spot } from "./outline";

export type Hand =
  | { does: "rest" }
  | { does: "ask"; at: Point }
  | { does: "route"; from: string | null; to: string | null; method: string; drawn: Drawn[]; again: string | null }
  | { does: "metal"; what: string | null; path: Point[] }
  | { does: "rod"; building: string | null };

export type Act = (job: Job) => string;

export interface Next {
  hand: Hand;
  /** The change that was finished; it returns the pointer of what is now chosen. */
  act?: Act;
}

export const rest: Hand = { does: "rest" };
export const usualMethod = "buried direct";

export function startRoute(from: string | null, to: string | null, again: string | null = null): Hand {
  return { does: "route", from, to, method: usualMethod, drawn: [], again };
}

/** The way of laying from here on; the stretch drawn so far keeps its own. */
export function layAs(hand: Hand, method: string): Hand {
  return hand.does === "route" ? { ...hand, method } : hand;
}

function drawnTo(drawn: Drawn[], method: string, p: Point): Drawn[] {
  const last = drawn.at(-1);
  if (last?.method === method) return [...drawn.slice(0, -1), { method, points: [...last.points, p] }];
  return [...drawn, { method, points: [p] }];
}

/** Takes the last point back. */
export function takeBack(hand: Hand): Hand {
  if (hand.does === "metal") return { ...hand, path: hand.path.slice(0, -1) };
  if (hand.does !== "route") return hand;
  const last = hand.drawn.at(-1);
  if (!last) return { ...hand, from: null };
  const points = last.points.slice(0, -1);
  const before = hand.drawn.slice(0, -1);
  return { ...hand, drawn: points.length > 0 ? [...before, { ...last, points }] : before };
}

export function tapGround(hand: Hand, at: Point, job: Job): Next {
  const p = tidy(at);
  if (hand.does === "rest" || hand.does === "ask") return { hand: { does: "ask", at: p } };
  if (hand.does === "route") {
    if (!hand.from) return { hand };
    return { hand: { ...hand, drawn: drawnTo(hand.drawn, hand.method, p) } };
  }
  if (hand.does === "metal") return { hand: { ...hand, path: [...hand.path, p] } };
  const building = hand.building ?? nearestOutbuilding(job, p)?.pointer;
  if (!building) return { hand };
  return { hand: rest, act: (copy) => addRod(copy, building, p) };
}

/** Metal of which only the building is known is not drawn. */
export function enter(hand: Hand, spot: Spot): Next {
  if (hand.does !== "metal" || !hand.what) return { hand };
  const { what, path } = hand;
  return {
    hand: rest,
    act: (job) => addMetal(job, spot.pointer, what, path.length > 0 ? [...path, spot.at] : []),
  };
}

export function tapBuilding(hand: Hand, spot: Spot, at: Point = spot.at): Next {
  const enters = hand.does === "metal" && spot.kind === "building" && hand.path.length > 0;
  if (enters && hand.what) return enter(hand, spot);
  if (hand.does === "metal") return { hand: { ...hand, path: [...hand.path, spot.at] } };
  if (hand.does === "rod" && spot.kind === "building") return { hand: { ...hand, building: spot.pointer } };
  if (hand.does !== "route") return { hand: rest };
  if (!hand.from) return { hand: { ...hand, from: spot.id } };
  if (spot.id !== hand.from && spot.kind !== "house") return finishedAt(hand, spot);
  return { hand: { ...hand, drawn: drawnTo(hand.drawn, hand.method, tidy(at)) } };
}

function finishedAt(hand: Extract<Hand, { does: "route" }>, spot: Spot): Next {
  const { from, again, method } = hand;
  const drawn = drawnTo(hand.drawn, method, spot.at);
  return {
    hand: rest,
    act: (job) => {
      if (again) redrawRun(job, again, from!, drawn);
      else addRun(job, from!, spot.id, drawn);
      return spot.pointer;
    },
  };
}

/** Metal that enters no building, such as a fence, ends where the last tap was. */
export function endMetal(hand: Hand, job: Job): Next {
  if (hand.does !== "metal" || hand.path.length < 2 || !hand.what) return { hand };
  const { what, path } = hand;
  const building = nearestOutbuilding(job, path.at(-1)!)?.pointer;
  if (!building) return { hand };
  return { hand: rest, act: (copy) => addMetal(copy, building, what, path) };
}

export function dropBuilding(at: Point, use: string): Act {
  if (use !== "container") return (job) => addBuilding(job, at, use);
  return (job) => {
    const made = addBuilding(job, at, "other");
    job.buildings.at(-1)!["construction"] = "steel container";
    return made;
  };
}

export function nearestOutbuilding(job: Job, p: Point): Spot | undefined {
  const others = outline(job).spots.filter((s) => s.kind === "building");
  return others.sort((a, b) => distance(a.at, p) - distance(b.at, p))[0];
}

/** Buildings a run may begin at to reach `to`: the house and what is fed without passing `to`. */
export function mayFeed(job: Job, to: string): string[] {
  const house = job.buildings.find((b) => b.at === "origin")?.id;
  const fed = new Set(house ? [house] : []);
  let grown = true;
  while (grown) {
    grown = false;
    for (const run of job.runs) {
      if (!fed.has(run.from) || fed.has(run.to) || run.to === to) continue;
      fed.add(run.to);
      grown = true;
    }
  }
  return [...fed];
}
