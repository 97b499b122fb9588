// Words for names that come from the engine: rules, parts, buildings, runs.

import { job } from "../bench";
import type { Fault } from "../contract";
import { called } from "../fact/words";
import { say, type WordKey } from "../words";
import { valueAt } from "../bench/pointer";
import { unbroken } from "./figure";
import { read } from "./read";

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

export function buildingWords(id: string): string {
  return read.value.buildings.find((b) => b.id === id)?.name ?? id;
}

export function runWords(run: string): string {
  const found = read.value.runs.find((r) => r.id === run);
  return found ? buildingWords(found.to) : run;
}

/** The engine's words of a scheme, with each run named by the building it leads to. */
export function schemeWords(words: string): string {
  let said = words;
  for (const { id } of read.value.runs) {
    if (said.startsWith(`${id}: `)) said = `${runWords(id)}: ${said.slice(id.length + 2)}`;
    said = said.split(`; ${id}: `).join(`; ${runWords(id)}: `);
  }
  return unbroken(said);
}

/** A place in the job as words, for a fact that the engine has not named yet. */
export function factWords(pointer: string): string {
  const parts = pointer.replace(/\/(value|low|high|basis)$/, "").split("/").slice(1);
  const said: string[] = [];
  for (let i = 0; i < parts.length; ++i) {
    const next = Number(parts[i + 1]);
    const list = Number.isInteger(next) && i + 1 < parts.length;
    if (!list && rooms.has(parts[i]!) && i + 1 < parts.length) continue;
    if (!list) said.push(uncapped(called(`/${parts.slice(0, i + 1).join("/")}`)));
    else said.push(entryWords(`/${parts.slice(0, i + 2).join("/")}`, parts[i]!, next));
    if (list) ++i;
  }
  return said.join(", ");
}

/** Rooms of the file that people need not hear of: what stands in them says enough. */
const rooms = new Set(["intake", "board", "wishes", "ground"]);

/** "Earth loop" within a sentence; "RCD before …" stays. */
const uncapped = (word: string): string =>
  /^[A-Z][a-z ]/.test(word) ? word[0]!.toLowerCase() + word.slice(1) : word;

function entryWords(pointer: string, list: string, index: number): string {
  const entry = valueAt(job.value, pointer) as Record<string, string> | undefined;
  if (list === "runs") return entry ? runWords(entry["id"]!) : `${index + 1}`;
  if (list === "buildings") return entry?.["name"] ?? entry?.["id"] ?? `${index + 1}`;
  const named = list === "circuits" ? entry?.["name"] : list === "metalwork" ? entry?.["what"] : "";
  return named || `${list.replace(/s$/, "").replace(/_/g, " ")} ${index + 1}`;
}

export const lacksEarthing = (faults: Fault[]): boolean =>
  faults.some((f) => f.pointer === "/intake/earthing");

/** What is at fault in the words of the page: names of the file stay in the file. */
export function faultSays(fault: Fault): string {
  if (fault.code === "no-load") {
    const circuit = fault.pointer.includes("/circuits/");
    return say(circuit ? "answer.fault_circuit_load" : "answer.fault_load", {
      name: factWords(fault.pointer),
    });
  }
  if (fault.pointer === "/intake/earthing") return say("answer.fault_earthing");
  if (fault.code === "out-of-range" || fault.code === "missing") {
    const what = factWords(fault.pointer);
    return fault.code === "missing"
      ? say("answer.fault_missing", { what })
      : say("answer.fault_range", { what, says: fault.says });
  }
  return fault.says;
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
  const faults = (error as { faults?: Fault[] }).faults;
  return faults?.length ? faults.map(faultSays).join("; ") : String((error as Error).message);
}
