// node first.mjs TOFT-FIRST.wasm TOFT.wasm JOB.json…
// The module of the first visit answers with the whole one's bytes, or sends to it: jobs of several
// runs, and those of which soil or electrode was read and so changes with the season. What it must
// answer itself and what not is told by the job.

import { readFileSync } from "node:fs";
import { basename } from "node:path";
import { load } from "./engine.mjs";
import { faultsOf, must, refuses } from "./refusals.mjs";

const [small, large, ...files] = process.argv.slice(2);
must(files.length > 0, "node first.mjs TOFT-FIRST.wasm TOFT.wasm JOB.json…");
const first = await load(small);
const whole = await load(large);

const jobs = files.map((file) => [basename(file), JSON.parse(readFileSync(file, "utf8"))]);
const wasRead = ({ ground, buildings }) =>
    /measured|wenner|layers/.test(JSON.stringify([ground, buildings.map((b) => b.electrode)]));
let answered = 0;
let sent = 0;
for (const [name, job] of jobs) {
    const answer = first.work("first", { job });
    if (faultsOf(answer) === " elsewhere") {
        must(job.runs.length > 1 || wasRead(job), `${name}: sent elsewhere for nothing`);
        ++sent;
    } else {
        must(job.runs.length === 1, `${name}: worked out without the runs beside it`);
        must(answer === whole.work("first", { job }), `${name}: another answer than the whole's`);
        ++answered;
    }
    must(first.work("check", { job }) === whole.work("check", { job }), `${name}: other faults`);
}
must(answered > 0 && sent > 0, "jobs of both kinds");
for (const verb of ["design", "ask", "levers", "explain", "why", "picture", "paper", "readings"]) {
    must(faultsOf(first.work(verb, { job: jobs[0][1] })) === " unknown-verb", `${verb} is here`);
}
refuses(first, jobs[0][1]);
console.log(`toft-first.wasm: ${answered} jobs answered, ${sent} sent to the whole engine`);
