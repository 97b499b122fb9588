// pocket.html: the page as one file. `toft pocket` puts the engine and a job in the place of MARK.

import { readFileSync } from "node:fs";
import type { Plugin } from "vite";

const MARK = "<!--toft-pocket-->";

const inScript = (code: string): string => code.replace(/<\/(script)/gi, "<\\/$1")
  .replace(/<!--/g, "<\\!--");

export function pocket(): Plugin {
  return {
    name: "toft-pocket",
    enforce: "pre",
    resolveId(source, importer) {
      if (source === "./start" && importer?.endsWith("/engine/index.ts")) {
        return new URL("../src/engine/start.pocket.ts", import.meta.url).pathname;
      }
      return undefined;
    },
    generateBundle: {
      order: "post",
      handler(_, bundle) {
        let html = "";
        const code: string[] = [];
        const style: string[] = [];
        for (const [name, part] of Object.entries(bundle)) {
          if (part.type === "chunk") code.push(part.code);
          else if (name.endsWith(".css")) style.push(String(part.source));
          else if (name.endsWith(".html")) html = String(part.source);
          delete bundle[name];
        }
        if (!html || code.length !== 1) this.error(`one script was expected, not ${code.length}`);
        const icon = readFileSync(new URL("../public/icon.svg", import.meta.url), "base64");
        const body = html
          .replace(/\s*<link[^>]*>/g, "").replace(/\s*<script[^>]*><\/script>/g, "")
          .replace("</head>", () =>
            `<link rel="icon" href="data:image/svg+xml;base64,${icon}">\n`
            + `<style>\n${style.join("\n")}</style>\n</head>`)
          .replace("</body>", () =>
            `${MARK}\n<script type="module">\n${inScript(code[0]!)}</script>\n</body>`);
        this.emitFile({ type: "asset", fileName: "pocket.html", source: body });
      },
    },
  };
}
