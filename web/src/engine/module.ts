// The engine's module without glue: text in, text out.

interface Exports {
  memory: WebAssembly.Memory;
  malloc(size: number): number;
  free(place: number): void;
  _initialize?(): void;
  toft_work(verb: number, verbLength: number, body: number, bodyLength: number): number;
  toft_result_length(): number;
}

export type Work = (verb: string, body: string) => string;

/** It does no input or output: whatever it asks for is refused by name. */
function refusals(module: WebAssembly.Module): WebAssembly.Imports {
  const imports: Record<string, Record<string, () => void>> = {};
  for (const { module: from, name } of WebAssembly.Module.imports(module)) {
    const room = (imports[from] ??= {});
    room[name] = name === "emscripten_notify_memory_growth"
      ? () => {}
      : () => { throw new Error(`the engine called ${from}.${name}`); };
  }
  return imports;
}

const encoder = new TextEncoder();
const decoder = new TextDecoder();

export async function openModule(module: WebAssembly.Module): Promise<Work> {
  const instance = await WebAssembly.instantiate(module, refusals(module));
  const engine = instance.exports as unknown as Exports;
  engine._initialize?.();

  const put = (text: string): [number, number] => {
    const bytes = encoder.encode(text);
    const place = engine.malloc(Math.max(1, bytes.length));
    new Uint8Array(engine.memory.buffer).set(bytes, place);
    return [place, bytes.length];
  };

  return (verb, body) => {
    const [verbAt, verbLength] = put(verb);
    const [bodyAt, bodyLength] = put(body);
    const answer = engine.toft_work(verbAt, verbLength, bodyAt, bodyLength);
    engine.free(verbAt);
    engine.free(bodyAt);
    return decoder.decode(
      new Uint8Array(engine.memory.buffer, answer, engine.toft_result_length()));
  };
}
