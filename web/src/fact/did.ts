// A change in words for the history: of what, which fact, what it says now.

import { factWords } from "../answer/speak";
import { figureSaid } from "../place/telling";
import type { Figure } from "../place/job";
import { say } from "../words";
import { shownPer } from "./kinds";
import { rowOf } from "./rows";
import { wordSaid } from "./words";

function valueSaid(pointer: string, value: unknown): string {
  if (value === undefined || value === null || value === "") return say("fact.unknown");
  const { per, unit } = shownPer(pointer);
  switch (rowOf(pointer)?.kind) {
    case "figure": return figureSaid(value as Figure, unit, per).trim();
    case "number": return `${String(value)} ${unit}`.trim();
    case "yes or no": return say(value ? "fact.yes" : "fact.no");
    case "word": return wordSaid(pointer, String(value));
    case "device": {
      const device = value as { standard: string; rating_a: number };
      return `${device.rating_a} A ${device.standard}`;
    }
    case "list": return Array.isArray(value) && value.length === 0 ? say("questions.none") : "";
    default: return Array.isArray(value) ? value.join(", ") : String(value);
  }
}

/** "Potter's studio, leg 2, length: 21 m". */
export function did(pointer: string, value: unknown): string {
  const what = factWords(pointer);
  const said = valueSaid(pointer, value);
  const words = said ? say("fact.did", { what, value: said }) : what;
  return words[0]!.toUpperCase() + words.slice(1);
}
