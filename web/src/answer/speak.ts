// Words for names that come from the engine: rules, parts, buildings, runs.

import { job } from "../bench";
import { say, type WordKey } from "../words";
import { unbroken } from "./figure";

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

interface Named {
  id: string;
  name?: string;
  at?: string;
}

export function buildingWords(id: string): string {
  const found = (job.value?.buildings as Named[] | undefined)?.find((b) => b.id === id);
  return found?.name ?? id;
}

export function runWords(run: string): string {
  const found = (job.value?.runs as Array<{ id: string; to: string }> | undefined)?.find(
    (r) => r.id === run,
  );
  return found ? buildingWords(found.to) : run;
}

/** The engine's words of a scheme, with each run named by the building it leads to. */
export function schemeWords(words: string): string {
  const runs = (job.value?.runs as Array<{ id: string }> | undefined) ?? [];
  let said = words;
  for (const { id } of runs) {
    if (said.startsWith(`${id}: `)) said = `${runWords(id)}: ${said.slice(id.length + 2)}`;
    said = said.split(`; ${id}: `).join(`; ${runWords(id)}: `);
  }
  return unbroken(said);
}

/** A place in the job as words, for a fact that the engine has not named yet. */
export function factWords(pointer: string): string {
  const parts = pointer.split("/").slice(1);
  const said: string[] = [];
  for (let i = 0; i < parts.length; ++i) {
    const next = Number(parts[i + 1]);
    const list = Number.isInteger(next) && i + 1 < parts.length;
    if (!list)
      said.push(parts[i]!.replace(/_(m|mm2|a|ohm|kohm|ka|w|v|c|ohm_m)$/, "").replace(/_/g, " "));
    else if (parts[i] === "buildings") said.push(nameAt("buildings", next, "id"));
    else if (parts[i] === "runs") said.push(runWords(nameAt("runs", next, "id")));
    else said.push(`${parts[i]!.replace(/s$/, "").replace(/_/g, " ")} ${next + 1}`);
    if (list) ++i;
  }
  return said.join(", ");
}

function nameAt(list: "buildings" | "runs", index: number, key: string): string {
  const entry = (job.value?.[list] as unknown as Array<Record<string, string>> | undefined)?.[
    index
  ];
  return entry?.[list === "buildings" && entry["name"] ? "name" : key] ?? `${index + 1}`;
}

/** A scheme's key as words: "supply earth · 2×4 · separate conductor 10 · B20 6 kA · spare way". */
export function keyWords(key: string): string {
  return key
    .split("+")
    .map((run) =>
      run
        .replace(/^[^:/]+:/, (id) => `${runWords(id.slice(0, -1))}: `)
        .split("/")
        .map((part) =>
          part
            .replace(/(\d)x(\d)/g, "$1×$2")
            .replace(/-(\d+(?:\.\d+)?kA)$/, " $1")
            .replace(/-/g, " "),
        )
        .join(" · "),
    )
    .join("; ");
}

/** What faults say, as one line. */
export function faultWords(error: unknown): string {
  const faults = (error as { faults?: Array<{ says: string }> }).faults;
  return faults?.length ? faults.map((f) => f.says).join("; ") : String((error as Error).message);
}
