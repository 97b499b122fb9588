import { describe, expect, it } from "vitest";
import { draftOf, figureOf, typed, type Draft } from "./value";

const row = { kind: "figure" as const, low: 0.005, high: 5000 };
const draft = (low: string, more: Partial<Draft> = {}): Draft =>
  ({ low, high: "", range: false, basis: "measured", ...more });

describe("what is typed", () => {
  it.each([["0.21", 0.21], [" 0,21 ", 0.21], ["7.", 7], [".5", 0.5], ["1 200", 1200], ["-3", -3]])(
    "%j is a number", (text, value) => expect(typed(text)).toBe(value));
  it.each(["", "a", "1e5", "0.2.1", "--1", "Infinity", "1,2,3", "."])(
    "%j is none", (text) => expect(typed(text)).toBeNull());
});

describe("a figure as the job keeps it", () => {
  it("has its basis, or none to tell", () => {
    expect(figureOf(draft("0.21"), row)).toEqual({ fits: true, figure: { value: 0.21, basis: "measured" } });
    expect(figureOf(draft("2", { basis: null }), row)).toEqual({ fits: true, figure: 2 });
  });

  it("nothing typed is not known", () => {
    expect(figureOf(draft(" "), row)).toEqual({ fits: true, figure: undefined });
    expect(figureOf(draft("", { range: true }), row)).toEqual({ fits: true, figure: undefined });
  });

  it("a range has two ends in order", () => {
    const range = { range: true, high: "0.35", basis: "assumed" as const };
    expect(figureOf(draft("0.1", range), row)).toEqual({ fits: true, figure: { low: 0.1, high: 0.35, basis: "assumed" } });
    expect(figureOf(draft("0.4", range), row)).toEqual({ fits: false, wants: "order" });
    expect(figureOf(draft("0.1", { ...range, high: "" }), row)).toEqual({ fits: false, wants: "number" });
  });

  it("is refused outside its range, half a rod too", () => {
    expect(figureOf(draft("0"), row)).toEqual({ fits: false, wants: "range" });
    expect(figureOf(draft("6000"), row)).toEqual({ fits: false, wants: "range" });
    expect(figureOf(draft("1.5"), { ...row, whole: true })).toEqual({ fits: false, wants: "whole" });
  });

  it("is kept in its own unit, without noise", () => {
    expect(figureOf(draft("2.3"), { kind: "figure" }, 1000)).toMatchObject({ figure: { value: 2300 } });
    expect(figureOf(draft("1.1"), { kind: "figure" }, 1000)).toMatchObject({ figure: { value: 1100 } });
  });

  it("comes back as it went in", () => {
    for (const figure of [0.21, { value: 7, basis: "declared" as const }, { low: 1, high: 2, basis: "assumed" as const }]) {
      const fit = figureOf(draftOf(figure, "measured"), { kind: "figure" });
      expect(fit).toEqual({ fits: true, figure: typeof figure === "number" ? { value: figure, basis: "measured" } : figure });
    }
    expect(draftOf(null, "declared")).toEqual({ low: "", high: "", range: false, basis: "declared" });
  });
});

it("nobody has measured what was only typed: until it is said it counts as guessed", () => {
  const untold = { ...draftOf(null, "measured"), low: "7" };
  expect(untold.basis).toBe("");
  expect(figureOf(untold, { kind: "figure" })).toEqual({ fits: true, figure: { value: 7, basis: "assumed" } });
  expect(draftOf({ value: 7, basis: "measured" }, "measured").basis).toBe("measured");
  expect(draftOf(null, "declared").basis).toBe("declared");
});
