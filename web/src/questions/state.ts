import { computed, effect, signal } from "@preact/signals";
import { ask, behind, faults, jobId } from "../bench";
import type { Unknown } from "../contract";
import { fresh, heardAgain, nextAsked, returnTo, type Session } from "./queue";

export const session = signal<Session>(fresh);

let of: string | null = null;
effect(() => {
  if (jobId.value === of) return;
  of = jobId.value;
  session.value = fresh;
});
effect(() => {
  const list = ask.value?.find_out;
  if (list && !behind.value) session.value = heardAgain(session.peek(), list);
});

const known = (fact: string): Unknown | undefined =>
  [...(ask.value?.find_out ?? []), ...(ask.value?.leave ?? [])].find((open) => open.fact === fact);

/** Puts one fact before the person, wherever it was touched. */
export function askFor(fact: string): void {
  session.value = returnTo(session.peek(), fact);
  requestAnimationFrame(() => {
    const title = document.getElementById("question-title");
    title?.focus({ preventScroll: true });
    title?.scrollIntoView({ block: "center" });
  });
}

export interface Asked {
  fact: string;
  /** What the engine says of it; nothing once it is known. */
  open?: Unknown;
}

export const current = computed<Asked | null>(() => {
  const { back } = session.value;
  if (back) return { fact: back, open: known(back) };
  if (faults.value.length > 0) return null;
  const open = nextAsked(ask.value?.find_out ?? [], session.value);
  return open ? { fact: open.fact, open } : null;
});
