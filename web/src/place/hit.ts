// What lies under a finger. Everything is at least as large as a finger is, whatever the scale.

import { distance, nearestOn, pathLength } from "./geometry";
import { middleOf } from "./edits";
import type { Point } from "./job";
import type { Outline, Thing } from "./outline";
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

/** Whether there is room to write a leg's length: not where legs are only a few pixels long. */
export function lengthFits(path: readonly Point[], view: View, chosen: boolean): boolean {
  return chosen || pathLength(path) * view.scale >= 40;
}

/** Where a leg's length is written: beside its middle, in pixels. */
export function labelAt(path: readonly Point[], view: View, size: Size): Point {
  const pixels = path.map((p) => toPixels(view, size, p));
  const [x, y] = toPixels(view, size, middleOf(path));
  const a = pixels[0]!;
  const b = pixels.at(-1)!;
  const run = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
  const up = b[0] >= a[0] ? 1 : -1;
  return [x + (up * 16 * (b[1] - a[1])) / run, y - (up * 16 * (b[0] - a[0])) / run];
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
  for (const rod of of.rods) {
    if (distance(on(rod.at), pixel) < finger) return { on: "thing", pointer: rod.pointer, moves: true };
  }
  for (const leg of of.stretches) {
    if (!lengthFits(leg.path, view, leg.pointer === chosen?.pointer)) continue;
    const [x, y] = labelAt(leg.path, view, size);
    if (Math.abs(pixel[0] - x) < 28 && Math.abs(pixel[1] - y) < 14) {
      return { on: "length", pointer: leg.pointer };
    }
  }
  for (const spot of of.spots) {
    const [x, y] = on(spot.at);
    const [w, h] = halfSize(spot.kind, view.scale);
    if (Math.abs(pixel[0] - x) <= w && Math.abs(pixel[1] - y) <= h) {
      return { on: "thing", pointer: spot.pointer, moves: spot.kind === "building" };
    }
  }
  const lines = [...of.stretches, ...of.parts].map((line) =>
    ({ line, off: nearestOn(line.path.map(on), pixel).off }));
  const near = lines.sort((a, b) => a.off - b.off)[0];
  return near && near.off < finger ? { on: "thing", pointer: near.line.pointer, moves: false } : null;
}
