// Words for names that come from the engine: rules, parts, buildings, runs.

import { job } from "../bench";
import { say, type WordKey } from "../words";

/** The words of a key made at run time, or `otherwise` where there are none. */
export function sayOr(key: string, otherwise: string): string {
  const words = say(key as WordKey);
  return words === key ? otherwise : words;
}

export function ruleWords(rule: string): string {
  return sayOr(`answer.rule ${rule}`, rule.replace(/-/g, " "));
}

export function ruleSymbol(rule: string): string {
  return sayOr(`answer.symbol ${rule}`, "");
}

interface Named { id: string; name?: string; at?: string }

export function buildingWords(id: string): string {
  const found = (job.value?.buildings as Named[] | undefined)?.find((b) => b.id === id);
  return found?.name ?? id;
}

export function runWords(run: string): string {
  const found = (job.value?.runs as Array<{ id: string; to: string }> | undefined)
    ?.find((r) => r.id === run);
  return found ? buildingWords(found.to) : run;
}

/** A scheme's key as words: "supply earth · 2×4 · separate conductor 10 · B20 6 kA · spare way". */
export function keyWords(key: string): string {
  return key
    .split("+")
    .map((run) => run.replace(/^[^:/]+:/, (id) => `${runWords(id.slice(0, -1))}: `)
      .split("/")
      .map((part) => part
        .replace(/(\d)x(\d)/g, "$1×$2")
        .replace(/-(\d+(?:\.\d+)?kA)$/, " $1")
        .replace(/-/g, " "))
      .join(" · "))
    .join("; ");
}

/** What faults say, as one line. */
export function faultWords(error: unknown): string {
  const faults = (error as { faults?: Array<{ says: string }> }).faults;
  return faults?.length ? faults.map((f) => f.says).join("; ") : String((error as Error).message);
}
