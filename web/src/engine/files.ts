// Where the engine's modules come from: files beside the page, or text inside it (a pocket page).

export type ModuleName = "toft-first" | "toft";

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

async function compile(name: ModuleName): Promise<WebAssembly.Module> {
  const inside = document.getElementById(`${name}.wasm.gz`);
  if (inside?.textContent) {
    return WebAssembly.compileStreaming(unpacked(inside.textContent.trim()));
  }
  const answer = await fetch(new URL(`${name}.wasm`, document.baseURI));
  if (!answer.ok) throw new Error(`${name}.wasm: ${answer.status}`);
  if (answer.headers.get("content-type")?.startsWith("application/wasm")) {
    return WebAssembly.compileStreaming(answer);
  }
  return WebAssembly.compile(await answer.arrayBuffer());
}

function unpacked(base64: string): Response {
  const packed = Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));
  const stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"));
  return new Response(stream, { headers: { "content-type": "application/wasm" } });
}
