// node design_example.mjs TOFT.wasm JOB.json ANSWER.json
// Loads the module as it stands, without glue, designs the job with it and writes the answer. Also
// hands it what is no job, after which it must give the same answer, byte for byte but for the
// milliseconds.

import { readFileSync, writeFileSync } from "node:fs";

function fail(message) {
    console.error(`design_example: ${message}`);
    process.exit(1);
}

/// A module that does no input or output asks for little; whatever it asks for is refused by name.
function refusals(module) {
    const imports = {};
    for (const { module: from, name, kind } of WebAssembly.Module.imports(module)) {
        if (kind !== "function") fail(`it imports ${from}.${name}, which is no function`);
        imports[from] ??= {};
        imports[from][name] = name === "emscripten_notify_memory_growth"
            ? () => {}
            : () => fail(`it called ${from}.${name}`);
    }
    return imports;
}

async function load(file) {
    const module = await WebAssembly.compile(readFileSync(file));
    const { exports } = await WebAssembly.instantiate(module, refusals(module));
    exports._initialize?.();
    return exports;
}

function design(engine, job) {
    const bytes = Buffer.from(job);
    const place = engine.malloc(bytes.length);
    new Uint8Array(engine.memory.buffer).set(bytes, place);
    const text = engine.toft_design(place, bytes.length, 0);
    engine.free(place);
    const answer = Buffer.from(engine.memory.buffer, text, engine.toft_result_length());
    if (new Uint8Array(engine.memory.buffer)[text + answer.length] !== 0) fail("no zero byte");
    return answer.toString();
}

function timeless(text) {
    return text.replace(/"milliseconds": [0-9.e+-]+/, '"milliseconds": 0');
}

function compare(again, first) {
    const a = again.split("\n");
    const b = first.split("\n");
    const line = a.findIndex((text, i) => text !== b[i]);
    if (line >= 0 || a.length !== b.length) {
        fail(`line ${line + 1} differs\n  first: ${b[line]}\n  again: ${a[line]}`);
    }
}

const [wasm, jobFile, answerFile] = process.argv.slice(2);
if (!answerFile) fail("node design_example.mjs TOFT.wasm JOB.json ANSWER.json");
const engine = await load(wasm);
const job = readFileSync(jobFile, "utf8");
const answer = design(engine, job);
writeFileSync(answerFile, answer);

const faults = JSON.parse(design(engine, '{"format": "toft-job/1"'));
if (faults.format !== "toft-faults/1" || faults.faults[0]?.code !== "not-json") {
    fail(`what is no job gave ${JSON.stringify(faults)}`);
}
const refused = JSON.parse(design(engine, "[1]"));
if (refused.faults[0]?.code !== "wrong-kind") fail("a list was not refused");
compare(timeless(design(engine, job)), timeless(answer));
