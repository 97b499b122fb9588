// node verbs.mjs TOFT.wasm OUT JOB.json…
// Designs each job with the module and writes OUT/<job>.answer.json and OUT/<job>.first.json; then
// what is no job, no verb or hostile must be refused, after which the module must give the same
// answer as before, byte for byte.

import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { load } from "./engine.mjs";

function must(holds, what) {
    if (holds) return;
    console.error(`verbs: ${what}`);
    process.exit(1);
}

const [wasm, out, ...files] = process.argv.slice(2);
must(files.length > 0, "node verbs.mjs TOFT.wasm OUT JOB.json…");
const engine = await load(wasm);
mkdirSync(out, { recursive: true });
const ask = (verb, body) => JSON.parse(engine.work(verb, body));
const faults = (verb, body) => {
    const answer = ask(verb, body);
    must(answer.format === "toft-faults/1", `${verb} took ${JSON.stringify(body).slice(0, 80)}`);
    return answer.faults.map((fault) => `${fault.pointer} ${fault.code}`).join();
};

for (const file of files) {
    const body = { job: JSON.parse(readFileSync(file, "utf8")) };
    const name = basename(file, ".json");
    const whole = engine.work("design", body);
    const quick = engine.work("first", body);
    writeFileSync(join(out, `${name}.answer.json`), whole);
    writeFileSync(join(out, `${name}.first.json`), quick);
    const answer = JSON.parse(whole);
    const first = JSON.parse(quick);
    must(first.schemes.length === answer.schemes.length, `${name}: another number of schemes`);
    first.schemes.forEach((scheme, i) => {
        for (const key of ["rank", "key", "words", "sentence", "headroom", "governed_by"]) {
            must(scheme[key] === answer.schemes[i][key], `${name}: ${key} of scheme ${i + 1}`);
        }
        must(scheme.price.total === answer.schemes[i].price.total, `${name}: price ${i + 1}`);
    });
    must(first.chosen_key === (answer.schemes[0]?.key ?? null), `${name}: another was chosen`);
}

const job = JSON.parse(readFileSync(files[0], "utf8"));
const before = engine.work("first", { job });
must(faults("first", "{") === " not-json", "half a body");
must(faults("first", "[1]") === " wrong-kind", "a list");
must(faults("first", "[".repeat(5000)) === " too-deep", "a deep one");
must(faults("first", " ".repeat(5 << 20)) === " too-large", "a large one");
must(faults("first", {}) === "/job missing", "no job");
must(faults("frist", { job }) === " unknown-verb", "no verb");
must(faults("", "") === " unknown-verb", "nothing");
must(faults("check", { job: { ...job, odd: 1 } }) === "/odd unknown-key", "an odd key");
must(faults("prices", { prices: "item\n" }) !== "", "no price book");
const bytes = JSON.parse(engine.workBytes(Buffer.from([0xff, 0, 0xfe]), Buffer.from([0xff, 0])));
must(bytes.faults[0].code === "unknown-verb", "bytes that are no text");
must(ask("check", { job }) && ask("about", {}).program === "toft", "what it is");
must(engine.work("first", { job }) === before, "the same job, another answer");
