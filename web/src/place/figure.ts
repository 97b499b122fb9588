// A measured quantity as a job states it, read without guessing.

import type { Basis, Figure } from "./job";

export interface Reading {
  known: boolean;
  low: number;
  high: number;
  basis: Basis;
}

const unknown: Reading = { known: false, low: NaN, high: NaN, basis: "assumed" };

export function readFigure(figure: Figure | undefined): Reading {
  if (figure === null || figure === undefined) return unknown;
  if (typeof figure === "number") {
    return { known: true, low: figure, high: figure, basis: "measured" };
  }
  if (typeof figure.value === "number") {
    const basis = figure.basis ?? "measured";
    return { known: true, low: figure.value, high: figure.value, basis };
  }
  if (typeof figure.low === "number" && typeof figure.high === "number") {
    return { known: true, low: figure.low, high: figure.high, basis: figure.basis ?? "assumed" };
  }
  return unknown;
}

export const isKnown = (figure: Figure | undefined): boolean => readFigure(figure).known;

/** A figure without noise of binary fractions, for people. */
export function plain(x: number, digits = 6): string {
  return String(Number(x.toPrecision(digits)));
}

/** "7" or "5 to 9" with the word given for "to"; empty when not known. */
export function spoken(reading: Reading, to: string, per = 1): string {
  if (!reading.known) return "";
  const one = (x: number) => plain(x / per);
  return reading.low === reading.high
    ? one(reading.low)
    : `${one(reading.low)} ${to} ${one(reading.high)}`;
}
