// The plan by keyboard: arrows move what is chosen or the cross, Enter sets it down or opens its
// facts, Delete takes it off, Escape lets go.

import { say } from "../words";
import { nudge, remove } from "./edits";
import { rest } from "./hand";
import { hitAt } from "./hit";
import { tapAt } from "./gestures";
import type { Point } from "./job";
import { thingAt } from "./outline";
import { choose, chosen, chosenThing, cursor, edit, hand, shown, size, view } from "./state";
import { panned, toPixels, zoomed } from "./view";

const arrows: Record<string, Point> = {
  ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1],
};

function moveBy(key: Point, fine: boolean): void {
  const step = fine ? 0.1 : 1;
  const by: Point = [key[0] * step, key[1] * step];
  const now = hand.peek();
  if (now.does !== "rest") {
    const from = cursor.peek() ?? view.peek().middle;
    cursor.value = [from[0] + by[0], from[1] + by[1]];
  } else if (chosenThing.peek() && chosenThing.peek()!.kind !== "house") {
    edit(say("place.did.move"), (job) => nudge(job, chosen.peek()!, by));
  } else {
    view.value = panned(view.peek(), [-by[0] * 24, by[1] * 24]);
  }
}

function setDown(): void {
  const at = cursor.peek();
  const of = shown.peek();
  if (!at || !of) return;
  const pixel = toPixels(view.peek(), size.peek(), at);
  const asked = { of, view: view.peek(), size: size.peek(), chosen: undefined, last: false };
  tapAt(at, hitAt(pixel, asked));
  if (hand.peek().does !== "rest") cursor.value = at;
}

/** What the keyboard stands on is what its keys are for; the house stays where it is. */
function takeHold(e: KeyboardEvent): void {
  const on = (e.target as Element | null)?.closest?.("[data-pointer]");
  const pointer = on?.getAttribute("data-pointer");
  if (!pointer || pointer === chosen.peek()) return;
  if (e.key === "Enter" || e.key === " " || thingAt(shown.peek()!, pointer)?.kind !== "house") choose(pointer);
}

/** True when the key was for the plan. */
export function onKey(e: KeyboardEvent, openFacts: () => void): boolean {
  if (e.ctrlKey || e.metaKey || e.altKey) return false;
  const arrow = arrows[e.key];
  const does = arrow || /^(Enter| |Delete|Backspace)$/.test(e.key);
  if (does && hand.peek().does === "rest") takeHold(e);
  const middle: Point = [size.peek().width / 2, size.peek().height / 2];
  if (arrow) moveBy(arrow, e.shiftKey);
  else if (e.key === "Enter" || e.key === " ") {
    if (hand.peek().does === "rest") openFacts();
    else setDown();
  } else if (e.key === "Delete" || e.key === "Backspace") {
    const pointer = chosen.peek();
    if (!pointer || hand.peek().does !== "rest") return false;
    edit(say("place.did.remove"), (job) => remove(job, pointer));
    choose(null);
  } else if (e.key === "Escape") {
    if (hand.peek().does === "rest") choose(null);
    hand.value = rest;
    cursor.value = null;
  } else if (e.key === "+" || e.key === "=") view.value = zoomed(view.peek(), size.peek(), middle, 1.25);
  else if (e.key === "-") view.value = zoomed(view.peek(), size.peek(), middle, 0.8);
  else return false;
  return true;
}
