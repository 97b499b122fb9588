// Which scheme and which run are looked at.

import { computed, signal } from "@preact/signals";
import { read } from "./read";
import { governed } from "./sentence";
import { shownFirst } from "./told";

const wanted = signal<string | null>(null);

/** Runs that the looked-at scheme builds, in the engine's order. */
export const runs = computed(() => Object.keys(shownFirst.value?.chosen?.runs ?? {}));

/** The run whose rules, figures and pictures are shown: until one is chosen, the tightest. */
export const run = computed(() => {
  const tightest = governed(shownFirst.value?.chosen?.governed_by ?? "").run;
  const found = [wanted.value, tightest].find((id) => id !== null && runs.value.includes(id));
  return found ?? runs.value[0] ?? "";
});

export function lookAlong(id: string): void {
  wanted.value = id;
}

/** As the verbs take it: only where the job has several runs. */
export const runAsked = computed(() =>
  read.value.runs.length > 1 && run.value
    ? { run: run.value }
    : {},
);

/** Key of the scheme on screen, and whether it is the recommended one. */
export const lookedKey = computed(
  () => shownFirst.value?.chosen_key ?? shownFirst.value?.chosen?.key ?? null,
);
export const recommendedKey = computed(() => shownFirst.value?.schemes[0]?.key ?? null);
export const astray = computed(
  () => lookedKey.value !== null && lookedKey.value !== recommendedKey.value,
);
