// What the survey remembers while it is open: what is chosen, what the hand is at, the window.

import { computed, effect, signal } from "@preact/signals";
import { change, job, jobId } from "../bench";
import { rest, type Act, type Hand, type Next } from "./hand";
import type { Job, Point } from "./job";
import { boxAround, outline, thingAt } from "./outline";
import { fitted, toPixels, type Size, type View } from "./view";

export const chosen = signal<string | null>(null);
export const hand = signal<Hand>(rest);
export const size = signal<Size>({ width: 340, height: 300 });
export const view = signal<View>({ middle: [0, 0], scale: 10 });
/** True while the place is seen from the side. */
export const section = signal(false);
/** Where the keyboard points on the plan while something is put down. */
export const cursor = signal<Point | null>(null);
/** True when the length of the chosen leg was touched: its field takes the typing. */
export const lengthTouched = signal(false);
/** A move that is not let go yet. */
export const ghost = signal<((job: Job) => void) | null>(null);

export const surveyed = computed(() => job.value as unknown as Job | null);

/** The place as it is shown, a move in hand included. */
export const shown = computed(() => {
  const stated = surveyed.value;
  if (!stated) return null;
  if (!ghost.value) return outline(stated);
  const copy = structuredClone(stated);
  ghost.value(copy);
  return outline(copy);
});

export const chosenThing = computed(() =>
  shown.value ? thingAt(shown.value, chosen.value) : undefined);

export function choose(pointer: string | null): void {
  chosen.value = pointer;
  lengthTouched.value = false;
}

/** One change of the place; what it made is chosen. */
export function edit(words: string, act: Act | ((job: Job) => void)): string | undefined {
  const made: string[] = [];
  change(words, (copy) => {
    const pointer = act(copy as unknown as Job);
    if (pointer) made.push(pointer);
  });
  if (made[0]) choose(made[0]);
  return made[0];
}

export function take(next: Next, words: string): void {
  hand.value = next.hand;
  if (next.act) edit(words, next.act);
}

/** Shows all again when a place lies too near the edge to go on from. */
export function keepInView(p: Point, margin = 70): void {
  const [x, y] = toPixels(view.peek(), size.peek(), p);
  const { width, height } = size.peek();
  if (x < margin || y < margin / 2 || x > width - margin || y > height - margin) fit();
}

export function fit(): void {
  if (shown.value) view.value = fitted(boxAround(shown.value), size.value);
}

/** Another job is another place: nothing of the one before is held or chosen in it. */
let of: string | null = null;
effect(() => {
  if (jobId.value === of) return;
  of = jobId.value;
  choose(null);
  hand.value = rest;
  section.value = false;
});
