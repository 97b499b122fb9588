// What a first visit shows must bring its words along: those of a room that comes later are not there.

import { readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { expect, it } from "vitest";

const home = new URL("../", import.meta.url).pathname;
const read = (file: string) => readFileSync(file, "utf8");
const ending = (file: string) =>
  [".ts", ".tsx", "/index.ts", "/index.tsx"].map((end) => file + end)
    .find((name) => { try { return read(name).length > 0; } catch { return false; } });

/** Sources that a module brings along: what it imports in its head, not what it fetches later. */
function broughtAlong(file: string, seen = new Set<string>()): Set<string> {
  if (seen.has(file)) return seen;
  seen.add(file);
  for (const [, from] of read(file).matchAll(/^(?:import|export|\}) (?!type )[^;]*?"(\.[^"]+)"/gm)) {
    const found = /\.(json|css)$/.test(from!) ? undefined : ending(join(dirname(file), from!));
    if (found) broughtAlong(found, seen);
  }
  return seen;
}

const folder = join(home, "words/en");
const early = new Set(["answer", "fact", "place", "questions", "shell"]);
const late = readdirSync(folder).filter((name) => !early.has(name.replace(".json", "")));

it("speaks at first no word that comes later", () => {
  const sources = [...broughtAlong(join(home, "main.tsx"))];
  expect(sources.length).toBeGreaterThan(60);
  const said = sources.map(read).join("\n");
  for (const name of late) {
    const room = name.split(".")[0]!;
    for (const key of Object.keys(JSON.parse(read(join(folder, name))))) {
      expect(said, `${room}.${key} of ${name}`).not.toContain(`"${room}.${key}"`);
    }
  }
});

it("has each word in one file", () => {
  for (const name of late.filter((file) => file.includes(".later"))) {
    const first = JSON.parse(read(join(folder, name.replace(".later", ""))));
    for (const key of Object.keys(JSON.parse(read(join(folder, name))))) {
      expect(first).not.toHaveProperty([key]);
    }
  }
});
