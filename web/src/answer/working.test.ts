import { expect, it } from "vitest";
import { ending, figuresPutIn, origin, pieces, type WorkingLine } from "./working";

const lines: WorkingLine[] = [
  { symbol: "Ze", meaning: "loop outside", value: 0.21, unit: "Ω", from: "survey" },
  {
    symbol: "R.line",
    meaning: "resistance of the line",
    value: 0.0603,
    unit: "Ω",
    source: "IEC60228",
    locator: "Table 2",
    basis: "published",
  },
  {
    symbol: "R.line",
    meaning: "of the next leg",
    value: 0.0704,
    unit: "Ω",
    formula: "R.line + Ze",
  },
  {
    symbol: "Zs",
    meaning: "loop",
    value: 0.2804,
    unit: "Ω",
    formula: "Ze + √(R.line²)",
    from: "411.4.4",
  },
  { symbol: "Zs.max", meaning: "largest loop", value: 1.37, unit: "Ω", from: "tables" },
  { symbol: "use", meaning: "share", value: 0.205, unit: "", formula: "Zs / Zs.max" },
];

it("takes the longest symbol it knows and leaves what it does not", () => {
  expect(pieces("max(Zs / Zs.max; Q)", new Set(["Zs", "Zs.max"]))).toEqual([
    { text: "max(" },
    { symbol: "Zs" },
    { text: " / " },
    { symbol: "Zs.max" },
    { text: "; Q)" },
  ]);
});

it("puts in the figures that stood when the line was worked out, with units", () => {
  expect(figuresPutIn(lines, 5)).toBe("0.2804\u00a0Ω / 1.37\u00a0Ω");
  expect(figuresPutIn(lines, 2)).toBe("0.0603\u00a0Ω + 0.21\u00a0Ω");
  expect(figuresPutIn(lines, 3)).toBe("0.21\u00a0Ω + √((0.0704\u00a0Ω)²)");
  expect(figuresPutIn(lines, 0)).toBe("");
});

it("says where a figure comes from", () => {
  expect(origin(lines[1]!)).toBe("IEC60228, Table 2 · published");
  expect(origin(lines[3]!)).toBe("411.4.4");
});

it("ends with the lines the result is made of", () => {
  expect(ending(lines, 3)).toEqual([3, 4, 5]);
});
