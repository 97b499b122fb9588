// How long from a changed fact to the painted answer, in Chromium, and where the time goes.
//   node bench/page.mjs [--changes N] [--trace FILE] [FOLDER | PROGRAM]
// FOLDER holds a built page (web/dist), PROGRAM is toft itself, which then serves. Run by hand, on
// a machine that does nothing else: it judges nothing. bench/README.md says what the columns are.

import { statSync, writeFileSync } from "node:fs";
import { loadavg } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";

const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: { changes: { type: "string", default: "240" }, trace: { type: "string" } },
});
const changes = Number(values.changes);
const given = positionals[0];
const isProgram = given !== undefined && statSync(given).isFile();
if (isProgram) process.env.TOFT_PROGRAM = given;
const { openBrowser, openPage, root, servePageAlone, serveProgram } =
    await import("../tests/browser/harness.mjs");

/** Notes when a `first` goes to a worker, when its answer comes, and how long the engine took. */
function watchWorkers() {
    globalThis.noted = {};
    const OwnWorker = globalThis.Worker;
    globalThis.Worker = class extends OwnWorker {
        constructor(...how) {
            super(...how);
            this.addEventListener("message", ({ data }) => {  // before the page hears of it
                if (data.id !== this.askedFirst) return;
                Object.assign(globalThis.noted, { came: performance.now(), took: data.took });
            });
        }

        postMessage(message, ...more) {
            if (message?.verb === "first") {
                this.askedFirst = message.id;
                globalThis.noted.sent = performance.now();
            }
            super.postMessage(message, ...more);
        }
    };
}

/** One change after the other, each waited for until it is painted. */
async function measure(count) {
    const bench = globalThis.toft;
    const fact = "/runs/0/legs/1/length_m";
    const rest = (ms) => new Promise((done) => setTimeout(done, ms));
    const nextFirst = (before) => new Promise((done) => {
        const stop = bench.first.subscribe((now) => {
            if (now === before) return;
            queueMicrotask(() => { stop(); done(performance.now()); });
        });
    });
    const frame = () => new Promise((done) => requestAnimationFrame(() => {
        const begun = performance.now();
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => done([begun, performance.now()]);
        port2.postMessage(0);
    }));
    const rows = [];
    for (let i = 0; i < count; i += 1) {
        const begun = performance.now();
        const answered = nextFirst(bench.first.value);
        bench.set(fact, 15 + (i * 7) % 40, "Length");
        const drawn = await answered;
        const [framed, painted] = await frame();
        const { sent, came, took = NaN } = globalThis.noted;
        rows.push({
            asking: sent - begun, engine: took, transfer: came - sent - took,
            render: drawn - came, frame: framed - drawn, paint: painted - framed,
            all: painted - begun,
        });
        await rest(30 + (i * 13) % 17);  // not in step with the screen
    }
    return rows;
}

/** Browser's own account of one stretch, to be opened in its performance panel. */
async function traced(page, file, work) {
    const cdp = await page.context().newCDPSession(page);
    const events = [];
    cdp.on("Tracing.dataCollected", ({ value }) => events.push(...value));
    await cdp.send("Tracing.start", {
        transferMode: "ReportEvents",
        traceConfig: { includedCategories: [
            "devtools.timeline", "blink.user_timing", "disabled-by-default-devtools.timeline",
            "disabled-by-default-v8.cpu_profiler", "v8", "toplevel",
        ] },
    });
    await work();
    const ended = new Promise((done) => cdp.once("Tracing.tracingComplete", done));
    await cdp.send("Tracing.end");
    await ended;
    writeFileSync(file, JSON.stringify({ traceEvents: events }));
}

const folder = isProgram ? undefined : given ?? join(root, "web/dist");
const served = isProgram ? await serveProgram() : await servePageAlone(folder);
const browser = await openBrowser();
try {
    const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
    await context.addInitScript(watchWorkers);
    const page = await openPage(browser, served.url, { context });
    await page.waitForFunction(() => globalThis.toft.levers.value, undefined, { timeout: 60_000 });
    await page.waitForTimeout(1000);
    const cold = await page.evaluate(measure, 5);
    console.log(`after it came to rest: ${cold.map(({ all }) => all.toFixed(0)).join(", ")} ms`);
    for (const [scene, place] of [["at the picture", "#page"], ["at the answer", "#answer"]]) {
        await page.evaluate((at) => document.querySelector(at).scrollIntoView(), place);
        await page.waitForTimeout(800);
        await page.evaluate(measure, 20);
        print(scene, await page.evaluate(measure, changes));
    }
    if (values.trace) await traced(page, values.trace, () => page.evaluate(measure, 40));
} finally {
    await browser.close();
    await served.close();
}

function print(scene, rows) {
    const at = (name, share) => {
        const sorted = rows.map((row) => row[name]).sort((a, b) => a - b);
        return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))].toFixed(1);
    };
    console.log(`${scene}: ${rows.length} changes, load ${loadavg()[0].toFixed(1)}, milliseconds`);
    console.log(["", "median", "p95", "most"].map((word) => word.padStart(9)).join(""));
    for (const name of Object.keys(rows[0])) {
        const figures = [name, at(name, 0.5), at(name, 0.95), at(name, 1)];
        console.log(figures.map((word) => word.padStart(9)).join(""));
    }
}
