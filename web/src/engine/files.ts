// Where the engine's modules come from: files beside the page, or text inside it (a pocket page).

import { OtherBuild } from "./faults";

export type ModuleName = "toft-first" | "toft";

/** SHA-256 of each module that this page was built with, its first signs; put in by the build. */
declare const __DIGESTS__: Partial<Record<ModuleName, string>>;
const digests = __DIGESTS__;

const compiled = new Map<ModuleName, Promise<WebAssembly.Module>>();

export function moduleFile(name: ModuleName): Promise<WebAssembly.Module> {
  let module = compiled.get(name);
  if (!module) {
    module = compile(name);
    compiled.set(name, module);
    module.catch(() => compiled.delete(name));
  }
  return module;
}

/** Whether a module comes inside the page (a pocket page). */
export const isInside = (name: ModuleName): boolean =>
  typeof document !== "undefined" && document.getElementById(`${name}.wasm.gz`) !== null;

function address(name: ModuleName): URL {
  const digest = digests[name];
  return new URL(`${name}.wasm${digest ? `?v=${digest}` : ""}`, document.baseURI);
}

/** True once a tag was seen to be a digest, as those of the program are. */
let tagsAreDigests = false;

/**
 * Whether what came is not what the page was built with: the program may have been renewed while the
 * page was open. Told by the tag, else by the bytes where the browser reckons digests.
 */
export async function isOtherBuild(name: ModuleName, answer: Response): Promise<boolean> {
  const digest = digests[name];
  if (!digest) return false;
  const tag = /^(?:W\/)?"([0-9a-f]{32})"$/.exec(answer.headers.get("etag") ?? "")?.[1];
  if (tag?.startsWith(digest)) {
    tagsAreDigests = true;
    return false;
  }
  if (tag && tagsAreDigests) return true;
  if (name === "toft-first" || !globalThis.crypto?.subtle) return false;
  const bytes = await answer.clone().arrayBuffer();
  const sum = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return !Array.from(sum, (byte) => byte.toString(16).padStart(2, "0")).join("").startsWith(digest);
}

async function compile(name: ModuleName): Promise<WebAssembly.Module> {
  const inside = document.getElementById(`${name}.wasm.gz`);
  if (inside?.textContent) {
    return WebAssembly.compileStreaming(unpacked(inside.textContent.trim()));
  }
  const answer = await fetch(address(name));
  if (!answer.ok) throw new Error(`${name}.wasm: ${answer.status}`);
  const other = isOtherBuild(name, answer);  // takes its copy before the bytes are gone
  const module = answer.headers.get("content-type")?.startsWith("application/wasm")
    ? WebAssembly.compileStreaming(answer)
    : answer.arrayBuffer().then((bytes) => WebAssembly.compile(bytes));
  module.catch(() => {});
  if (await other) throw new OtherBuild(`${name}.wasm is of another build`);
  return module;
}

function unpacked(base64: string): Response {
  const packed = Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));
  const stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"));
  return new Response(stream, { headers: { "content-type": "application/wasm" } });
}
