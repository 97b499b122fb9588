import { describe, expect, it } from "vitest";
import {
  along, boxOf, crossings, cut, distance, drawnLength, farthest, nearestOn, pathLength, roundLength, tidy,
} from "./geometry";
import type { Point } from "./job";

const corner: Point[] = [[0, 0], [3, 0], [3, 4]];

describe("paths on the plan", () => {
  it("are as long as their straights together", () => {
    expect(distance([1, 1], [4, 5])).toBe(5);
    expect(pathLength(corner)).toBe(7);
    expect(pathLength([[2, 2]])).toBe(0);
  });

  it("are cut anywhere into two that are as long as the whole", () => {
    for (let part = 0; part <= 1; part += 0.05) {
      const [one, other] = cut(corner, part);
      expect(pathLength(one)).toBeCloseTo(7 * part, 9);
      expect(pathLength(one) + pathLength(other)).toBeCloseTo(7, 9);
      expect(one.at(-1)).toEqual(other[0]);
      expect(other.at(-1)).toEqual([3, 4]);
    }
    expect(along(corner, 0.5)).toEqual([3, 0.5]);
  });

  it("have a nearest point, at a corner or along a straight", () => {
    expect(nearestOn(corner, [1, 2])).toEqual({ at: [1, 0], piece: 0, off: 2 });
    expect(nearestOn(corner, [5, 6]).at).toEqual([3, 4]);
    expect(nearestOn([[1, 1], [1, 1]], [4, 5]).off).toBe(5);
  });

  it("cross where their straights do, once each", () => {
    expect(crossings([[0, 0], [4, 4]], [[0, 4], [4, 0]])).toEqual([[2, 2]]);
    expect(crossings([[0, 0], [4, 0]], [[0, 1], [4, 1]])).toEqual([]);
    expect(crossings([[0, 0], [1, 1]], [[0, 4], [4, 0]])).toEqual([]);
    expect(crossings([[0, 0], [2, 2], [4, 4]], [[0, 4], [4, 0]])).toHaveLength(1);
    expect(crossings([[-1, 0], [5, 0]], [[0, -1], [1, 1], [2, -1], [3, 1]])).toHaveLength(3);
  });
});

describe("figures off the drawing", () => {
  it("are to the decimetre and never nothing", () => {
    expect(drawnLength([[0, 0], [3.04, 0]])).toBe(3);
    expect(drawnLength([[0, 0], [3.06, 0]])).toBe(3.1);
    expect(drawnLength([[0, 0], [0, 0]])).toBe(0.1);
    expect(drawnLength([[-2000, -2000], [2000, 2000], [-2000, 2000]])).toBe(5000);
  });

  it("stay within the reach of a job", () => {
    expect(tidy([1.26, -1.24])).toEqual([1.3, -1.2]);
    expect(tidy([1e9, -1e9])).toEqual([farthest, -farthest]);
    expect(Object.is(tidy([-0.01, 0])[0], 0)).toBe(true);
  });

  it("fill a box", () => {
    expect(boxOf(corner)).toEqual({ west: 0, south: 0, east: 3, north: 4 });
  });

  it("stand on a scale bar of 1, 2 or 5 times a power of ten that fits", () => {
    for (let scale = 0.15; scale < 80; scale *= 1.07) {
      const metres = roundLength(scale, 110);
      expect(metres * scale).toBeLessThanOrEqual(110 * 1.0001);
      expect(metres * scale).toBeGreaterThan(110 / 2.6);
      const lead = metres / 10 ** Math.floor(Math.log10(metres) + 1e-9);
      expect([1, 2, 5]).toContain(Math.round(lead * 1e6) / 1e6);
    }
  });
});
