import { describe, expect, it } from "vitest";
import type { Point } from "./job";
import { closest, fitted, panned, toMetres, toPixels, widest, zoomed, type View } from "./view";

const size = { width: 360, height: 300 };
const view: View = { middle: [5, -3], scale: 8 };
const places: Point[] = [[0, 0], [12.5, 7], [-40, 3]];

describe("the window on the plan", () => {
  it("turns metres into pixels and back, north up", () => {
    for (const p of places) {
      const back = toMetres(view, size, toPixels(view, size, p));
      expect(back[0]).toBeCloseTo(p[0], 9);
      expect(back[1]).toBeCloseTo(p[1], 9);
    }
    expect(toPixels(view, size, [5, -3])).toEqual([180, 150]);
    expect(toPixels(view, size, [5, 0])[1]).toBeLessThan(150);
  });

  it("keeps what lies under the finger while it zooms", () => {
    const finger: Point = [300, 40];
    for (const factor of [0.3, 0.9, 1.4, 3, 100, 0.001]) {
      const before = toMetres(view, size, finger);
      const after = toMetres(zoomed(view, size, finger, factor), size, finger);
      expect(after[0]).toBeCloseTo(before[0], 6);
      expect(after[1]).toBeCloseTo(before[1], 6);
    }
  });

  it("zooms between a bolt and a village", () => {
    expect(zoomed(view, size, [0, 0], 1e6).scale).toBe(closest);
    expect(zoomed(view, size, [0, 0], 1e-6).scale).toBe(widest);
  });

  it("follows the hand when it is pulled", () => {
    const at = toPixels(panned(view, [20, -10]), size, [0, 0]);
    const was = toPixels(view, size, [0, 0]);
    expect(at[0] - was[0]).toBeCloseTo(20, 9);
    expect(at[1] - was[1]).toBeCloseTo(-10, 9);
  });

  it("shows a box whole", () => {
    for (const box of [
      { west: -6, south: -6, east: 40, north: 12 }, { west: 0, south: 0, east: 1, north: 300 },
      { west: -2, south: -2, east: 2, north: 2 },
    ]) {
      const whole = fitted(box, size);
      for (const corner of [[box.west, box.south], [box.east, box.north]] as Point[]) {
        const [x, y] = toPixels(whole, size, corner);
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(size.width);
        expect(y).toBeGreaterThanOrEqual(0);
        expect(y).toBeLessThanOrEqual(size.height);
      }
    }
  });
});
