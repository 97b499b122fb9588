// What this room reads of the job: names, and what is stated. Put into text first, so that a change
// of anything else does not draw the room before its answer is there.

import { computed } from "@preact/signals";
import { job } from "../bench";
import { isKnown } from "../place/figure";
import type { Circuit, Job } from "../place/job";

interface Read {
  buildings: Array<{
    id: string;
    name?: string;
    at?: string;
    circuits: Array<{ name: string; kind: string; known: boolean }>;
  }>;
  runs: Array<{ id: string; to: string }>;
  /** Facts of the intake that are stated. */
  stated: string[];
}

const known = (figure: unknown): boolean => isKnown(figure as Circuit["load_w"]);
const asked = ["main_bonding_mm2", "earthing_conductor_mm2", "demand_a"];

function readOf(whole: Job | null): Read {
  const intake = (whole?.intake ?? {}) as Record<string, unknown>;
  return {
    buildings: (whole?.buildings ?? []).map(({ id, name, at, circuits }) => ({
      id, name: name as string, at: at as string,
      circuits: (circuits ?? []).map((one) =>
        ({ name: one.name, kind: one.kind, known: known(one["length_m"]) })),
    })),
    runs: (whole?.runs ?? []).map(({ id, to }) => ({ id, to })),
    stated: asked.filter((key) => known(intake[key])),
  };
}

const text = computed(() => JSON.stringify(readOf(job.value as unknown as Job | null)));
export const read = computed(() => JSON.parse(text.value) as Read);
