// The answer as people use it: workings in place, another scheme looked at, prices and readings.

import assert from "node:assert/strict";
import { test } from "node:test";
import { answered, axe, openPage, picture, sizes } from "./harness.mjs";
import { alone, browser, withPageAlone } from "./page_alone.mjs";

withPageAlone();

const rowOf = (page, words) => page.locator(".bar-row", { hasText: words });

test("a bar opens its working in place, by keyboard too, with figures put in and their sources",
    async () => {
        const page = await openPage(browser, alone.url);
        const row = rowOf(page, "Device against what the cable carries");
        await row.locator("button.opens").focus();
        await page.keyboard.press("Enter");
        const working = row.locator(".working");
        await working.waitFor();
        assert.match(await working.textContent(), /32\u00a0A \/ 67\.45\u00a0A/);
        await working.locator("summary").click();
        assert.match(await working.textContent(), /Table 4E4A|published/);
        assert.equal(await row.locator("button.opens").getAttribute("aria-expanded"), "true");
        await page.keyboard.press("Escape");
        assert.deepEqual(page.wrong, []);
    });

test("a touch on the plot looks at that scheme, and everything shows it", async () => {
    const page = await openPage(browser, alone.url, { size: "desk" });
    const before = await page.textContent(".price-line");
    const spot = page.locator(".plot .label").last();
    const at = await page.evaluate(() => {
        const box = document.querySelector(".plot svg").getBoundingClientRect();
        const mark = [...document.querySelectorAll(".plot .spot")].at(-1).getBoundingClientRect();
        return { x: mark.x + mark.width / 2 - box.x, y: mark.y + mark.height / 2 - box.y };
    });
    assert.ok(await spot.count());
    await page.locator(".plot svg").click({ position: at });
    await page.waitForSelector(".looking");
    assert.notEqual(await page.textContent(".price-line"), before);
    assert.match(await page.textContent(".looking"), /Recommended is scheme 1: £2,276/);
    assert.match(await page.textContent(".price-line"), /was about £2,276/);
    await page.click("text=Back to the recommended");
    await page.waitForSelector(".looking", { state: "detached" });
    assert.match(await page.textContent(".price-line"), /about £2,276/);
});

test("the list beside the plot does the same by keyboard", async () => {
    const page = await openPage(browser, alone.url);
    await page.locator(".scheme-list summary").focus();
    await page.keyboard.press("Enter");
    for (let i = 0; i < 3; ++i) await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await page.waitForSelector(".looking");
    assert.match(await page.textContent(".looking"), /scheme 3 of/);
    const pressed = page.locator(".scheme-row[aria-pressed=true] .scheme-rank");
    assert.equal(await pressed.textContent(), "3");
});

test("a changed fact leaves the old figure in sight beside the new", async () => {
    const page = await openPage(browser, alone.url);
    await page.evaluate(() => globalThis.toft.set("/runs/0/legs/1/length_m", 60, "Length"));
    await page.waitForSelector(".price-line .was");
    assert.match(await page.textContent(".price-line"), /was about £2,276/);
});

for (const size of Object.keys(sizes)) {
    for (const theme of ["light", "dark"]) {
        test(`all of it opened, ${size}, ${theme}: nothing for axe, nothing cut off`, async () => {
            const page = await openPage(browser, alone.url, { size, theme });
            await page.evaluate(() => {
                for (const one of document.querySelectorAll(".answer details")) one.open = true;
            });
            await page.click("text=Single-line diagram");
            await page.waitForSelector(".picture-place img");
            await page.click(".bars > .plain");
            await rowOf(page, "Voltage lost along the run").locator("button.opens").click();
            await page.waitForSelector(".working");
            await page.waitForSelector(".walk");
            assert.deepEqual(await axe(page), []);
            const widths = await page.evaluate(() =>
                [document.documentElement.scrollWidth, innerWidth]);
            assert.ok(widths[0] <= widths[1], `${widths}`);
            const small = await page.evaluate(() => [...document.querySelectorAll(
                ".answer button, .answer summary, .answer a")].filter((e) => {
                const { width, height } = e.getBoundingClientRect();
                return width > 0 && (width < 44 || height < 44);
            }).map((e) => e.textContent));
            assert.deepEqual(small, []);
            await picture(page, `answer-${size}-${theme}`);
            assert.deepEqual(page.wrong, []);
        });
    }
}

test("a price changed in place is used at once; what is none is shown, not used", async () => {
    const page = await openPage(browser, `${alone.url}#/prices`);
    const price = () => page.evaluate(() => globalThis.toft.first.value.chosen.price.total);
    const before = await price();
    await page.fill(".find input", "cable 3x10");
    const field = page.locator(".price-row", { hasText: /^cable 3x10/ }).locator("input").first();
    await field.fill("9.90");
    await field.press("Enter");
    await page.waitForFunction(
        (old) => globalThis.toft.first.value.chosen.price.total !== old, before);
    const own = await price();
    await field.fill("£12");
    await field.press("Enter");
    await page.waitForSelector(".price-fault");
    assert.match(await page.textContent(".price-fault"), /not a price/);
    assert.equal(await price(), own);
    await page.reload();
    await answered(page);
    await page.waitForFunction((p) => globalThis.toft.first.value.chosen.price.total === p, own);
    await page.click("text=Back to the invented book");
    await page.waitForFunction((p) => globalThis.toft.first.value.chosen.price.total === p, before);
    assert.deepEqual(page.wrong, []);
});

test("a reading is kept on the device with its time and author, and is not judged", async () => {
    const page = await openPage(browser, `${alone.url}#/readings`);
    await page.fill(".tester input", "A. Smith");
    await page.locator(".tester input").blur();
    const first = page.locator(".test", { hasText: /^Zs at the board|Zs at the board/ }).first();
    await first.locator("button").click();
    await first.locator(".write-value input").fill("9,9");
    await page.keyboard.press("Enter");
    await first.locator(".kept").waitFor();
    const said = await first.locator(".kept").textContent();
    assert.match(said, /9\.9\u00a0Ω.*A\. Smith/s);
    assert.equal(await first.locator(".verdict").count(), 0);
    await page.reload();
    await answered(page);
    await page.waitForSelector(".kept");
    assert.match(await page.textContent(".kept"), /9\.9/);
    assert.deepEqual(page.wrong, []);
});

test("a paper is looked at as sheets, and printed one sheet a page", async () => {
    const page = await openPage(browser, `${alone.url}#/papers`, { size: "desk" });
    await page.locator(".paper-row", { hasText: "Test sheet" }).click();
    await page.waitForSelector(".sheets img");
    const sheets = await page.locator(".sheets img").count();
    assert.ok(sheets >= 2);
    assert.match(await page.textContent(".sheets"), new RegExp(`page ${sheets} of ${sheets}`));
    await page.waitForFunction(() =>
        [...document.querySelectorAll(".sheets img")].every((img) => img.naturalWidth > 0));
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
    assert.equal(pdf.match(/\/Type\s*\/Page\b/g).length, sheets);
    assert.deepEqual(await axe(page), []);
    assert.deepEqual(page.wrong, []);
});
