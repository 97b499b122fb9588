// What the job leaves open that rules read: circuits without a length, figures nobody stated.

import type { Finding } from "../contract";
import { findingsByRun, sortBars } from "./bars";
import { runs } from "./look";
import { read } from "./read";

export interface OpenCircuit {
  pointer: string;
  circuit: { name: string; kind: string };
}

/** Circuits whose cable has no length yet, of the building a run feeds or of all. */
export function lengthless(run?: string): OpenCircuit[] {
  const { buildings, runs: all } = read.value;
  const to = run && all.find((r) => r.id === run)?.to;
  return buildings.flatMap((building, i) =>
    building.at === "origin" || (run && building.id !== to) ? [] : building.circuits
      .map((circuit, k) => ({ circuit, pointer: `/buildings/${i}/circuits/${k}` }))
      .filter(({ circuit }) => !circuit.known),
  );
}

/** A figure of the intake that stands where nobody stated one: no bar is drawn of it. */
export function isUnstated(finding: Finding): boolean {
  const { buildings, stated } = read.value;
  const known = (key: string) => stated.includes(key);
  if (finding.verdict === "meets") return false;
  if (finding.rule === "house-earthing") {
    return finding.value === 0 && !(known("main_bonding_mm2") && known("earthing_conductor_mm2"));
  }
  if (finding.rule !== "intake-capacity" || known("demand_a")) return false;
  return !buildings.some((b) => b.at === "origin" && b.circuits.length);
}

/** How many rules could not be judged over all runs, for want of a circuit's length. */
export function openRuleCount(findings: Finding[], of = runs.value): number {
  const byRun = findingsByRun(findings, of);
  return [...byRun].reduce((sum, [run, mine]) => {
    const kinds = lengthless(run).map(({ circuit }) => circuit.kind);
    return sum + sortBars(mine, kinds).open.length;
  }, 0);
}
