import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { hasWords } from "../words";
import { patternOf, shownPer, unitOf, usualBasis, wordKey } from "./kinds";
import { rowOf } from "./rows";
import { table } from "./table";
import { shrunkSize } from "./shrink";

const home = `${process.cwd()}/`;

describe("the table of facts", () => {
  it("is what schema and questions ask for", () => {
    expect(execFileSync("node", [`${home}scripts/fact_table.mjs`, "--check"]).toString()).toBe("");
  });

  it("has a row and words for everything the engine may ask", () => {
    const asked = readFileSync(`${home}../data/ask/find_out.csv`, "utf8").trim().split("\n").slice(1)
      .map((line) => line.split(",")[0]!);
    expect(asked.length).toBeGreaterThan(30);
    for (const fact of asked) {
      expect(table[fact], fact).toBeDefined();
      expect(fact.includes("/layers/") || hasWords(`fact.${wordKey(fact)}`), fact).toBe(true);
    }
  });

  it("finds a fact by its pointer", () => {
    expect(patternOf("/buildings/12/metalwork/0/what")).toBe("/buildings/*/metalwork/*/what");
    expect(rowOf("/runs/3/legs/1/surface")?.words).toContain("lawn");
    expect(rowOf("/intake/service_fuse")).toMatchObject({ kind: "device", usual: [60, 80, 100] });
    expect(rowOf("/intake/service_fuse/standard")?.words).toContain("BS 1361");
    expect(rowOf("/intake/looped")?.kind).toBe("yes or no");
    expect(rowOf("/runs/0/legs/0/length_m")?.needed).toBe(true);
    expect(rowOf("/nothing")).toBeUndefined();
  });
});

describe("units", () => {
  it.each([
    ["/intake/ze_ohm", "Ω"], ["/intake/pscc_ka", "kA"], ["/ground/resistivity_ohm_m", "Ωm"],
    ["/buildings/1/metalwork/0/resistance_to_met_kohm", "kΩ"], ["/runs/0/legs/0/length_m", "m"],
    ["/intake/tails_mm2", "mm²"], ["/wishes/max_voltage_drop_percent/run", "%"], ["/buildings/1/spare_ways", ""],
    ["/buildings/1/electrode/diameter_mm", "mm"], ["/ground/temperature_c", "°C"],
    ["/runs/0/existing/insulation_megohm", "MΩ"], ["/intake/board/behind_rcd_ma", "mA"],
  ])("%s in %s", (pointer, unit) => expect(unitOf(pointer)).toBe(unit));

  it("loads are typed in kilowatts", () => {
    expect(shownPer("/buildings/1/load_w")).toEqual({ per: 1000, unit: "kW" });
    expect(shownPer("/intake/ze_ohm")).toEqual({ per: 1, unit: "Ω" });
  });

  it("what is counted or wished has no basis to tell", () => {
    expect(usualBasis("/intake/board/spare_ways")).toBeNull();
    expect(usualBasis("/wishes/smallest_core_mm2")).toBeNull();
    expect(usualBasis("/intake/ze_ohm")).toBe("measured");
    expect(usualBasis("/buildings/1/load_w")).toBe("declared");
  });
});

describe("a photo", () => {
  it("is shrunk to its longest side and never made larger", () => {
    expect(shrunkSize(4000, 3000)).toEqual({ width: 2000, height: 1500 });
    expect(shrunkSize(3000, 4000)).toEqual({ width: 1500, height: 2000 });
    expect(shrunkSize(800, 600)).toEqual({ width: 800, height: 600 });
    expect(shrunkSize(100000, 1)).toEqual({ width: 2000, height: 1 });
  });
});
