// A phone on the same network: plain http under another name, where a browser keeps no page and
// gives no secure context; it joins by the code that the program shows.

import assert from "node:assert/strict";
import { networkInterfaces } from "node:os";
import { after, before, test } from "node:test";
import { answered, axe, kept, openBrowser, openPage, picture, sentence, serveProgram, sizes }
    from "./harness.mjs";

const address = Object.values(networkInterfaces()).flat()
    .find(({ family, internal }) => family === "IPv4" && !internal)?.address;
const skip = address ? false : "this machine is on no network";

let browser;
let served;
before(async () => {
    browser = await openBrowser();
    if (!skip) served = await serveProgram(["--lan"]);
});
after(async () => {
    await browser?.close();
    await served?.close();
});

test("a phone joins by the code and works over plain http", { skip }, async () => {
    const context = await browser.newContext({ viewport: sizes.phone });
    const page = await context.newPage();
    await page.goto(`http://${address}:${served.port}/`);
    assert.equal(await page.evaluate(() => isSecureContext), false);
    const [, code] = served.said.match(/\b([A-Z0-9]{4}[- ]?[A-Z0-9]{4})\b/);
    await page.fill("#code", code);
    await page.click("button");
    await answered(page);
    assert.match(await sentence(page), /^Feed it with 3-core 10 mm² armoured cable/);
    await kept(page, "saved");
    const id = await page.evaluate(() => globalThis.toft.newJob());
    assert.match(id, /^[0-9a-f-]{36}$/);
    await kept(page, "saved");
    await picture(page, "network-phone-light");
});

test("the machine shows the code and the devices, and forgets them", { skip }, async () => {
    const page = await openPage(browser, `${served.url}#/jobs`, { size: "desk" });
    await page.waitForSelector(".pairing-code");
    const { code } = await (await fetch(`http://localhost:${served.port}/api/pair`)).json();
    assert.equal(await page.textContent(".pairing-code"), code);
    await page.waitForFunction(() => document.querySelector(".pairing img")?.naturalWidth > 0);
    await picture(page, "network-devices-desk");
    assert.deepEqual(await axe(page), []);
    await page.click("text=Show a new code");
    await page.waitForFunction((old) =>
        document.querySelector(".pairing-code").textContent !== old, code);
    await page.locator("[aria-label^='Forget ']").first().click();
    await page.waitForSelector("text=No other device has joined.");
    const there = await fetch(`http://localhost:${served.port}/api/pair/devices`);
    assert.deepEqual((await there.json()).devices, []);
});
