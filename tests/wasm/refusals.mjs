// What every module of the engine refuses, whatever verbs it has.

export function must(holds, what) {
    if (holds) return;
    console.error(`wasm: ${what}`);
    process.exit(1);
}

/** Faults of an answer, each as its place and its code. */
export function faultsOf(answer) {
    const { format, faults } = JSON.parse(answer);
    return format === "toft-faults/1" ? faults.map((f) => `${f.pointer} ${f.code}`).join() : "none";
}

/** What is no job, no verb or hostile; afterwards the job has the answer that it had before. */
export function refuses(engine, job) {
    const before = engine.work("first", { job });
    const faults = (verb, body) => faultsOf(engine.work(verb, body));
    must(faults("first", "{") === " not-json", "half a body");
    must(faults("first", "[1]") === " wrong-kind", "a list");
    must(faults("first", "[".repeat(5000)) === " too-deep", "a deep one");
    must(faults("first", " ".repeat(5 << 20)) === " too-large", "a large one");
    must(faults("first", {}) === "/job missing", "no job");
    must(faults("frist", { job }) === " unknown-verb", "no verb");
    must(faults("", "") === " unknown-verb", "nothing");
    must(faults("check", { job: { ...job, odd: 1 } }) === "/odd unknown-key", "an odd key");
    const bytes = engine.workBytes(Buffer.from([0xff, 0, 0xfe]), Buffer.from([0xff, 0]));
    must(faultsOf(bytes) === " unknown-verb", "bytes that are no text");
    must(engine.work("check", { job }) === "{}\n", "a job without faults");
    must(JSON.parse(engine.work("about", {})).program === "toft", "what it is");
    must(engine.work("first", { job }) === before, "the same job, another answer");
}
