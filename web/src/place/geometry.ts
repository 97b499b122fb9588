// Shapes on the plan, in metres: x to the east, y to the north, the house at 0,0.

import type { Point } from "./job";

export const farthest = 2000;

export interface Box {
  west: number;
  south: number;
  east: number;
  north: number;
}

export function distance(a: Point, b: Point): number {
  return Math.hypot(b[0] - a[0], b[1] - a[1]);
}

export function pathLength(path: readonly Point[]): number {
  let sum = 0;
  for (let i = 1; i < path.length; ++i) sum += distance(path[i - 1]!, path[i]!);
  return sum;
}

export function between(a: Point, b: Point, part: number): Point {
  return [a[0] + (b[0] - a[0]) * part, a[1] + (b[1] - a[1]) * part];
}

/** To the decimetre, and within the reach of a job. */
export function tidy(p: Point): Point {
  const one = (x: number) => {
    const held = Math.min(farthest, Math.max(-farthest, x));
    return Math.round(held * 10) / 10 + 0;
  };
  return [one(p[0]), one(p[1])];
}

/** The longest that a leg may be stated to be. */
export const longest = 5000;

/** A length measured off the drawing, to the decimetre, never nothing and never past a leg's most. */
export function drawnLength(path: readonly Point[]): number {
  return Math.min(longest, Math.max(0.1, Math.round(pathLength(path) * 10) / 10));
}

/** The point a part of the way along a path, 0 its beginning and 1 its end. */
export function along(path: readonly Point[], part: number): Point {
  return cut(path, part)[0].at(-1)!;
}

/** A path cut in two a part of the way along; both hold the point of the cut. */
export function cut(path: readonly Point[], part: number): [Point[], Point[]] {
  let left = pathLength(path) * Math.min(1, Math.max(0, part));
  for (let i = 1; i < path.length; ++i) {
    const step = distance(path[i - 1]!, path[i]!);
    if (left <= step) {
      const at = step > 0 ? between(path[i - 1]!, path[i]!, left / step) : path[i]!;
      return [[...path.slice(0, i), at], [at, ...path.slice(i)]];
    }
    left -= step;
  }
  return [[...path], [path.at(-1)!]];
}

/** The nearest point of a path: on which piece it lies and how far off. */
export function nearestOn(path: readonly Point[], p: Point): { at: Point; piece: number; off: number } {
  let best = { at: path[0]!, piece: 0, off: distance(path[0]!, p) };
  for (let i = 1; i < path.length; ++i) {
    const a = path[i - 1]!;
    const b = path[i]!;
    const square = (b[0] - a[0]) ** 2 + (b[1] - a[1]) ** 2;
    const dot = (p[0] - a[0]) * (b[0] - a[0]) + (p[1] - a[1]) * (b[1] - a[1]);
    const at = square > 0 ? between(a, b, Math.min(1, Math.max(0, dot / square))) : a;
    const off = distance(at, p);
    if (off < best.off) best = { at, piece: i - 1, off };
  }
  return best;
}

function crossing(a: Point, b: Point, c: Point, d: Point): Point | null {
  const across = (b[0] - a[0]) * (d[1] - c[1]) - (b[1] - a[1]) * (d[0] - c[0]);
  if (Math.abs(across) < 1e-12) return null;
  const t = ((c[0] - a[0]) * (d[1] - c[1]) - (c[1] - a[1]) * (d[0] - c[0])) / across;
  const u = ((c[0] - a[0]) * (b[1] - a[1]) - (c[1] - a[1]) * (b[0] - a[0])) / across;
  return t < 0 || t > 1 || u < 0 || u > 1 ? null : between(a, b, t);
}

/** Where two paths cross. Paths that lie on one another do not count. */
export function crossings(one: readonly Point[], other: readonly Point[]): Point[] {
  const found: Point[] = [];
  for (let i = 1; i < one.length; ++i) {
    for (let k = 1; k < other.length; ++k) {
      const at = crossing(one[i - 1]!, one[i]!, other[k - 1]!, other[k]!);
      if (at && !found.some((f) => distance(f, at) < 0.05)) found.push(at);
    }
  }
  return found;
}

export function boxOf(points: readonly Point[]): Box {
  const xs = points.map((p) => p[0]);
  const ys = points.map((p) => p[1]);
  return {
    west: Math.min(...xs),
    south: Math.min(...ys),
    east: Math.max(...xs),
    north: Math.max(...ys),
  };
}

/** The largest of 1, 2, 5, 10, 20 … metres that is drawn no longer than `most` pixels. */
export function roundLength(pixelsPerMetre: number, most: number): number {
  const longest = most / pixelsPerMetre;
  const ten = 10 ** Math.floor(Math.log10(longest));
  for (const step of [5, 2, 1]) if (step * ten <= longest * (1 + 1e-9)) return step * ten;
  return ten;
}
