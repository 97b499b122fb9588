import { expect, test } from "vitest";
import { pathOf, pointerOf, same, valueAt, withValue } from "./pointer";

const examples = { foo: ["bar", "baz"], "": 0, "a/b": 1, "m~n": 8, " ": 7 };

test("pointers reach what RFC 6901, section 5, says they do", () => {
  expect(valueAt(examples, "")).toBe(examples);
  expect(valueAt(examples, "/foo")).toEqual(["bar", "baz"]);
  expect(valueAt(examples, "/foo/0")).toBe("bar");
  expect(valueAt(examples, "/")).toBe(0);
  expect(valueAt(examples, "/a~1b")).toBe(1);
  expect(valueAt(examples, "/m~0n")).toBe(8);
  expect(valueAt(examples, "/ ")).toBe(7);
  expect(valueAt(examples, "/none/of/it")).toBeUndefined();
});

test("a pointer made of a path reads as that path", () => {
  for (const pointer of ["", "/foo/0", "/a~1b", "/m~0n", "/"]) {
    expect(pointerOf(pathOf(pointer))).toBe(pointer);
  }
});

test("putting a value leaves the whole that was given as it was", () => {
  const whole = { a: { b: [1, 2] } };
  const next = withValue(whole, "/a/b/1", 3);
  expect(next).toEqual({ a: { b: [1, 3] } });
  expect(whole).toEqual({ a: { b: [1, 2] } });
});

test("undefined takes out; - adds; what is missing on the way is made", () => {
  expect(withValue({ a: 1, b: 2 }, "/a", undefined)).toEqual({ b: 2 });
  expect(withValue({ a: [1, 2] }, "/a/0", undefined)).toEqual({ a: [2] });
  expect(withValue({ a: [1] }, "/a/-", 2)).toEqual({ a: [1, 2] });
  expect(withValue<object>({}, "/a/b", 1)).toEqual({ a: { b: 1 } });
});

test("sameness is of what is said, not of how it is written", () => {
  expect(same({ a: 1, b: [1, { c: 2 }] }, { b: [1, { c: 2 }], a: 1 })).toBe(true);
  expect(same({ a: 1 }, { a: 1, b: undefined })).toBe(false);
  expect(same([1], { 0: 1 })).toBe(false);
  expect(same(null, {})).toBe(false);
});
