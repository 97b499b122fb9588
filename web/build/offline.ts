// Writes sw.js once everything else is there: it names every file as the page asks for
// it, and a digest of them all.

import { createHash } from "node:crypto";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, relative } from "node:path";
import type { Plugin, ResolvedConfig } from "vite";
import { addressed } from "./engine.ts";

/** What a page that is offline can do without. */
const left = new Set(["pocket.html", "sw.js"]);

function filesIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)))
    .filter((name) => !left.has(name))
    .sort();
}

export function offline(): Plugin {
  let config: ResolvedConfig;
  return {
    name: "toft-offline",
    configResolved(resolved) { config = resolved; },
    closeBundle() {
      const folder = config.build.outDir;
      const files = filesIn(folder);
      const digest = createHash("sha256");
      for (const name of files) digest.update(name).update(readFileSync(join(folder, name)));
      const source = readFileSync(new URL("../src/offline/sw.js", import.meta.url), "utf8");
      writeFileSync(join(folder, "sw.js"), source
        .replace("__VERSION__", digest.digest("hex").slice(0, 16))
        .replace("__FILES__", JSON.stringify(files.map(addressed))));
    },
  };
}
