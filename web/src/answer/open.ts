// What the job leaves open that rules read: circuits without a length, figures nobody stated.

import { job } from "../bench";
import type { Finding } from "../contract";
import { isKnown } from "../place/figure";
import type { Building, Circuit, Job } from "../place/job";
import { findingsByRun, sortBars } from "./bars";
import { runs } from "./look";

const surveyed = (): Job | null => job.value as unknown as Job | null;

export interface OpenCircuit {
  pointer: string;
  circuit: Circuit;
}

function lengthlessOf(building: Building, index: number): OpenCircuit[] {
  return (building.circuits ?? [])
    .map((circuit, i) => ({ circuit, pointer: `/buildings/${index}/circuits/${i}` }))
    .filter(({ circuit }) => !isKnown(circuit["length_m"] as Circuit["load_w"]));
}

/** Circuits whose cable has no length yet, of the building a run feeds or of all. */
export function lengthless(run?: string): OpenCircuit[] {
  const whole = surveyed();
  const to = run && whole?.runs.find((r) => r.id === run)?.to;
  return (whole?.buildings ?? []).flatMap((building, i) =>
    building.at !== "origin" && (!run || building.id === to) ? lengthlessOf(building, i) : [],
  );
}

/** A figure of the intake that stands where nobody stated one: no bar is drawn of it. */
export function isUnstated(finding: Finding): boolean {
  const intake = surveyed()?.intake ?? {};
  const known = (key: string) => isKnown(intake[key] as Circuit["load_w"]);
  if (finding.verdict === "meets") return false;
  if (finding.rule === "house-earthing") {
    return finding.value === 0 && !(known("main_bonding_mm2") && known("earthing_conductor_mm2"));
  }
  if (finding.rule !== "intake-capacity" || known("demand_a")) return false;
  return !surveyed()?.buildings.some((b) => b.at === "origin" && b.circuits?.length);
}

/** How many rules could not be judged over all runs, for want of a circuit's length. */
export function openRuleCount(findings: Finding[], of = runs.value): number {
  const byRun = findingsByRun(findings, of);
  return [...byRun].reduce((sum, [run, mine]) => {
    const kinds = lengthless(run).map(({ circuit }) => circuit.kind);
    return sum + sortBars(mine, kinds).open.length;
  }, 0);
}
