import { describe, expect, it } from "vitest";
import type { Unknown } from "../contract";
import { answer, fresh, heardAgain, left, nextAsked, returnTo, setAside } from "./queue";

const list = ["/intake/ze_ohm", "/buildings/1/construction", "/buildings/1/metalwork"]
  .map((fact) => ({ fact })) as Unknown[];
const asked = (session = fresh) => nextAsked(list, session)?.fact;

describe("one question at a time", () => {
  it("the one worth most comes first", () => {
    expect(asked()).toBe("/intake/ze_ohm");
    expect(left(list, fresh)).toBe(3);
  });

  it("what is not known is set aside, and the next one asked", () => {
    const session = setAside(fresh, "/intake/ze_ohm");
    expect(asked(session)).toBe("/buildings/1/construction");
    expect(session.aside).toEqual(["/intake/ze_ohm"]);
  });

  it("what is answered is not asked again, though the engine has not heard yet", () => {
    const session = answer(answer(fresh, "/intake/ze_ohm"), "/buildings/1/construction");
    expect(asked(session)).toBe("/buildings/1/metalwork");
    expect(left(list, session)).toBe(1);
  });

  it("either can be returned to and answered after all", () => {
    const aside = setAside(fresh, "/intake/ze_ohm");
    const back = returnTo(aside, "/intake/ze_ohm");
    expect(back.back).toBe("/intake/ze_ohm");
    const then = answer(back, "/intake/ze_ohm");
    expect(then).toEqual({ aside: [], answered: ["/intake/ze_ohm"], back: null });
    expect(setAside(then, "/intake/ze_ohm")).toEqual({ aside: ["/intake/ze_ohm"], answered: [], back: null });
  });

  it("what turns out to be open still is asked again; what was set aside is not", () => {
    const session = setAside(answer(fresh, "/intake/ze_ohm"), "/buildings/1/construction");
    const later = heardAgain(session, list);
    expect(asked(later)).toBe("/intake/ze_ohm");
    expect(later.aside).toEqual(["/buildings/1/construction"]);
    expect(heardAgain(fresh, list)).toBe(fresh);
  });

  it("ends when all is answered or set aside", () => {
    const session = list.reduce((s, { fact }) => setAside(s, fact), fresh);
    expect(asked(session)).toBeUndefined();
    expect(left(list, session)).toBe(0);
  });
});
