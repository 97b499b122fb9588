// @vitest-environment happy-dom
import { render } from "preact";
import { useEffect } from "preact/hooks";
import { beforeEach, expect, it, vi } from "vitest";
import type { Fault, First } from "../contract";

vi.mock("../engine", () => ({
  work: () => new Promise(() => {}), workFirst: () => new Promise(() => {}), clearSlow: () => {},
}));
const { faults, first: newest, jobId } = await import("../bench");
const { shownFirst, inSight } = await import("./told");
const { Fold } = await import("./Fold");

const answer = (of: string) => ({ job: of }) as First;
const fault: Fault = { code: "missing", pointer: "", says: "", nearest: null, allowed: [] };

beforeEach(() => {
  jobId.value = "a";
  faults.value = [];
  inSight.value = true;
  newest.value = answer("before");
});

it("goes with the answer while it is in sight", () => {
  newest.value = answer("now");
  expect(shownFirst.value).toBe(newest.value);
});

it("follows after the paint while it is out of sight, with the newest", async () => {
  inSight.value = false;
  newest.value = answer("one");
  expect(shownFirst.value!.job).toBe("before");
  newest.value = answer("two");
  await vi.waitFor(() => expect(shownFirst.value!.job).toBe("two"));
});

it("never lags behind a fault, its end, another job or no answer", () => {
  inSight.value = false;
  newest.value = answer("one");
  faults.value = [fault];
  expect(shownFirst.value!.job).toBe("one");
  newest.value = answer("sound again");
  faults.value = [];
  expect(shownFirst.value!.job).toBe("sound again");
  newest.value = null;
  expect(shownFirst.value).toBeNull();
  newest.value = answer("begun");
  expect(shownFirst.value!.job).toBe("begun");
  jobId.value = "b";
  newest.value = answer("of b");
  expect(shownFirst.value!.job).toBe("of b");
});

it("draws what is folded away when it is opened, or when the page has come to rest", async () => {
  const place = document.body.appendChild(document.createElement("div"));
  let drawn = 0;
  const Inner = ({ says }: { says: string }) => {
    useEffect(() => { drawn += 1; });
    return <p>{says}</p>;
  };
  const show = (says: string) => render(<Fold summary="more"><Inner says={says} /></Fold>, place);
  const soon = () => new Promise((done) => setTimeout(done, 20));
  show("one");
  await soon();
  show("two");
  show("three");
  expect(place.textContent).toBe("moreone");
  await vi.waitFor(() => expect(place.textContent).toBe("morethree"));
  place.querySelector("details")!.open = true;
  show("four");
  expect(place.textContent).toBe("morefour");
  await vi.waitFor(() => expect(drawn).toBe(3));
});
