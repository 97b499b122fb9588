// The engine's modules lie in public/, where scripts/build_engine puts them, and are copied with the
// rest of it. A page without them would show nothing but an apology: no build is made of it.

import { createHash } from "node:crypto";
import { existsSync, readFileSync } from "node:fs";
import type { Plugin } from "vite";

export const modules = ["toft-first.wasm", "toft.wasm"];
const place = (name: string): URL => new URL(`../public/${name}`, import.meta.url);

/** A module is asked for with the digest of what it holds: one of another build is another address. */
export const addressed = (name: string): string =>
  modules.includes(name) && existsSync(place(name)) ? `${name}?v=${digestOf(name)}` : name;

const digestOf = (name: string): string =>
  createHash("sha256").update(readFileSync(place(name))).digest("hex").slice(0, 16);

/** By the module's name without its ending; none for what is not there. */
export const digests = (): Record<string, string> => Object.fromEntries(modules
  .filter((name) => existsSync(place(name)))
  .map((name) => [name.replace(/\.wasm$/, ""), digestOf(name)]));

export function engine(): Plugin {
  return {
    name: "toft-engine",
    buildStart() {
      for (const name of modules) {
        if (!existsSync(place(name))) this.error(`public/${name} was not found: see web/README.md`);
      }
    },
    transformIndexHtml: (html) =>
      modules.reduce((page, name) => page.replaceAll(`"./${name}"`, `"./${addressed(name)}"`), html),
  };
}
