// What the page says of an answer beyond its figures: what is not judged, which scheme, on paper.

import assert from "node:assert/strict";
import { test } from "node:test";
import { axe, openPage } from "./harness.mjs";
import { alone, browser, withPageAlone } from "./page_alone.mjs";

withPageAlone();

test("circuits without a length are asked for where they are said not to be judged", async () => {
    const page = await openPage(browser, alone.url, { size: "desk" });
    await page.evaluate(() => globalThis.toft.change("no lengths", (whole) => {
        for (const circuit of whole.buildings[1].circuits) delete circuit.length_m;
    }));
    await page.locator(".unjudged", { hasText: "Sockets" }).waitFor({ timeout: 30_000 });
    await page.locator(".status", { hasText: "rules are not judged" }).waitFor();
    await page.locator(".strip", { hasText: "not known" }).waitFor({ state: "attached" });
    await page.locator(".unjudged button").click();
    await page.locator(".question", { hasText: "Cable to its last point" }).waitFor();
    assert.match(await page.textContent(".question"), /Sockets/);
    assert.deepEqual(await axe(page), []);
    await page.getByLabel("Your answer", { exact: false }).first().fill("9");
    await page.keyboard.press("Enter");
    await page.waitForFunction(() => globalThis.toft.job.value.buildings[1].circuits[0].length_m);
    assert.deepEqual(page.wrong, []);
});

test("a scheme chosen from the list is shown at the head of the answer", async () => {
    const page = await openPage(browser, alone.url);
    const list = page.locator(".scheme-list");
    await list.evaluate((details) => { details.open = true; });
    await list.locator(".scheme-row").nth(4).click();
    await page.locator(".looking", { hasText: "scheme 5" }).waitFor();
    await page.waitForFunction(() => {
        const { top } = document.querySelector("#answer-title").getBoundingClientRect();
        return top > -20 && top < innerHeight / 2;
    });
});

test("a printed survey says its job, day and state, and leaves out what is for hands", async () => {
    const page = await openPage(browser, alone.url, { size: "desk" });
    await page.emulateMedia({ media: "print" });
    assert.match(await page.textContent(".on-paper"), /Potter's studio.*Printed \d+ \w+ \d{4}/);
    assert.ok(await page.locator(".on-paper").isVisible());
    const away = [
        ".window", ".views", ".put", ".survey-questions", ".beside", ".strip", ".example",
    ];
    for (const part of away) {
        assert.equal(await page.locator(part).first().isVisible(), false, part);
    }
    const top = async (what) => (await page.locator(what).boundingBox()).y;
    assert.ok(await top(".plan") < await top("#answer-title"));
    assert.ok(await page.locator(".circuits .opened-list summary").first().isVisible());
});
