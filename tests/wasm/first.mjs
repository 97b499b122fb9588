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
    must(first.work("check", { job }) === whole.work("check", { job }), `${name}: faults`);
}
must(first.work("about", {}) === whole.work("about", {}), "another engine than the whole");
let seed = 1066;
const below = (n) => (seed = (seed * 48271) % 2147483647) % n;
/** The job with a few of its facts taken out, or made another figure. */
function changed(job) {
    const copy = structuredClone(job);
    for (let i = 0; i <= below(4); ++i) {
        let at = copy;
        for (;;) {
            const keys = Object.keys(at);
            const key = keys[below(keys.length)];
            if (key === undefined) break;
            if (typeof at[key] === "object" && at[key] !== null) {
                at = at[key];
                continue;
            }
            if (typeof at[key] === "number" && below(2)) at[key] *= 0.5 + below(100) / 50;
            else if (!Array.isArray(at)) delete at[key];
            break;
        }
    }
    return copy;
}
let same = 0;
for (let i = 0; i < 60; ++i) {
    const [name, job] = jobs[below(jobs.length)];
    const body = { job: changed(job) };
    const answer = first.work("first", body);
    if (faultsOf(answer) === " elsewhere") continue;
    must(answer === whole.work("first", body), `${name}, changed: ${JSON.stringify(body)}`);
    if (faultsOf(answer) === "none") ++same;
}
must(same > 5, "changed jobs that are answered");
must(answered > 0 && sent > 0, "jobs of both kinds");
for (const verb of ["design", "ask", "levers", "explain", "why", "picture", "paper", "readings"]) {
    must(faultsOf(first.work(verb, { job: jobs[0][1] })) === " unknown-verb", `${verb} is here`);
}
refuses(first, jobs[0][1]);
console.log(
    `toft-first.wasm: ${answered} jobs answered, ${same} changed ones, ${sent} sent to the whole`,
);
