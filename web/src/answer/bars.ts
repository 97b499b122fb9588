// Which rules are shown as bars of use, in what order, and for which run.

import type { Finding } from "../contract";

export interface Bar {
  finding: Finding;
  /** Share of the limit; Infinity where nothing is there of what is asked. */
  use: number;
}

export interface Bars {
  /** Rules with a figure and a limit, the longest first. */
  measured: Bar[];
  /** Rules without a figure that say something: the worst verdict first. */
  told: Finding[];
  /** Rules that found nothing to judge here. */
  idle: Finding[];
  /** Rules that could not be judged, because what they read of circuits is not stated. */
  open: Finding[];
}

const weight: Record<string, number> = { fails: 0, "not known": 1, caution: 2, meets: 3 };

const weightOf = (finding: Finding): number => weight[finding.verdict] ?? 1;

/** A rule that was not asked anything: its clause had no circuit or figure to judge. */
export function isIdle(finding: Finding): boolean {
  return finding.verdict === "does not apply" || finding.says === "no circuit is judged by it";
}

const starting = ["motor", "pump", "heat pump", "freezer"];
const feeding = ["solar", "battery"];

/** Whether a rule over circuits has a circuit of that kind to judge. */
function readsKind(rule: string, kind: string): boolean {
  if (rule === "motor-start") return starting.includes(kind);
  if (rule === "voltage-rise") return feeding.includes(kind);
  return rule.startsWith("circuit-");
}

/** Whether it was not judged for want of something about a circuit, a length or else. */
function lacksCircuits(finding: Finding, lengthless: string[]): boolean {
  if (lengthless.length === 0) return finding.verdict === "not known";
  return lengthless.some((kind) => readsKind(finding.rule, kind));
}

/**
 * Sorts the findings of a run. `lengthless` are the kinds of its building's circuits whose cable
 * has no length yet; `unstated` tells a figure that stands for a fact nobody stated.
 */
export function sortBars(
  findings: Finding[],
  lengthless: string[] = [],
  unstated: (finding: Finding) => boolean = () => false,
): Bars {
  const bars: Bars = { measured: [], told: [], idle: [], open: [] };
  for (const finding of findings) {
    const figured = finding.value !== null && finding.limit !== null;
    if (figured && finding.verdict !== "not known" && !unstated(finding)) {
      bars.measured.push({ finding, use: finding.use ?? Infinity });
    } else if (isIdle(finding) && lacksCircuits(finding, lengthless)) {
      bars.open.push(finding);
    } else if (isIdle(finding)) {
      bars.idle.push(finding);
    } else {
      bars.told.push(finding);
    }
  }
  bars.measured.sort(
    (a, b) => (b.use === a.use ? 0 : b.use - a.use) || weightOf(a.finding) - weightOf(b.finding),
  );
  bars.told.sort((a, b) => weightOf(a) - weightOf(b));
  return bars;
}

/**
 * The findings of each run: those of its circuits follow the run's own in the engine's list, so a
 * circuit's name needs not be told from the same name in another building.
 */
export function findingsByRun(findings: Finding[], runs: string[]): Map<string, Finding[]> {
  const byRun = new Map<string, Finding[]>(runs.map((run) => [run, []]));
  let run = runs[0] ?? "";
  for (const finding of findings) {
    if (byRun.has(finding.subject)) run = finding.subject;
    if (!byRun.has(run)) byRun.set(run, []);
    byRun.get(run)!.push(finding);
  }
  return byRun;
}

/** Where a bar ends on a track whose limit stands at `limitAt` of its length. */
export function barEnd(use: number, limitAt: number): { end: number; over: boolean } {
  const end = use * limitAt;
  return end > 1 ? { end: 1, over: true } : { end, over: false };
}
