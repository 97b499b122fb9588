import { expect, test } from "vitest";
import { powerOf } from "./power";

const of = (text: string) => powerOf(text, 0, 100000);

test("a power is read with its unit; a bare number is kilowatts", () => {
  expect(of("1.5")).toEqual({ fits: true, watts: 1500 });
  expect(of("0,12 kW")).toEqual({ fits: true, watts: 120 });
  expect(of("120 W")).toEqual({ fits: true, watts: 120 });
  expect(of("  ")).toEqual({ fits: true, watts: null });
});

test("what is no power is refused, and it is said what is wanted", () => {
  expect(of("abc")).toEqual({ fits: false, wants: "number" });
  expect(of("-5")).toEqual({ fits: false, wants: "range" });
  expect(of("1e9")).toEqual({ fits: false, wants: "number" });
  expect(of("1000000")).toEqual({ fits: false, wants: "range" });
  expect(of("10 A")).toEqual({ fits: false, wants: "watts" });
});
