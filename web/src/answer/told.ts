// The answer as this room shows it. While the room is out of sight, what is in sight is painted
// first and the room follows in the next moment; else it goes with the answer. It never lags behind
// a fault or another job.

import { effect, signal, untracked } from "@preact/signals";
import { faults, first as newest, jobId } from "../bench";
import type { First } from "../contract";

export const shownFirst = signal<First | null>(null);
/** False while the answer's room is known to be off the screen. */
export const inSight = signal(true);

interface Came { answer: First | null; of: string | null; sound: boolean }

let came: Came = { answer: null, of: null, sound: true };
let shown = came;
let waiting = false;

effect(() => {
  const answer = newest.value;
  const id = jobId.value;
  const of = answer === came.answer ? came.of : id;
  const sound = faults.value.length === 0;
  const steady = sound && came.sound && of === shown.of;
  came = { answer, of, sound };
  untracked(() => {
    if (steady && answer && shown.answer && !inSight.peek()) afterPaint();
    else show();
  });
});

function show(): void {
  waiting = false;
  shown = came;
  shownFirst.value = came.answer;
}

const LONGEST_MS = 100;  // a page in the background paints nothing

function afterPaint(): void {
  if (waiting) return;
  waiting = true;
  const go = () => {
    clearTimeout(late);
    if (waiting) show();
  };
  const late = setTimeout(go, LONGEST_MS);
  requestAnimationFrame(() => setTimeout(go));
}
