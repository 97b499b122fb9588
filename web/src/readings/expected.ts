// What is to be measured, read for the page: steps in the engine's order, and what was written.

import type { Expected } from "../contract";

/** As the engine tells it: more than the contract names. */
export interface Test extends Expected {
  step: string;
  how: string;
  clause: string;
  /** Done with the supply off. */
  dead: boolean;
}

export interface StepOf {
  step: string;
  what: string;
  how: string;
  clause: string;
  dead: boolean;
  tests: Test[];
}

/** The name under which a reading of a test is kept. */
export const factOf = (test: Pick<Test, "step" | "where">): string => `${test.step}: ${test.where}`;

/** Tests that follow one another in one step. */
export function steps(tests: Test[]): StepOf[] {
  const out: StepOf[] = [];
  for (const test of tests) {
    const last = out[out.length - 1];
    if (last?.step === test.step) last.tests.push(test);
    else {
      const { step, what, how, clause, dead } = test;
      out.push({ step, what, how, clause, dead, tests: [test] });
    }
  }
  return out;
}

/** What was typed as a number: a point or a comma, and ">" before what is off the scale. */
export function valueOf(typed: string): number | null {
  const text = typed
    .trim()
    .replace(/^[>≥]\s*/, "")
    .replace(",", ".")
    .replace(/^−/, "-");
  if (!/^-?\d+(\.\d+)?$/.test(text)) return null;
  const value = Number(text);
  return Number.isFinite(value) ? value : null;
}

/** The unit of what is read; empty where one only looks. A bond is read though none is expected. */
export function unitOf(test: Pick<Test, "unit" | "instrument">): string {
  return test.unit || (test.instrument.includes("ohmmeter") ? "Ω" : "");
}

/** Where a reading lies beyond the limit that is stated for its test. It is no verdict. */
export function beyondLimit(
  reading: { value: number; unit: string },
  test: Pick<Test, "unit" | "limit" | "at_least">,
): "above" | "below" | null {
  if (test.limit === null || !test.unit || reading.unit !== test.unit) return null;
  if (test.at_least) return reading.value < test.limit ? "below" : null;
  return reading.value > test.limit ? "above" : null;
}
