// JSON pointers (RFC 6901) over plain values. Nothing here changes what it is given.

export type Path = string[];

export function pathOf(pointer: string): Path {
  if (pointer === "") return [];
  return pointer.slice(1).split("/").map((part) => part.replace(/~1/g, "/").replace(/~0/g, "~"));
}

export function pointerOf(path: Array<string | number>): string {
  return path.map((part) => `/${String(part).replace(/~/g, "~0").replace(/\//g, "~1")}`).join("");
}

export function valueAt(whole: unknown, pointer: string): unknown {
  let value = whole;
  for (const part of pathOf(pointer)) {
    if (typeof value !== "object" || value === null) return undefined;
    value = (value as Record<string, unknown>)[part];
  }
  return value;
}

/**
 * The same with `value` at `pointer`; undefined takes a member out, or an entry out of a list; `-`
 * or the length adds to a list. Objects that are missing on the way are made.
 */
export function withValue<T>(whole: T, pointer: string, value: unknown): T {
  return put(whole, pathOf(pointer), value) as T;
}

function put(whole: unknown, path: Path, value: unknown): unknown {
  const [part, ...rest] = path;
  if (part === undefined) return value;
  if (Array.isArray(whole)) {
    const list = [...whole];
    const index = part === "-" ? list.length : Number(part);
    if (rest.length === 0 && value === undefined) list.splice(index, 1);
    else list[index] = put(list[index], rest, value);
    return list;
  }
  const members = { ...(whole as Record<string, unknown> | null | undefined) };
  if (rest.length === 0 && value === undefined) delete members[part];
  else members[part] = put(members[part], rest, value);
  return members;
}

/** Whether two JSON values say the same. */
export function same(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (typeof a !== "object" || typeof b !== "object" || !a || !b) return false;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const keys = Object.keys(a);
  if (keys.length !== Object.keys(b).length) return false;
  return keys.every((key) => key in b
    && same((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key]));
}
