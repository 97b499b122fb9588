// Figures as people type them, and facts as a job keeps them.

import type { Basis, Figure, Known } from "../place/job";
import { readFigure, plain } from "../place/figure";
import type { FactRow } from "./kinds";

/** "0,21" and " 0.21" are numbers; anything else, half typed or not, is none. */
export function typed(text: string): number | null {
  const tidy = text.trim().replace(",", ".").replace(/\s/g, "");
  return /^-?(\d+\.?\d*|\.\d+)$/.test(tidy) ? Number(tidy) : null;
}

export interface Draft {
  low: string;
  /** Of a range; empty for one figure. */
  high: string;
  range: boolean;
  /** How it is known; "" until it is said; null for what is counted or chosen, which has none. */
  basis: Basis | "" | null;
}

/** Nobody has measured what was only typed: how it is known is asked, not taken for granted. */
export const unsaid = (usual: Basis | null): Draft["basis"] => (usual === "measured" ? "" : usual);

/** What stands in the fields for what the job says. */
export function draftOf(figure: Figure | undefined, usual: Basis | null, per = 1): Draft {
  const reading = readFigure(figure);
  if (!reading.known) return { low: "", high: "", range: false, basis: unsaid(usual) };
  const range = typeof figure === "object" && typeof figure?.value !== "number";
  const one = (x: number) => plain(x / per, 9);
  const basis = usual === null ? null : reading.basis;
  return { low: one(reading.low), high: range ? one(reading.high) : "", range, basis };
}

export type Fit =
  | { fits: true; figure: Figure | undefined }
  | { fits: false; wants: "number" | "whole" | "range" | "order" };

/** What the fields say, as the job keeps it; nothing typed is not known. */
export function figureOf(draft: Draft, row: FactRow, per = 1): Fit {
  if (draft.low.trim() === "" && (!draft.range || draft.high.trim() === "")) {
    return { fits: true, figure: undefined };
  }
  const ends = draft.range ? [draft.low, draft.high] : [draft.low];
  const numbers = ends.map(typed).map((x) => (x === null ? null : Number((x * per).toPrecision(12))));
  for (const x of numbers) {
    if (x === null) return { fits: false, wants: "number" };
    if (row.whole && !Number.isInteger(x)) return { fits: false, wants: "whole" };
    if (x < (row.low ?? -Infinity) || x > (row.high ?? Infinity)) return { fits: false, wants: "range" };
  }
  const [low, high] = numbers as number[];
  const basis = draft.basis === "" ? "assumed" : draft.basis;
  if (high !== undefined && low! > high) return { fits: false, wants: "order" };
  const figure: Known = high === undefined ? { value: low! } : { low: low!, high };
  if (basis) return { fits: true, figure: { ...figure, basis } };
  return { fits: true, figure: figure.value ?? figure };
}
