// Strokes of a surveyor's sketch: straight lines that run a little past their corners.

import type { Point } from "../job";

const one = (x: number) => Math.round(x * 10) / 10;

export function polyline(path: readonly Point[]): string {
  return path.map(([x, y], i) => `${i ? "L" : "M"}${one(x)} ${one(y)}`).join("");
}

/** A box about a middle whose sides overrun one another. */
export function sketchedBox([x, y]: Point, [w, h]: Point, over = 5): string {
  const [l, r, t, b] = [x - w, x + w, y - h, y + h];
  return [
    polyline([[l - over, t], [r + over, t]]), polyline([[l - over, b], [r + over, b]]),
    polyline([[l, t - over], [l, b + over]]), polyline([[r, t - over], [r, b + over]]),
  ].join("");
}

/** Short strokes across a path, every `step` pixels: saddles of a cable on a wall. */
export function ticks(path: readonly Point[], step: number, half: number): string {
  let left = step / 2;
  let out = "";
  for (let i = 1; i < path.length; ++i) {
    const a = path[i - 1]!;
    const b = path[i]!;
    const far = Math.hypot(b[0] - a[0], b[1] - a[1]);
    if (far === 0) continue;
    const [ux, uy] = [(b[0] - a[0]) / far, (b[1] - a[1]) / far];
    let at = left;
    for (; at < far && out.length < 8000; at += step) {
      const [x, y] = [a[0] + ux * at, a[1] + uy * at];
      out += polyline([[x - uy * half, y + ux * half], [x + uy * half, y - ux * half]]);
    }
    left = at - far;
  }
  return out;
}
