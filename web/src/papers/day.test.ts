import { expect, it } from "vitest";
import { dayOf, isDay, sizeWords } from "./day";

it("tells the day of a moment where the page is", () => {
  expect(dayOf(new Date(2026, 10, 9, 23, 59))).toBe("2026-11-09");
});

it("knows days that do not exist", () => {
  expect(isDay("2026-11-29")).toBe(true);
  expect(isDay("2028-02-29")).toBe(true);
  expect(isDay("2026-02-29")).toBe(false);
  expect(isDay("2026-13-01")).toBe(false);
  expect(isDay("29.11.2026")).toBe(false);
});

it("never tells a size without its unit", () => {
  expect(sizeWords(812)).toBe("812\u00a0bytes");
  expect(sizeWords(41_200)).toBe("41\u00a0kB");
  expect(sizeWords(999_900)).toBe("1.0\u00a0MB");
});
