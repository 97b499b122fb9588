import { expect, it } from "vitest";
import type { Finding } from "../contract";
import { barEnd, findingsByRun, sortBars } from "./bars";

const finding = (rule: string, more: Partial<Finding>): Finding => ({
  rule,
  clause: "",
  subject: "feed",
  value: null,
  limit: null,
  unit: "",
  at_least: false,
  use: null,
  verdict: "meets",
  says: "",
  basis: [],
  ...more,
});

const some = [
  finding("voltage-drop", { value: 0.8, limit: 2.5, unit: "%", use: 0.34 }),
  finding("suitability", { says: "every cable may lie where it does" }),
  finding("motor-start", { says: "no circuit is judged by it" }),
  finding("house-earthing", {
    value: 0,
    limit: 8,
    unit: "mm²",
    at_least: true,
    verdict: "caution",
  }),
  finding("disconnection", { value: 1.6, limit: 1.4, unit: "Ω", use: 1.14, verdict: "fails" }),
  finding("selectivity", { verdict: "caution", says: "either may operate first" }),
  finding("separation", { verdict: "not known" }),
];

it("sorts bars longest first; what has nothing of what is asked is longest of all", () => {
  expect(sortBars(some).measured.map((bar) => bar.finding.rule)).toEqual([
    "house-earthing",
    "disconnection",
    "voltage-drop",
  ]);
});

it("tells what has no figure, the worst first, and keeps apart what had nothing to judge", () => {
  const { told, idle } = sortBars(some);
  expect(told.map((f) => f.rule)).toEqual(["separation", "selectivity", "suitability"]);
  expect(idle.map((f) => f.rule)).toEqual(["motor-start"]);
});

it("loses no finding", () => {
  const { measured, told, idle } = sortBars(some);
  expect(measured.length + told.length + idle.length).toBe(some.length);
});

it("gives a circuit's finding to the run before it", () => {
  const list = [
    finding("overload", { subject: "garage" }),
    finding("circuit-drop", { subject: "Sockets" }),
    finding("overload", { subject: "gym" }),
    finding("circuit-drop", { subject: "Sockets" }),
  ];
  const byRun = findingsByRun(list, ["garage", "gym"]);
  expect(byRun.get("garage")).toHaveLength(2);
  expect(byRun.get("gym")![1]).toBe(list[3]);
});

it("draws a bar past its limit, and cuts it at the end of the track", () => {
  expect(barEnd(0.5, 0.8)).toEqual({ end: 0.4, over: false });
  expect(barEnd(1.1, 0.8).end).toBeCloseTo(0.88);
  expect(barEnd(7, 0.8)).toEqual({ end: 1, over: true });
});

it("counts a rule as not judged where the engine says so for another want than a length", () => {
  const idle = { rule: "circuit-drop", says: "no circuit is judged by it", value: null, limit: null };
  const open = (verdict: string) =>
    sortBars([{ ...idle, verdict } as never]).open.map((f) => f.rule);
  expect(open("not known")).toEqual(["circuit-drop"]);
  expect(open("meets")).toEqual([]);
});
