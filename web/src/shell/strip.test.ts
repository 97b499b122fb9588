import { expect, it } from "vitest";
import type { First } from "../contract";
import { inShort } from "./strip";

const none = { schemes: [], chosen: null, chosen_key: null, sound: false } as unknown as First;

it("says that there is no sound way only where the search was run to its end", () => {
  expect(inShort({ ...none, stopped: false }).verdict).toBe("fails");
  expect(inShort({ ...none, stopped: true })).toMatchObject(
    { verdict: "not known", words: "nothing found before the search stopped" });
});
