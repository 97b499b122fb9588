import { expect, it } from "vitest";
import demo from "../../../examples/demo.json";
import { job } from "../bench";
import type { Job } from "../contract";
import { did } from "./did";

it("names the thing, the fact and what it says now", () => {
  job.value = demo as unknown as Job;
  expect(did("/runs/0/legs/1/length_m", { value: 21, basis: "measured" }))
    .toBe("Potter's studio, leg 2, length: 21 m");
  expect(did("/intake/earthing", undefined)).toBe("How is the supply earthed?: not known");
  expect(did("/buildings/1/circuits/1/load_w", { value: 1500 }))
    .toBe("Potter's studio, Panel heater, load: 1.5 kW");
});
