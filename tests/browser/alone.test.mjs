// The page with nothing behind it: engine and store are in the browser.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import {
    answered, axe, kept, openBrowser, openPage, picture, sentence, servePageAlone,
} from "./harness.mjs";

let browser;
let alone;
before(async () => {
    browser = await openBrowser();
    alone = await servePageAlone();
});
after(async () => {
    await browser?.close();
    await alone?.close();
});

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
    await context.route("**/toft.wasm", (route) => route.abort());
    const page = await openPage(browser, alone.url, { context });
    await page.waitForSelector("[role=alert]");
    assert.match(await page.textContent("[role=alert]"), /could not be loaded/);
    assert.match(await page.textContent(".strip"), /not known/);
    assert.deepEqual(await axe(page), []);
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
