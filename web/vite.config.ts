import { defineConfig } from "vitest/config";
import { digests, engine } from "./build/engine.ts";
import { offline } from "./build/offline.ts";
import { pocket } from "./build/pocket.ts";

// Where a server runs while the page is being worked on: TOFT_SERVER=http://127.0.0.1:8080.
const behind = process.env["TOFT_SERVER"];
const proxy: Record<string, string> = behind ? { "/api": behind } : {};

// `vite build` writes dist/, `vite build --mode pocket` then adds dist/pocket.html. Names carry
// digests of what they hold; the same sources always give the same bytes.
export default defineConfig(({ mode }) => {
  const single = mode === "pocket";
  return {
    base: "./",
    publicDir: single ? false : "public",
    plugins: single ? [pocket()] : [engine(), offline()],
    define: { __DIGESTS__: JSON.stringify(single ? {} : digests()) },
    oxc: { jsx: { runtime: "automatic" as const, importSource: "preact" } },
    build: {
      target: "es2022",
      assetsInlineLimit: 0,
      emptyOutDir: !single,
      cssCodeSplit: !single,
      modulePreload: { polyfill: false },
      rolldownOptions: {
        output: {
          entryFileNames: "page/[name]-[hash].js",
          chunkFileNames: "page/[name]-[hash].js",
          assetFileNames: "page/[name]-[hash][extname]",
          ...(single ? { codeSplitting: false } : {}),
        },
      },
    },
    worker: {
      format: single ? "iife" as const : "es" as const,
      rolldownOptions: { output: { entryFileNames: "page/[name]-[hash].js" } },
    },
    server: { proxy },
    test: {
      projects: [
        { extends: true as const, test: {
          name: "plain", environment: "node", include: ["src/**/*.test.ts"],
          setupFiles: ["src/words/all.ts"] } },
        { extends: true as const, test: {
          name: "drawn", environment: "happy-dom", include: ["src/**/*.test.tsx"],
          setupFiles: ["src/words/all.ts"] } },
      ],
    },
  };
});
