// Where the names of metal are written, so that they do not lie on what else is written.

import { halfSize, labelAt, lengthFits, shortName } from "./hit";
import type { Point } from "./job";
import type { Outline, Part } from "./outline";
import { toPixels, type Size, type View } from "./view";

export interface Label {
  at: Point;
  anchor: "start" | "middle" | "end";
  said: string;
}

interface Area {
  left: number;
  right: number;
  top: number;
  bottom: number;
}

const letter = 6.7;

const around = (x: number, top: number, wide: number, high: number): Area =>
  ({ left: x - wide / 2, right: x + wide / 2, top, bottom: top + high });

function areaOf({ at: [x, y], anchor, said }: Label): Area {
  const wide = said.length * letter;
  const left = anchor === "start" ? x : anchor === "end" ? x - wide : x - wide / 2;
  return { left, right: left + wide, top: y - 11, bottom: y + 4 };
}

/** How much of one area lies on another, in square pixels. */
function shared(a: Area, b: Area): number {
  const wide = Math.min(a.right, b.right) - Math.max(a.left, b.left);
  const high = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
  return wide > 0 && high > 0 ? wide * high : 0;
}

/** What is written or drawn already: buildings with their names, and lengths. */
function taken(of: Outline, view: View, size: Size): Area[] {
  const spots = of.spots.flatMap((spot) => {
    const [x, y] = toPixels(view, size, spot.at);
    const [w, h] = halfSize(spot.kind, view.scale);
    const wide = Math.max(2 * w, shortName(spot.name).length * 7.4);
    return [around(x, y - h, 2 * w, 2 * h), around(x, y + h, wide, spot.kind === "house" ? 42 : 26)];
  });
  const lengths = of.stretches.filter((leg) => lengthFits(leg.path, { of, view, size }, false)).map((leg) => {
    const [x, y] = labelAt(leg.path, { of, view, size });
    return around(x, y - 10, 56, 20);
  });
  return [...spots, ...lengths];
}

function choicesOf(part: Part, said: string, view: View, size: Size): Label[] {
  const path = part.path.map((p) => toPixels(view, size, p));
  const [x, y] = path[0]!;
  const end = path.at(-1)!;
  const away: Label = x < end[0]
    ? { at: [x - 6, y + 4], anchor: "end", said } : { at: [x + 6, y + 4], anchor: "start", said };
  const wide = said.length * letter;
  const held = (to: number) => Math.min(Math.max(to, wide / 2 + 4), size.width - wide / 2 - 4);
  const middle = (part_: number): Point => [x + (end[0] - x) * part_, y + (end[1] - y) * part_];
  const near = [0, 0.25, 0.5].flatMap((share) => {
    const [mx, my] = middle(share);
    return [18, -10, 34, -26].map((dy): Label => ({ at: [held(mx), my + dy], anchor: "middle", said }));
  });
  return [away, ...near];
}

/** A place for the name of each part: the first that is free, else the freest. */
export function partLabels(
  of: Outline, view: View, size: Size, saidOf: (part: Part) => string,
): Label[] {
  const areas = taken(of, view, size);
  return of.parts.map((part) => {
    const cost = (label: Label): number => {
      const area = areaOf(label);
      const out = Math.max(0, -area.left) + Math.max(0, area.right - size.width)
        + Math.max(0, -area.top) + Math.max(0, area.bottom - size.height + 24);
      return out * 15 + areas.reduce((sum, other) => sum + shared(area, other), 0);
    };
    const choices = choicesOf(part, saidOf(part), view, size);
    const best = choices.reduce((a, b) => (cost(b) < cost(a) ? b : a));
    areas.push(areaOf(best));
    return best;
  });
}
