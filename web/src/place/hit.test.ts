import { describe, expect, it } from "vitest";
import { cornersOf, drawnPath, halfSize, hitAt, labelAt, lengthFits } from "./hit";
import { outline, thingAt } from "./outline";
import { shedJob } from "./sample";
import { toPixels, type View } from "./view";

const size = { width: 360, height: 300 };
const view: View = { middle: [14, 5], scale: 8 };
const of = outline(shedJob());
const at = (pixel: [number, number], chosen?: string) => hitAt(pixel, {
  of, view, size, chosen: chosen ? thingAt(of, chosen) : undefined, last: chosen === "/runs/0/legs/2",
});
const px = (x: number, y: number) => toPixels(view, size, [x, y]);

describe("what a finger touches", () => {
  it("is the thing under it", () => {
    expect(at(px(-2, -2))).toEqual({ on: "thing", pointer: "/buildings/0", moves: false });
    expect(at(px(20.5, 9))).toEqual({ on: "thing", pointer: "/buildings/1", moves: true });
    expect(at(px(7.5, 0))).toEqual({ on: "thing", pointer: "/runs/0/legs/1", moves: false });
    expect(at(px(28, 2))).toEqual({ on: "thing", pointer: "/buildings/1/metalwork/0", moves: false });
    expect(at(px(24, 13))).toEqual({ on: "thing", pointer: "/buildings/1/electrode", moves: true });
    expect(at(px(-5, 16))).toBeNull();
  });

  it("may be off by half a finger", () => {
    const [x, y] = px(7.5, 0);
    expect(at([x, y + 18])?.pointer).toBe("/runs/0/legs/1");
    expect(at([x, y + 30])).toBeNull();
  });

  it("is a length where one is written", () => {
    const label = labelAt(thingAtPath("/runs/0/legs/1"), { of, view, size });
    expect(at(label)).toEqual({ on: "length", pointer: "/runs/0/legs/1" });
  });

  it("is no length where legs are too short to write on, but for the chosen one", () => {
    const far: View = { middle: [0, 0], scale: 1.5 };
    const path = thingAtPath("/runs/0/legs/1");
    expect(lengthFits(path, { of, view: far, size }, false)).toBe(false);
    expect(lengthFits(path, { of, view: far, size }, true)).toBe(true);
    expect(lengthFits(path, { of, view, size }, false)).toBe(true);
    const label = labelAt(path, { of, view: far, size });
    expect(hitAt(label, { of, view: far, size, chosen: undefined, last: false })?.on).not.toBe("length");
  });

  it("is the house anywhere in it and on its name, whatever runs through it", () => {
    const [x, y] = px(0, 0);
    for (const pixel of [[x, y], [x + 20, y - 10], [x, y + 28 + 18], [x + 10, y + 28 + 36]] as const) {
      expect(at([...pixel])?.pointer).toBe("/buildings/0");
    }
    expect(at(px(20, 10))?.pointer).toBe("/buildings/1");
  });

  it("is a corner only of what is chosen", () => {
    expect(at(px(14, 0), "/runs/0/legs/1")).toEqual({ on: "corner", pointer: "/runs/0/legs/1", corner: 1 });
    expect(at(px(14, 0))?.on).not.toBe("corner");
  });

  it("every building is at least a finger wide however far one looks from", () => {
    const far: View = { middle: [0, 0], scale: 0.2 };
    const [x, y] = toPixels(far, size, [20, 10]);
    expect(hitAt([x + 20, y + 15], { of, view: far, size, chosen: undefined, last: false })).not.toBeNull();
  });
});

function thingAtPath(pointer: string) {
  const thing = thingAt(of, pointer);
  return thing && "path" in thing ? thing.path : [];
}

describe("a run on the plan", () => {
  it("begins and ends at walls", () => {
    const seen = { of, view, size };
    const [x, y] = px(0, 0);
    const begun = drawnPath([[0, 0], [14, 0]], seen)[0]!;
    expect(begun[0]).toBeCloseTo(x + halfSize("house", view.scale)[0]);
    expect(begun[1]).toBeCloseTo(y);
    const ended = drawnPath([[20, 0], [20, 10]], seen).at(-1)!;
    expect(ended[1]).toBeCloseTo(px(20, 10)[1] + halfSize("building", view.scale)[1]);
    expect(drawnPath([[8, 3], [12, 3]], seen)).toEqual([px(8, 3), px(12, 3)]);
  });
});

describe("corners that move", () => {
  it("are all of a pipe, and of a leg all but its beginning and the run's end", () => {
    expect(cornersOf(thingAt(of, "/buildings/1/metalwork/0"), false)).toEqual([0, 1]);
    expect(cornersOf(thingAt(of, "/runs/0/legs/1"), false)).toEqual([1, 2]);
    expect(cornersOf(thingAt(of, "/runs/0/legs/2"), true)).toEqual([]);
    expect(cornersOf(thingAt(of, "/buildings/1"), false)).toEqual([]);
  });
});
