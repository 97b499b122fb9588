import { createReadStream, existsSync, readFileSync } from "node:fs";
import { defineConfig, type Plugin } from "vite";

const here = (path: string): string => new URL(path, import.meta.url).pathname;

/** Where the engine's modules lie: a link beside this file, else what scripts/check_wasm builds. */
function engineFile(name: string): string | undefined {
  const given = process.env["TOFT_ENGINE"];
  const places = [
    ...(given ? [`${given}/${name}`] : []), here(name), here(`../build/wasm/${name}`),
  ];
  return places.find((path) => existsSync(path));
}

const modules = ["toft.wasm", "toft-papers.wasm"];

function engine(): Plugin {
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
      }
    },
  };
}

export default defineConfig({
  base: "./",
  plugins: [engine()],
  oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
  build: {
    target: "es2022",
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    rolldownOptions: { output: {
      entryFileNames: "page/[name]-[hash].js",
      chunkFileNames: "page/[name]-[hash].js",
      assetFileNames: "page/[name]-[hash][extname]",
    } },
  },
  worker: { format: "es" },
});
