// The page with nothing behind it: engine and store are in the browser.

import assert from "node:assert/strict";
import { appendFileSync, cpSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { test } from "node:test";
import {
    answered, axe, kept, openPage, picture, problem, root, sentence, servePageAlone,
} from "./harness.mjs";
import { alone, browser, withPageAlone } from "./page_alone.mjs";

withPageAlone();

const places = ["survey", "readings", "papers", "prices", "history", "jobs", "pair", "clash"];

test("it opens with the demo job and says how to feed it", async () => {
    const page = await openPage(browser, alone.url);
    assert.match(await sentence(page), /^Feed it with 3-core 10 mm² armoured cable/);
    assert.match(await page.textContent(".strip"), /3-core 10 mm²/);
    await kept(page, "offline");
    assert.deepEqual(page.wrong, []);
});

test("the example says that it is one, and a job of one's own is a touch away", async () => {
    const page = await openPage(browser, alone.url);
    await page.locator(".example", { hasText: "an example" }).waitFor();
    await page.locator(".example button").click();
    await page.waitForFunction(() => globalThis.toft.job.value?.title === "A new job");
    assert.equal(await page.locator(".example").count(), 0);
    await page.waitForTimeout(1200);
    assert.doesNotMatch(await page.textContent(".foot [aria-live]"), /The answer now/);
});

test("a changed fact shows a new answer, and undo the old one", async () => {
    const page = await openPage(browser, alone.url, { size: "desk" });
    const before = await page.evaluate(() => globalThis.toft.first.value.schemes[0].price.total);
    await page.evaluate(() => globalThis.toft.set("/runs/0/legs/1/length_m", 60, "Length"));
    await page.waitForFunction((price) =>
        globalThis.toft.first.value?.schemes[0]?.price.total > price, before);
    await page.keyboard.press("Control+z");
    await page.waitForFunction((price) =>
        globalThis.toft.first.value?.schemes[0]?.price.total === price, before);
    await page.keyboard.press("Control+Shift+z");
    await page.waitForFunction((price) =>
        globalThis.toft.first.value?.schemes[0]?.price.total > price, before);
    assert.deepEqual(page.wrong, []);
});

test("what was changed is there after the page was left, and so are the steps back", async () => {
    const page = await openPage(browser, alone.url);
    await page.fill(".title", "Kept on the device");
    await page.waitForFunction(() => globalThis.toft.sync.value === "saving");
    await kept(page, "offline");
    await page.reload();
    await answered(page);
    assert.equal(await page.inputValue(".title"), "Kept on the device");
    await page.waitForFunction(() => globalThis.toft.canUndo.value);
    await page.click("text=Undo");
    await page.waitForFunction(() =>
        document.querySelector(".title").value !== "Kept on the device");
});

test("a device without room says that nothing is kept, and keeps it later", async () => {
    const page = await openPage(browser, alone.url);
    await kept(page, "offline");
    await page.evaluate(() => {
        const { put } = IDBObjectStore.prototype;
        globalThis.makeRoom = () => { IDBObjectStore.prototype.put = put; };
        IDBObjectStore.prototype.put = () => {
            throw new DOMException("full", "QuotaExceededError");
        };
        globalThis.toft.set("/intake/ze_ohm", 0.27, "Ze");
    });
    await kept(page, "unkept");
    assert.match(await page.textContent(".head"), /not kept/);
    await page.evaluate(() => {
        globalThis.makeRoom();
        globalThis.toft.set("/intake/tails_m", 4, "Tails");
    });
    await kept(page, "offline");
    await page.reload();
    await answered(page);
    assert.deepEqual(await page.evaluate(() => {
        const { ze_ohm: ze, tails_m: tails } = globalThis.toft.job.value.intake;
        return [ze, tails];
    }), [0.27, 4]);
    assert.deepEqual(page.wrong, []);
});

test("it opens and answers without any network", async () => {
    const page = await openPage(browser, alone.url);
    await page.evaluate(() => navigator.serviceWorker.ready);
    await page.context().setOffline(true);
    await page.reload();
    await answered(page);
    assert.match(await sentence(page), /^Feed it with/);
    await page.evaluate(() => globalThis.toft.set("/intake/ze_ohm", 0.35, "Ze"));
    await kept(page, "offline");
    await page.context().setOffline(false);
});

test("two pages of one browser show the same job", async () => {
    const page = await openPage(browser, alone.url);
    await kept(page, "offline");
    const other = await openPage(browser, alone.url, { context: page.context() });
    await page.evaluate(() => globalThis.toft.set("/intake/tails_m", 3, "Tails"));
    await other.waitForFunction(() => globalThis.toft.job.value.intake.tails_m === 3);
    await other.evaluate(() => globalThis.toft.set("/intake/demand_a", 20, "Demand"));
    await page.waitForFunction(() => globalThis.toft.job.value.intake.demand_a === 20);
    assert.equal(await page.evaluate(() => globalThis.toft.job.value.intake.tails_m), 3);
});

test("where the engine does not come nothing is shown as sound", async () => {
    const context = await browser.newContext({ serviceWorkers: "block" });
    await context.route("**/*.wasm*", (route) => route.abort());
    const page = await openPage(browser, alone.url, { context });
    await page.waitForSelector("[role=alert]");
    assert.match(await page.textContent("[role=alert]"), /could not be loaded/);
    assert.match(await page.textContent(".strip"), /not known/);
    assert.deepEqual(await axe(page), []);
});

test("where the engine breaks off, what it said before is called not known", async () => {
    const context = await browser.newContext();
    await context.addInitScript(() => {
        const post = Worker.prototype.postMessage;
        Worker.prototype.postMessage = function send(message) {
            if (!globalThis.breaksOff || !message.verb) return post.call(this, message);
            const data = { id: message.id, failed: "unreachable" };
            queueMicrotask(() => this.onmessage({ data }));
        };
    });
    const page = await openPage(browser, alone.url, { context });
    assert.match(await page.textContent(".headline"), /Meets every rule judged here/);
    await page.evaluate(() => {
        globalThis.breaksOff = true;
        globalThis.toft.set("/runs/0/legs/1/length_m", 90, "Length");
    });
    await page.waitForSelector("[role=alert]");
    assert.match(await page.textContent(".notices"), /broke off/);
    assert.equal(await page.locator(".headline").count(), 0, "the answer of before is put away");
    await page.click(".is-past > summary");
    await page.waitForSelector(".headline .status");
    assert.doesNotMatch(await page.textContent(".answer"), /Meets every rule/);
    assert.match(await page.textContent(".headline .status"), /Not known/);
    assert.match(await page.textContent(".strip"), /not known/);
    assert.deepEqual(await axe(page), []);
    await page.evaluate(() => {
        globalThis.breaksOff = false;
        globalThis.toft.set("/runs/0/legs/1/length_m", 10, "Length");
    });
    await page.waitForSelector(".notices [role=alert]", { state: "detached" });
    assert.match(await page.textContent(".headline"), /Meets every rule judged here/);
});

test("a job that does not hold together never stands under another job's verdict", async () => {
    const page = await openPage(browser, alone.url);
    const shown = await page.evaluate(async () => {
        const bench = globalThis.toft;
        const sound = bench.jobId.value;
        const broken = await bench.demoJob();
        broken.runs[0].to = "nowhere";
        const faulty = await bench.newJob(broken);
        await bench.openJob(sound);
        bench.choose(null);
        void bench.openJob(faulty);
        await new Promise((done) => setTimeout(done, 2500));
        return { open: bench.jobId.value === faulty, answer: bench.first.value,
            faults: bench.faults.value.length };
    });
    assert.equal(shown.open, true);
    assert.equal(shown.answer, null);
    assert.ok(shown.faults > 0);
});

/** Answers of a program as far as a test needs them; the rest of /api is unknown to it. */
async function asProgram(context, answers) {
    await context.route("**/api/**", (route) => {
        const { pathname } = new URL(route.request().url());
        const told = answers[`${route.request().method()} ${pathname}`];
        if (told === undefined) {
            return route.fulfill(problem(404, "not here"));
        }
        const [body, contentType = "application/json"] = [told].flat();
        if (body === null) return route.fulfill({ status: 204 });
        const text = typeof body === "string" ? body : JSON.stringify(body);
        return route.fulfill({ body: text, contentType });
    });
}
const program = { program: "toft", version: "0", edition: "another", data_version: "0", by: "" };

test("a page of another edition than the program says so", async () => {
    const context = await browser.newContext({ serviceWorkers: "block" });
    await asProgram(context, { "GET /api/about": { ...program, lan: false, paired: true } });
    const page = await openPage(browser, alone.url, { context });
    await page.waitForSelector("text=of another edition than this page by now");
    assert.deepEqual(await axe(page), []);
    await page.click("text=Fetch the page anew");
    await answered(page);
});

test("a page that another build has taken the place of says so", async () => {
    const folder = mkdtempSync(join(tmpdir(), "toft-dist-"));
    cpSync(join(root, "web/dist"), folder, { recursive: true });
    const renewed = await servePageAlone(folder);
    const page = await openPage(browser, renewed.url);
    await page.evaluate(() => navigator.serviceWorker.ready);
    await page.reload();
    await answered(page);
    await page.waitForTimeout(500);
    assert.doesNotMatch(await page.textContent(".notices"), /another edition/);
    appendFileSync(join(folder, "sw.js"), "\n// another build\n");
    await page.evaluate(async () => (await navigator.serviceWorker.getRegistration()).update());
    await page.waitForSelector("text=of another edition than this page by now");
    await page.close();
    await renewed.close();
    rmSync(folder, { recursive: true });
});

test("the machine itself shows how devices join, and puts them out again", async () => {
    const context = await browser.newContext({ serviceWorkers: "block" });
    const answers = {
        "GET /api/about": { ...program, lan: true, paired: true },
        "GET /api/pair": { address: "http://192.0.2.7:8377/", addresses: [], code: "ABCD2345",
            seconds_left: 840 },
        "GET /api/pair/picture": ["<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'/>",
            "image/svg+xml"],
        "GET /api/pair/devices": {
            devices: [{ device: "7", name: "Phone", at: "2026-11-29T10:00:00Z" }],
        },
        "DELETE /api/pair/devices/7": null,
        "POST /api/pair/renew": { address: "", addresses: [], code: "EFGH6789", seconds_left: 900 },
    };
    await asProgram(context, answers);
    const page = await openPage(browser, alone.url, { context });
    await page.goto(`${alone.url}#/jobs`);
    await page.waitForSelector("text=ABCD2345");
    await page.waitForFunction(() => document.querySelector(".pairing img")?.naturalWidth > 0);
    await picture(page, "devices-phone-light");
    assert.deepEqual(await axe(page), []);
    answers["GET /api/pair/devices"] = { devices: [] };
    await page.click("[aria-label^='Forget Phone']");
    await page.waitForSelector("text=No other device has joined.");
    answers["GET /api/pair"] = { ...answers["GET /api/pair"], code: "EFGH6789", seconds_left: 900 };
    await page.click("text=Show a new code");
    await page.waitForSelector("text=EFGH6789");
});

test("a device that only joined is shown no code", async () => {
    const context = await browser.newContext({ serviceWorkers: "block" });
    await asProgram(context, { "GET /api/about": { ...program, lan: true, paired: true } });
    const page = await openPage(browser, alone.url, { context });
    await page.goto(`${alone.url}#/jobs`);
    await page.waitForSelector(".job-list");
    await page.waitForTimeout(500);
    assert.equal(await page.locator(".pairing").count(), 0);
});

for (const size of ["phone", "desk"]) {
    for (const theme of ["light", "dark"]) {
        test(`every place holds to the rules of access: ${size}, ${theme}`, async () => {
            const page = await openPage(browser, alone.url, { size, theme });
            for (const place of places) {
                await page.goto(`${alone.url}#/${place}`);
                await page.waitForTimeout(300);
                await picture(page, `${place}-${size}-${theme}`);
                assert.deepEqual(await axe(page), [], place);
                const wide = await page.evaluate(() =>
                    document.documentElement.scrollWidth - document.documentElement.clientWidth);
                assert.ok(wide <= 0, `${place} is ${wide} px too wide`);
            }
            assert.deepEqual(page.wrong, []);
        });
    }
}

test("the keyboard alone reaches everything that a finger does", async () => {
    const page = await openPage(browser, alone.url, { size: "desk" });
    await page.keyboard.press("Tab");
    assert.equal(await page.evaluate(() => document.activeElement.className), "skip");
    await page.keyboard.press("Enter");
    assert.equal(await page.evaluate(() => document.activeElement.id), "work");
    await page.keyboard.press("6");
    await page.waitForSelector(".job-list");
    assert.equal(await page.evaluate(() => document.activeElement.id), "work");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await page.waitForFunction(() => globalThis.toft.job.value?.title === "A new job");
    await page.keyboard.press("?");
    await page.waitForSelector("dialog[open]");
    await picture(page, "keys-desk-light");
    assert.deepEqual(await axe(page), []);
    await page.keyboard.press("Escape");
    await page.waitForSelector("dialog[open]", { state: "detached" });
});

test("how long from a changed fact to the painted answer", async () => {
    const page = await openPage(browser, alone.url);
    await page.waitForTimeout(3000);
    const times = await page.evaluate(async () => {
        const bench = globalThis.toft;
        const painted = () => new Promise((done) => {
            requestAnimationFrame(() => {
                const { port1, port2 } = new MessageChannel();
                port1.onmessage = done;
                port2.postMessage(0);
            });
        });
        const all = [];
        for (let i = 0; i < 60; i += 1) {
            const begun = performance.now();
            const before = bench.first.value;
            bench.set("/runs/0/legs/1/length_m", 15 + i, "Length");
            await new Promise((done) => {
                const stop = bench.first.subscribe((now) => {
                    if (now !== before) queueMicrotask(() => { stop(); done(); });
                });
            });
            await painted();
            all.push(performance.now() - begun);
            await new Promise((done) => setTimeout(done, 30));
        }
        return all.sort((a, b) => a - b);
    });
    const [median, p95] = [times[29], times[56]];
    console.log(`painted after a change: median ${median.toFixed(1)} ms, p95 ${p95.toFixed(1)} ms`);
    assert.ok(median < 2000, "far from at once");
});
