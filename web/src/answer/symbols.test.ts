import { expect, it } from "vitest";
import { symbolParts } from "./symbols";

it("sets a symbol as the trade writes it", () => {
  expect(symbolParts("Zs")).toEqual({ base: "Z", below: "s" });
  expect(symbolParts("Zs.max")).toEqual({ base: "Z", below: "s max" });
  expect(symbolParts("U0")).toEqual({ base: "U", below: "0" });
  expect(symbolParts("Iz.2")).toEqual({ base: "I", below: "z 2" });
  expect(symbolParts("dU")).toEqual({ base: "ΔU", below: "" });
  expect(symbolParts("cos.phi")).toEqual({ base: "cos φ", below: "" });
  expect(symbolParts("R.line.work")).toEqual({ base: "R", below: "line work" });
  expect(symbolParts("alpha.arm")).toEqual({ base: "α", below: "arm" });
  expect(symbolParts("drop")).toEqual({ base: "drop", below: "" });
});
