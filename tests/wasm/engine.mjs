// Loads a module as it stands, without glue, and calls it: work(verb, body) gives the text of the
// answer.

import { readFileSync } from "node:fs";

/// A module that does no input or output asks for little; whatever it asks for is refused by name.
function refusals(module) {
    const imports = {};
    for (const { module: from, name, kind } of WebAssembly.Module.imports(module)) {
        if (kind !== "function") throw new Error(`it imports ${from}.${name}: no function`);
        imports[from] ??= {};
        imports[from][name] = name === "emscripten_notify_memory_growth"
            ? () => {}
            : () => { throw new Error(`it called ${from}.${name}`); };
    }
    return imports;
}

export async function load(file) {
    const module = await WebAssembly.compile(readFileSync(file));
    const { exports } = await WebAssembly.instantiate(module, refusals(module));
    exports._initialize?.();
    const put = (bytes) => {
        const place = exports.malloc(bytes.length || 1);
        new Uint8Array(exports.memory.buffer).set(bytes, place);
        return place;
    };
    return {
        exports,
        workBytes(verb, body) {
            const places = [put(verb), put(body)];
            const text = exports.toft_work(places[0], verb.length, places[1], body.length);
            places.forEach((place) => exports.free(place));
            const bytes = new Uint8Array(exports.memory.buffer);
            const length = exports.toft_result_length();
            if (bytes[text + length] !== 0) throw new Error("no zero byte ends the result");
            return Buffer.from(bytes.subarray(text, text + length)).toString();
        },
        work(verb, body) {
            const text = typeof body === "string" ? body : JSON.stringify(body);
            return this.workBytes(Buffer.from(verb), Buffer.from(text));
        },
    };
}
