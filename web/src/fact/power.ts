// A power as people write it: "1.5", "1.5 kW", "120 W".

import { typed } from "./value";

export type Power =
  | { fits: true; watts: number | null }
  | { fits: false; wants: "number" | "watts" | "range" };

/** A bare number is kilowatts; nothing written is not known. */
export function powerOf(text: string, low: number, high: number): Power {
  if (text.trim() === "") return { fits: true, watts: null };
  const found = /^(.*?)\s*(kw|w|a|amps?)?$/i.exec(text.trim())!;
  const number = typed(found[1]!);
  const unit = (found[2] ?? "kw").toLowerCase();
  if (number === null) return { fits: false, wants: "number" };
  if (unit.startsWith("a")) return { fits: false, wants: "watts" };
  const watts = Number((number * (unit === "w" ? 1 : 1000)).toPrecision(12));
  return watts < low || watts > high ? { fits: false, wants: "range" } : { fits: true, watts };
}
