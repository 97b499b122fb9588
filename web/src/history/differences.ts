import { pointerOf, same } from "../bench/pointer";

export interface Difference { pointer: string; a: unknown; b: unknown }

/** Places where two values differ, as deep as they can be told. */
export function differences(a: unknown, b: unknown, at: Array<string | number> = []): Difference[] {
  if (same(a, b)) return [];
  const both = typeof a === "object" && typeof b === "object" && a !== null && b !== null;
  if (!both || Array.isArray(a) !== Array.isArray(b)
      || (Array.isArray(a) && a.length !== (b as unknown[]).length)) {
    return [{ pointer: pointerOf(at), a, b }];
  }
  const left = a as Record<string, unknown>;
  const right = b as Record<string, unknown>;
  return [...new Set([...Object.keys(left), ...Object.keys(right)])]
    .flatMap((key) => differences(left[key], right[key], [...at, key]));
}
