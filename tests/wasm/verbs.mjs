// node verbs.mjs TOFT.wasm OUT JOB.json…
// Designs each job with the module and writes OUT/<job>.answer.json and OUT/<job>.first.json; then
// what is no job, no verb or hostile must be refused, after which the module must give the same
// answer as before, byte for byte.

import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { load } from "./engine.mjs";
import { must, refuses } from "./refusals.mjs";

const [wasm, out, ...files] = process.argv.slice(2);
must(files.length > 0, "node verbs.mjs TOFT.wasm OUT JOB.json…");
const engine = await load(wasm);
mkdirSync(out, { recursive: true });

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
refuses(engine, job);
must(
  JSON.parse(engine.work("prices", { prices: "item\n" })).format === "toft-faults/1",
  "no price book",
);
