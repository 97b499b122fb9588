// The window through which the plan is seen: metres to pixels and back.

import type { Box } from "./geometry";
import type { Point } from "./job";

export interface View {
  /** What lies in the middle of the window, in metres. */
  middle: Point;
  /** Pixels per metre. */
  scale: number;
}

export interface Size {
  width: number;
  height: number;
}

export const closest = 80;
export const widest = 0.15;

export function toPixels(view: View, size: Size, p: Point): Point {
  return [
    size.width / 2 + (p[0] - view.middle[0]) * view.scale,
    size.height / 2 - (p[1] - view.middle[1]) * view.scale,
  ];
}

export function toMetres(view: View, size: Size, pixel: Point): Point {
  return [
    view.middle[0] + (pixel[0] - size.width / 2) / view.scale,
    view.middle[1] - (pixel[1] - size.height / 2) / view.scale,
  ];
}

export function panned(view: View, pixels: Point): View {
  const { middle, scale } = view;
  return { ...view, middle: [middle[0] - pixels[0] / scale, middle[1] + pixels[1] / scale] };
}

/** Nearer or farther by a factor, what lies under `pixel` staying there. */
export function zoomed(view: View, size: Size, pixel: Point, factor: number): View {
  const scale = Math.min(closest, Math.max(widest, view.scale * factor));
  const held = toMetres(view, size, pixel);
  return {
    scale,
    middle: [
      held[0] - (pixel[0] - size.width / 2) / scale,
      held[1] + (pixel[1] - size.height / 2) / scale,
    ],
  };
}

/** A window that shows a box whole, with a margin in pixels; at least `least` metres across. */
export function fitted(box: Box, size: Size, margin = 56, least = 24): View {
  const wide = Math.max(least, box.east - box.west);
  const high = Math.max(least * 0.6, box.north - box.south);
  const across = Math.max(40, size.width - 2 * margin);
  const up = Math.max(40, size.height - 2 * margin);
  return {
    middle: [(box.west + box.east) / 2, (box.south + box.north) / 2],
    scale: Math.min(closest, Math.max(widest, Math.min(across / wide, up / high))),
  };
}
