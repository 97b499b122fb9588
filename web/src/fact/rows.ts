// Which kind of fact stands at a pointer. Its table comes only with what asks for facts.

import { patternOf, type FactRow } from "./kinds";
import { table } from "./table";

export function rowOf(pointer: string): FactRow | undefined {
  return table[patternOf(pointer)];
}
