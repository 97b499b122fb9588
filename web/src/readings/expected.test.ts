import { expect, it } from "vitest";
import { beyondLimit, factOf, steps, unitOf, valueOf, type Test } from "./expected";
import { noteWithTime, together } from "./keep";

const test = (step: string, where: string): Test => ({
  step,
  where,
  what: step,
  how: "",
  clause: "",
  dead: true,
  unit: "Ω",
  expected: null,
  limit: null,
  at_least: false,
  says: "",
  instrument: "",
});

it("keeps the tests of a step together, in the order they are done", () => {
  const all = [test("continuity", "feed"), test("continuity", "Sockets"), test("zs", "board")];
  expect(steps(all).map((s) => [s.step, s.tests.length])).toEqual([
    ["continuity", 2],
    ["zs", 1],
  ]);
  expect(factOf(all[1]!)).toBe("continuity: Sockets");
});

it("reads what people type from a meter, and nothing that is no number", () => {
  expect(valueOf("0,33")).toBe(0.33);
  expect(valueOf(" 299 ")).toBe(299);
  expect(valueOf(">999")).toBe(999);
  expect(valueOf("")).toBeNull();
  expect(valueOf("about 2")).toBeNull();
  expect(valueOf("1,000.5")).toBeNull();
});

it("tells when a reading was taken that reaches the server late", () => {
  const at = "2026-11-29T10:00:00.000Z";
  expect(noteWithTime("leads nulled", at, new Date("2026-11-29T10:00:05Z"))).toBe("leads nulled");
  expect(noteWithTime("", at, new Date("2026-11-29T12:00:00Z"))).toBe(`taken ${at}`);
});

it("shows readings of server and device in the order they were taken", () => {
  const one = {
    fact: "zs: board",
    value: 0.3,
    unit: "Ω",
    instrument: "",
    note: "",
    by: "A",
    at: "2026-11-29T10:00:00Z",
  };
  const held = { key: "reading/a/1", job: "a", id: "1", thing: { ...one, revision: 3 } };
  const theirs = { ...one, reading: 4, at: "2026-11-29T11:00:00Z" };
  expect(together([theirs], [held]).map((r) => [r.at, r.held])).toEqual([
    ["2026-11-29T10:00:00Z", true],
    ["2026-11-29T11:00:00Z", false],
  ]);
});

it("says of a reading that it lies beyond the limit stated, and of no other", () => {
  const cold = { unit: "Ω", limit: 1.09, at_least: false };
  expect(beyondLimit({ value: 1.4, unit: "Ω" }, cold)).toBe("above");
  expect(beyondLimit({ value: 1.09, unit: "Ω" }, cold)).toBeNull();
  expect(beyondLimit({ value: 1400, unit: "mΩ" }, cold)).toBeNull();
  const insulation = { unit: "MΩ", limit: 1, at_least: true };
  expect(beyondLimit({ value: 0.4, unit: "MΩ" }, insulation)).toBe("below");
  expect(beyondLimit({ value: 999, unit: "MΩ" }, insulation)).toBeNull();
  expect(beyondLimit({ value: 5, unit: "Ω" }, { ...cold, limit: null })).toBeNull();
});

it("gives every test something to write: ohms of a bond, good or not where one only looks", () => {
  expect(unitOf({ unit: "MΩ", instrument: "insulation tester" })).toBe("MΩ");
  expect(unitOf({ unit: "", instrument: "low-resistance ohmmeter" })).toBe("Ω");
  expect(unitOf({ unit: "", instrument: "" })).toBe("");
});
