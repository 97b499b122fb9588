// What lies under a finger. Everything is at least as large as a finger is, whatever the scale.

import { between, distance, nearestOn, pathLength } from "./geometry";
import { middleOf } from "./edits";
import type { Point } from "./job";
import type { Outline, Spot, Thing } from "./outline";
import { toPixels, type Size, type View } from "./view";

export const finger = 22;
export const houseSize: Point = [9, 7];
export const buildingSize: Point = [5, 3.6];

export type Hit =
  | { on: "thing"; pointer: string; moves: boolean }
  | { on: "corner"; pointer: string; corner: number }
  | { on: "length"; pointer: string };

/** Half of what a house or an outbuilding measures on the screen. */
export function halfSize(kind: "house" | "building", scale: number): Point {
  const [w, h] = kind === "house" ? houseSize : buildingSize;
  return [Math.max(finger, (w * scale) / 2), Math.max(finger * 0.8, (h * scale) / 2)];
}

/** Where a straight leaves a box about its beginning, as a part of its way; 1 where it does not. */
function leaves(from: Point, to: Point, [w, h]: Point): number {
  const [dx, dy] = [Math.abs(to[0] - from[0]), Math.abs(to[1] - from[1])];
  return Math.min(1, dx > 0 ? w / dx : 1, dy > 0 ? h / dy : 1);
}

/** A path from the wall of the box that it begins in, in pixels. */
function fromWall(path: Point[], half: Point): Point[] {
  const middle = path[0]!;
  const out = path.findIndex(([x, y], i) =>
    i > 0 && (Math.abs(x - middle[0]) > half[0] || Math.abs(y - middle[1]) > half[1]));
  if (out < 0) return path;
  const inner = path[out - 1]!;
  if (out > 1) return [inner, ...path.slice(out)];
  return [between(middle, path[1]!, leaves(middle, path[1]!, half)), ...path.slice(1)];
}

interface Seen {
  of: Outline;
  view: View;
  size: Size;
}

/** The path of a leg as it is drawn, in pixels: it begins and ends at walls, not in the rooms. */
export function drawnPath(path: readonly Point[], { of, view, size }: Seen): Point[] {
  const spotAt = (p: Point) => of.spots.find((spot) => distance(spot.at, p) < 0.01);
  let pixels = path.map((p) => toPixels(view, size, p));
  const first = spotAt(path[0]!);
  const last = spotAt(path.at(-1)!);
  if (first) pixels = fromWall(pixels, halfSize(first.kind, view.scale));
  if (last) pixels = fromWall([...pixels].reverse(), halfSize(last.kind, view.scale)).reverse();
  return pixels;
}

/** Whether there is room to write a leg's length: not where it shows only a few pixels long. */
export function lengthFits(path: readonly Point[], seen: Seen, chosen: boolean): boolean {
  if (chosen) return true;
  return pathLength(path) * seen.view.scale >= 40 && pathLength(drawnPath(path, seen)) >= 16;
}

/** Where a leg's length is written: beside its middle, in pixels. */
export function labelAt(path: readonly Point[], seen: Seen): Point {
  const pixels = drawnPath(path, seen);
  const [x, y] = middleOf(pixels);
  const a = pixels[0]!;
  const b = pixels.at(-1)!;
  const run = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
  const up = b[0] >= a[0] ? 1 : -1;
  return [x + (up * 16 * (b[1] - a[1])) / run, y - (up * 16 * (b[0] - a[0])) / run];
}

/** A name as there is room for on the plan. */
export function shortName(name: string, most = 24): string {
  return name.length <= most ? name : `${name.slice(0, most - 1).trimEnd()}…`;
}

/** Whether a building's body or what is written beneath it lies there. */
function coversSpot(spot: Spot, pixel: Point, { view, size }: Seen): boolean {
  const [x, y] = toPixels(view, size, spot.at);
  const [w, h] = halfSize(spot.kind, view.scale);
  const [dx, dy] = [Math.abs(pixel[0] - x), pixel[1] - y];
  if (dx <= w && Math.abs(dy) <= h) return true;
  const wide = Math.max(w, shortName(spot.name).length * 3.6);
  return dx <= wide && dy > h && dy <= h + (spot.kind === "house" ? 40 : 26);
}

/** Corners that can be moved: of a leg all but its beginning and the run's end, of a pipe all. */
export function cornersOf(thing: Thing | undefined, last: boolean): number[] {
  if (thing?.kind !== "leg" && thing?.kind !== "metal") return [];
  const all = thing.path.map((_, i) => i);
  if (thing.kind === "metal") return all;
  return all.slice(1, last ? -1 : undefined);
}

interface Asked {
  of: Outline;
  view: View;
  size: Size;
  chosen: Thing | undefined;
  /** The chosen leg is the last of its run. */
  last: boolean;
}

export function hitAt(pixel: Point, { of, view, size, chosen, last }: Asked): Hit | null {
  const on = (p: Point) => toPixels(view, size, p);
  if (chosen && (chosen.kind === "leg" || chosen.kind === "metal")) {
    for (const corner of cornersOf(chosen, last)) {
      if (distance(on(chosen.path[corner]!), pixel) < finger) {
        return { on: "corner", pointer: chosen.pointer, corner };
      }
    }
  }
  const seen = { of, view, size };
  const spot = of.spots.find((one) => coversSpot(one, pixel, seen));
  const rod = of.rods.find((one) => distance(on(one.at), pixel) < finger
    && (!spot || distance(on(one.at), pixel) < distance(on(spot.at), pixel)));
  if (rod) return { on: "thing", pointer: rod.pointer, moves: true };
  if (spot) return { on: "thing", pointer: spot.pointer, moves: spot.kind === "building" };
  for (const leg of of.stretches) {
    if (!lengthFits(leg.path, seen, leg.pointer === chosen?.pointer)) continue;
    const [x, y] = labelAt(leg.path, seen);
    if (Math.abs(pixel[0] - x) < 28 && Math.abs(pixel[1] - y) < 14) {
      return { on: "length", pointer: leg.pointer };
    }
  }
  const lines = [...of.stretches, ...of.parts].map((line) =>
    ({ line, off: nearestOn(line.path.map(on), pixel).off }));
  const near = lines.sort((a, b) => a.off - b.off)[0];
  return near && near.off < finger ? { on: "thing", pointer: near.line.pointer, moves: false } : null;
}
