// Three-way merge by fact, as the server does it: used where no server is there to do it, and to
// carry what was typed meanwhile over to what came back.

import type { Clash } from "../contract";
import { pointerOf, same } from "../bench/pointer";

export interface Merged<T> {
  value: T;
  /** Places that both changed, and not alike. There `value` has theirs. */
  clashes: Clash[];
}

type Members = Record<string, unknown>;
type Path = Array<string | number>;

const isMembers = (value: unknown): value is Members =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** Entries that have an id are one another's match by it; others by place, if none came or went. */
function byId(list: unknown[]): Map<string, unknown> | undefined {
  const found = new Map<string, unknown>();
  for (const entry of list) {
    const id = isMembers(entry) ? entry["id"] : undefined;
    if (typeof id !== "string" || found.has(id)) return undefined;
    found.set(id, entry);
  }
  return found;
}

export function merge<T>(base: T, mine: T, theirs: T): Merged<T> {
  const clashes: Clash[] = [];
  const value = walk(base, mine, theirs, [], clashes) as T;
  return { value, clashes };
}

/** What `mine` changed since `base`, done to `theirs`; where both changed, mine holds. */
export function rebase<T>(base: T, mine: T, theirs: T): T {
  return merge(base, theirs, mine).value;
}

function walk(base: unknown, mine: unknown, theirs: unknown, at: Path, clashes: Clash[]): unknown {
  if (same(mine, base) || same(mine, theirs)) return theirs;
  if (same(theirs, base)) return mine;
  if (isMembers(mine) && isMembers(theirs)) {
    return members(isMembers(base) ? base : {}, mine, theirs, at, clashes);
  }
  if (Array.isArray(mine) && Array.isArray(theirs) && Array.isArray(base)) {
    const lists = entries(base, mine, theirs, at, clashes);
    if (lists) return lists;
  }
  clashes.push({ pointer: pointerOf(at), says: "", was: base, yours: mine, theirs });
  return theirs;
}

function members(base: Members, mine: Members, theirs: Members, at: Path, clashes: Clash[]) {
  const out: Members = {};
  for (const key of new Set([...Object.keys(theirs), ...Object.keys(mine)])) {
    const value = walk(base[key], mine[key], theirs[key], [...at, key], clashes);
    if (value !== undefined) out[key] = value;
  }
  return out;
}

function entries(base: unknown[], mine: unknown[], theirs: unknown[], at: Path, clashes: Clash[]) {
  const [was, ours, others] = [byId(base), byId(mine), byId(theirs)];
  if (was && ours && others) {
    const order = [...others.keys(), ...[...ours.keys()].filter((id) => !others.has(id))];
    return order.flatMap((id, index) => {
      const value = walk(was.get(id), ours.get(id), others.get(id), [...at, index], clashes);
      return value === undefined ? [] : [value];
    });
  }
  if (base.length !== mine.length || base.length !== theirs.length) return undefined;
  return base.map((entry, index) =>
    walk(entry, mine[index], theirs[index], [...at, index], clashes));
}
