import { describe, expect, test } from "vitest";
import { merge, rebase } from "./merge";

const job = () => ({
  intake: { ze_ohm: 0.21, demand_a: 34 } as Record<string, unknown>,
  buildings: [{ id: "house" }, { id: "studio", use: "studio" }] as Array<Record<string, unknown>>,
});

describe("two changes of one job", () => {
  test("of different facts are both kept", () => {
    const mine = { ...job(), intake: { ze_ohm: 0.3, demand_a: 34 } };
    const theirs = { ...job(), intake: { ze_ohm: 0.21, demand_a: 20 } };
    const merged = merge(job(), mine, theirs);
    expect(merged.clashes).toEqual([]);
    expect(merged.value.intake).toEqual({ ze_ohm: 0.3, demand_a: 20 });
  });

  test("of the same fact in the same way are no clash", () => {
    const both = { ...job(), intake: { ze_ohm: 0.3, demand_a: 34 } };
    expect(merge(job(), both, structuredClone(both))).toEqual({ value: both, clashes: [] });
  });

  test("of the same fact in two ways clash, and nothing of either is lost", () => {
    const mine = { ...job(), intake: { ze_ohm: 0.3, demand_a: 34 } };
    const theirs = { ...job(), intake: { ze_ohm: 0.4, demand_a: 34 } };
    const merged = merge(job(), mine, theirs);
    expect(merged.clashes).toEqual([
      { pointer: "/intake/ze_ohm", says: "", was: 0.21, yours: 0.3, theirs: 0.4 },
    ]);
    expect(merged.value.intake["ze_ohm"]).toBe(0.4);
  });

  test("find buildings by their id, whatever their place in the list", () => {
    const mine = { ...job(), buildings: [{ id: "studio", use: "office" }, { id: "house" }] };
    const theirs = { ...job(), buildings: [...job().buildings, { id: "shed" }] };
    expect(merge(job(), mine, theirs).value.buildings).toEqual(
      [{ id: "house" }, { id: "studio", use: "office" }, { id: "shed" }]);
  });

  test("let go what one took out and the other left alone", () => {
    const mine = { ...job(), intake: { demand_a: 34 }, buildings: [{ id: "house" }] };
    const merged = merge<object>(job(), mine, { ...job(), title: "T" });
    expect(merged).toEqual({ value: { ...mine, title: "T" }, clashes: [] });
  });

  test("of one list without ids, longer on either side, are one clash of the list", () => {
    const base = { legs: [{ m: 1 }] };
    const merged = merge(base, { legs: [{ m: 1 }, { m: 2 }] }, { legs: [{ m: 1 }, { m: 3 }] });
    expect(merged.clashes.map(({ pointer }) => pointer)).toEqual(["/legs"]);
  });
});

describe("what was typed while a call was under way", () => {
  test("is done to what came back, and holds where both changed", () => {
    const sent = job();
    const typed = { ...job(), intake: { ze_ohm: 0.5, demand_a: 34 } };
    const back = { ...job(), intake: { ze_ohm: 0.9, demand_a: 20 } };
    expect(rebase(sent, typed, back).intake).toEqual({ ze_ohm: 0.5, demand_a: 20 });
  });

  test("changes nothing where nothing was typed", () => {
    const back = { ...job(), title: "T" };
    expect(rebase<object>(job(), job(), back)).toEqual(back);
  });
});
