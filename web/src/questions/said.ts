// What a job says of a fact, in a few words.

import { get } from "../bench";
import { shownPer } from "../fact/kinds";
import { rowOf } from "../fact/rows";
import { wordSaid } from "../fact/words";
import { figureSaid } from "../place/telling";
import type { Figure } from "../place/job";
import { say } from "../words";

export function factSaid(fact: string): string {
  const value = get(fact);
  if (value === undefined || value === null) return say("fact.unknown");
  const { per, unit } = shownPer(fact);
  switch (rowOf(fact)?.kind) {
    case "figure": return figureSaid(value as Figure, unit, per);
    case "number": return `${String(value)} ${unit}`;
    case "yes or no": return say(value ? "fact.yes" : "fact.no");
    case "device": {
      const device = value as { standard: string; rating_a: number };
      return `${device.rating_a} A ${device.standard}`;
    }
    case "list": {
      const list = value as Array<{ what?: string; name?: string }>;
      if (list.length === 0) return say("questions.none");
      return list.map((entry) => entry.what ?? entry.name ?? "").join(", ");
    }
    case "word": return wordSaid(fact, String(value));
    default: return Array.isArray(value) ? value.join(", ") : String(value);
  }
}
