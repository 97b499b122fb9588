// The engine comes in two parts: a small module that answers at once, and the whole one after it.

import assert from "node:assert/strict";
import { test } from "node:test";
import { answered, axe, openPage, picture, sentence } from "./harness.mjs";
import { alone, browser, withPageAlone } from "./page_alone.mjs";

withPageAlone();

const whole = "**/toft.wasm?v=*";
const small = "**/toft-first.wasm?v=*";
const restIs = (page, word) =>
    page.waitForFunction((rest) => globalThis.toft.rest.value === rest, word, { timeout: 60_000 });
const leversCome = (page) =>
    page.waitForFunction(() => globalThis.toft.levers.value, undefined, { timeout: 60_000 });
const changeLength = (page, metres) => page.evaluate(async (length) => {
    const bench = globalThis.toft;
    const before = bench.first.value;
    bench.set("/runs/0/legs/1/length_m", length, "Length");
    await new Promise((done) => bench.first.subscribe((now) => { if (now !== before) done(); }));
    return bench.first.value.schemes[0].price.total;
}, metres);

test("the small module answers first; then the whole one takes over from it", async () => {
    const context = await browser.newContext({ serviceWorkers: "block" });
    const asked = [];
    context.on("request", (request) => {
        const [name] = /[a-z-]+\.wasm(?=\?v=[0-9a-f]{16}$)/.exec(request.url()) ?? [];
        if (name) asked.push(name);
    });
    const before = [];
    await context.route(whole, async (route) => {
        const [page] = context.pages();
        before.push(await page.evaluate(() => globalThis.toft.first.value !== null));
        await route.continue();
    });
    const page = await openPage(browser, alone.url, { context });
    assert.match(await sentence(page), /^Feed it with 3-core 10 mm² armoured cable/);
    await leversCome(page);
    assert.deepEqual(asked, ["toft-first.wasm", "toft.wasm"]);
    assert.deepEqual(before, [true], "the answer was there before more was fetched");
    assert.equal(page.workers().length, 2, "one for what follows a touch, one for what takes long");
    assert.ok(await changeLength(page, 60) > 0);
    assert.deepEqual(page.wrong, []);
});

for (const [size, theme] of [["phone", "light"], ["desk", "dark"]]) {
    const title = `without the whole module changes are answered, and what waits is told: ${size}`;
    test(title, async () => {
        const context = await browser.newContext({
            serviceWorkers: "block", colorScheme: theme,
            viewport: size === "phone" ? { width: 360, height: 740 } : { width: 1280, height: 800 },
        });
        await context.route(whole, (route) => route.abort());
        const page = await openPage(browser, alone.url, { context });
        await restIs(page, "away");
        assert.match(await sentence(page), /^Feed it with/);
        assert.ok(await changeLength(page, 60) > await changeLength(page, 20));
        await page.locator(".notices", { hasText: "could not be fetched" }).waitFor();
        await picture(page, `rest-away-${size}-${theme}`);
        assert.deepEqual(await axe(page), []);
        await page.goto(`${alone.url}#/papers`);
        await page.locator("button").filter({ hasText: "Look" }).first().click();
        await page.locator(".preview", { hasText: "Not there yet" }).waitFor();
        await picture(page, `rest-away-papers-${size}-${theme}`);
        await context.unroute(whole);
        await page.click(".notices >> text=Try now");
        await page.waitForSelector("img.page-sheet", { timeout: 60_000 });
        assert.equal(await page.locator(".notices .notice").count(), 0);
        await page.goto(`${alone.url}#/survey`);
        await leversCome(page);
        assert.deepEqual(page.wrong, []);
    });
}

test("while the whole module is on its way, what is opened says so and then comes", async () => {
    const context = await browser.newContext({ serviceWorkers: "block" });
    let letGo;
    const held = new Promise((done) => { letGo = done; });
    await context.route(whole, async (route) => {
        await held;
        await route.continue();
    });
    const page = await openPage(browser, alone.url, { context });
    await page.locator(".expected .opens").first().click();
    await page.locator(".opened", { hasText: "Fetching the rest" }).waitFor();
    assert.ok(await changeLength(page, 33) > 0);
    letGo();
    await page.waitForSelector(".working .line");
    assert.deepEqual(page.wrong, []);
});

test("a network that is back fetches what was missing by itself", async () => {
    const context = await browser.newContext({ serviceWorkers: "block" });
    await context.route(whole, (route) => route.abort());
    const page = await openPage(browser, alone.url, { context });
    await restIs(page, "away");
    await context.unroute(whole);
    await page.evaluate(() => dispatchEvent(new Event("online")));
    await restIs(page, "here");
    await page.waitForFunction(() => globalThis.toft.ask.value, undefined, { timeout: 60_000 });
});

test("where only the small module does not come, the whole one answers", async () => {
    const context = await browser.newContext({ serviceWorkers: "block" });
    await context.route(small, (route) => route.abort());
    const page = await openPage(browser, alone.url, { context });
    assert.match(await sentence(page), /^Feed it with 3-core 10 mm² armoured cable/);
});

test("where the small module lets wait the whole one answers, now and from then on", async () => {
    const context = await browser.newContext({ serviceWorkers: "block" });
    await context.route(small, () => {});  // neither comes nor fails
    const page = await openPage(browser, alone.url, { context });
    assert.match(await sentence(page), /^Feed it with 3-core 10 mm² armoured cable/);
    assert.ok(await changeLength(page, 60) > 0);
    assert.deepEqual(page.wrong, []);
});

test("a whole module of another build is not used, and the page says so", async () => {
    const context = await browser.newContext({ serviceWorkers: "block" });
    await context.route(whole, async (route) => {
        const response = await route.fetch();
        const section = Buffer.from([0, 2, 1, 0x78]);  // one named x, of nothing
        await route.fulfill({ response, body: Buffer.concat([await response.body(), section]) });
    });
    const page = await openPage(browser, alone.url, { context });
    await page.locator(".notices", { hasText: "of another edition" }).waitFor();
    assert.equal(await page.evaluate(() => globalThis.toft.rest.value), "away");
    assert.equal(await page.evaluate(() => globalThis.toft.ask.value), null);
    assert.ok(await changeLength(page, 60) > 0, "what is here goes on answering");
    await context.unroute(whole);
    await page.click("text=Fetch the page anew");
    await leversCome(page);
    assert.equal(await page.locator(".notices .notice").count(), 0);
});

test("a job that needs the whole module is answered once it is here", async () => {
    const context = await browser.newContext({ serviceWorkers: "block" });
    await context.route(whole, (route) => route.abort());
    const page = await openPage(browser, alone.url, { context });
    await restIs(page, "away");
    await page.evaluate(() => globalThis.toft.change("A second run", (job) => {
        job.runs.push({ ...structuredClone(job.runs[0]), id: "second" });
    }));
    await page.waitForFunction(() => globalThis.toft.faults.value[0]?.code === "program-not-whole");
    await context.unroute(whole);
    await page.goto(`${alone.url}#/papers`);
    await page.locator("button").filter({ hasText: "Look" }).first().click();
    await page.waitForFunction(() => globalThis.toft.rest.value === "here"
        && !globalThis.toft.faults.value.some(({ code }) => code === "program-not-whole"),
    undefined, { timeout: 60_000 });
});

test("once both are kept it opens, answers and lays out papers without a network", async () => {
    const page = await openPage(browser, alone.url);
    await page.evaluate(() => navigator.serviceWorker.ready);
    await page.context().setOffline(true);
    await page.reload();
    await answered(page);
    await restIs(page, "here");
    for (const place of ["readings", "prices", "history", "jobs", "papers"]) {
        await page.goto(`${alone.url}#/${place}`);
        await page.waitForSelector("main h1:not(.unseen)");
        const shown = await page.textContent("main");
        assert.doesNotMatch(shown, /\b[a-z]+\.[a-z]+_[a-z_]+\b|could not be/, "words are missing");
    }
    await page.locator("button").filter({ hasText: "Look" }).first().click();
    await page.waitForSelector("img.page-sheet", { timeout: 60_000 });
    await page.context().setOffline(false);
});
