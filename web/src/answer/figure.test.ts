import { describe, expect, it } from "vitest";
import { beside, count, digits, figure, headroomShare, money, percent, unbroken } from "./figure";

describe("a figure", () => {
  it("has three digits that count, as a meter shows", () => {
    expect(digits(0.329472037)).toBe("0.329");
    expect(digits(17.7537757)).toBe("17.8");
    expect(digits(16000)).toBe("16000");
    expect(digits(0.00880238642)).toBe("0.0088");
    expect(digits(10)).toBe("10");
    expect(digits(0)).toBe("0");
    expect(digits(-0.448822182)).toBe("−0.449");
  });

  it("stands with its unit", () => {
    expect(figure(0.329472037, "Ω")).toBe("0.329\u00a0Ω");
    expect(figure(0.843123338, "%")).toBe("0.843\u202f%");
    expect(figure(120, "ohm m")).toBe("120\u00a0Ωm");
    expect(figure(10, "mm2")).toBe("10\u00a0mm²");
  });

  it("is not rounded down to the limit that it passes", () => {
    expect(beside(2.5004, 2.5)).toEqual(["2.5004", "2.5"]);
    expect(beside(2.4996, 2.5)).toEqual(["2.4996", "2.5"]);
    expect(beside(10, 10)).toEqual(["10", "10"]);
    expect(beside(0.3295, 1.365625)).toEqual(["0.33", "1.37"]);
  });
});

describe("a share", () => {
  it("of next to nothing is not nothing, and of nearly all is not all", () => {
    expect(percent(0.0013)).toBe("<\u202f1\u202f%");
    expect(percent(0)).toBe("0\u202f%");
    expect(percent(0.9996)).toBe("99\u202f%");
    expect(percent(1)).toBe("100\u202f%");
    expect(percent(1.0004)).toBe(">\u202f100\u202f%");
    expect(percent(7.8952764)).toBe("790\u202f%");
  });
});

it("says that there is no headroom rather than a share below nothing", () => {
  expect(headroomShare(0.45, "none")).toBe("45\u202f%");
  expect(headroomShare(-5.5, "none")).toBe("none");
  expect(headroomShare(null, "none")).toBe("none");
});

it("keeps a figure beside its unit where a sentence breaks", () => {
  expect(unbroken("3-core 10 mm² cable from a 32 A breaker (6 kA) in a way")).toBe(
    "3-core 10\u00a0mm² cable from a 32\u00a0A breaker (6\u00a0kA) in a way",
  );
  expect(unbroken("take 2 Around")).toBe("take 2 Around");
});

describe("money", () => {
  it("is told in whole pounds, in the price's parts to the penny", () => {
    expect(money(2275.72)).toBe("£2,276");
    expect(money(98.8, "GBP", true)).toBe("£98.80");
    expect(count(481032)).toBe("481,032");
  });
});
