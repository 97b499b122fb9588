// The engine's modules lie in public/, where scripts/build_engine puts them, and are copied with the
// rest of it. A page without them would show nothing but an apology: no build is made of it.

import { existsSync } from "node:fs";
import type { Plugin } from "vite";

export const modules = ["toft-first.wasm", "toft.wasm"];

export function engine(): Plugin {
  return {
    name: "toft-engine",
    buildStart() {
      for (const name of modules) {
        const file = new URL(`../public/${name}`, import.meta.url);
        if (!existsSync(file)) this.error(`public/${name} was not found: see web/README.md`);
      }
    },
  };
}
