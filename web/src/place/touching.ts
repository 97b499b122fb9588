// What touches what on the drawing: a pipe that enters a building, a route that crosses a pipe.

import { crossings, distance, nearestOn } from "./geometry";
import type { Point } from "./job";
import type { Outline } from "./outline";

export interface Crossing {
  leg: string;
  metal: string;
  at: Point;
}

/** Where routes cross what is in the ground. The ends at a building are its walls, no crossing. */
export function crossed(of: Outline): Crossing[] {
  const near = 3;
  return of.stretches.flatMap((leg) => of.parts.flatMap((metal) =>
    crossings(leg.path, metal.path)
      .filter((at) => of.spots.every((spot) => distance(spot.at, at) > near))
      .map((at) => ({ leg: leg.pointer, metal: metal.pointer, at }))));
}

/** Everything that touches a building: what feeds it, what it feeds, metal, rods. */
export function touching(of: Outline, building: string): string[] {
  const spot = of.spots.find((s) => s.pointer === building);
  if (!spot) return [];
  const near = 3;
  const own = [...of.parts, ...of.rods].filter((thing) => thing.building === building);
  const legs = of.stretches.filter((s) =>
    distance(s.path[0]!, spot.at) < near || distance(s.path.at(-1)!, spot.at) < near);
  const passing = of.parts.filter((part) =>
    part.building !== building && nearestOn(part.path, spot.at).off < near);
  return [...legs, ...own, ...passing].map((thing) => thing.pointer);
}
