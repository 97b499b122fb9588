import { expect, it } from "vitest";
import { governed, tasks } from "./sentence";

it("breaks a sentence where something else is to be done", () => {
  expect(tasks("Feed it with a cable; carry the earth; bond the pipe.", ["feed"])).toEqual([
    { run: "feed", steps: ["Feed it with a cable;", "carry the earth;", "bond the pipe."] },
  ]);
});

it("gives each run its own part", () => {
  const all = tasks("a-feed: Feed it on L1; carry it. b-feed: Feed it on L2.", [
    "b-feed",
    "a-feed",
  ]);
  expect(all).toEqual([
    { run: "a-feed", steps: ["Feed it on L1;", "carry it."] },
    { run: "b-feed", steps: ["Feed it on L2."] },
  ]);
});

it("reads which rule sets the headroom, and of which run", () => {
  expect(governed("overload")).toEqual({ rule: "overload", run: null });
  expect(governed("voltage-drop of stable-feed")).toEqual({
    rule: "voltage-drop",
    run: "stable-feed",
  });
});
