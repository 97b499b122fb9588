// The engine's modules beside the page: served while developing, copied when building.

import { createReadStream, existsSync, readFileSync } from "node:fs";
import type { Plugin } from "vite";

export const modules = ["toft.wasm", "toft-papers.wasm"];

const here = (path: string): string => new URL(`../${path}`, import.meta.url).pathname;

/** From TOFT_ENGINE, else a link in web/, else what scripts/check_wasm builds. */
export function engineFile(name: string): string | undefined {
  const given = process.env["TOFT_ENGINE"];
  const places = given ? [`${given}/${name}`] : [here(name), here(`../build/wasm/${name}`)];
  return places.find((path) => existsSync(path));
}

export function engine(): Plugin {
  return {
    name: "toft-engine",
    configureServer(server) {
      server.middlewares.use((request, answer, next) => {
        const name = modules.find((module) => request.url?.split("?")[0] === `/${module}`);
        const file = name && engineFile(name);
        if (!file) return next();
        answer.setHeader("content-type", "application/wasm");
        createReadStream(file).pipe(answer);
      });
    },
    generateBundle() {
      for (const name of modules) {
        const file = engineFile(name);
        if (file) this.emitFile({ type: "asset", fileName: name, source: readFileSync(file) });
        else if (name === modules[0]) this.error(`${name} was not found: see web/README.md`);
      }
    },
  };
}
