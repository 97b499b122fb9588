import { expect, test } from "vitest";
import { differences } from "./differences";

test("tells each fact that differs, where it stands", () => {
  const then = { intake: { ze_ohm: 0.2, looped: false }, buildings: [{ id: "a" }] };
  const now = { intake: { ze_ohm: 0.3, looped: false }, buildings: [{ id: "a", use: "shed" }] };
  expect(differences(then, now)).toEqual([
    { pointer: "/intake/ze_ohm", a: 0.2, b: 0.3 },
    { pointer: "/buildings/0/use", a: undefined, b: "shed" },
  ]);
});

test("tells a list of another length as a whole, and nothing of what is the same", () => {
  expect(differences({ l: [1] }, { l: [1, 2] })).toEqual([{ pointer: "/l", a: [1], b: [1, 2] }]);
  expect(differences({ l: [1] }, { l: [1] })).toEqual([]);
});
