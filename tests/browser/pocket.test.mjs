// The page as one file: page, engine and job inside, opened from the disk.

import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { answered, axe, kept, openBrowser, openPage, picture, program, root, sentence }
    from "./harness.mjs";

let browser;
let folder;
let url;
before(async () => {
    browser = await openBrowser();
    folder = mkdtempSync(join(tmpdir(), "toft-pocket-"));
    const file = join(folder, "demo.html");
    execFileSync(program, ["pocket", join(root, "examples/demo.json"), "-o", file]);
    url = `file://${file}`;
});
after(async () => {
    await browser?.close();
    rmSync(folder, { recursive: true, force: true });
});

test("it answers, from the disk, without asking anybody", async () => {
    const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
    const asked = [];
    context.on("request", (request) => asked.push(request.url()));
    const page = await openPage(browser, url, { context });
    assert.match(await sentence(page), /^Feed it with 3-core 10 mm² armoured cable/);
    await kept(page, "offline");
    assert.deepEqual(asked.filter((address) => !/^(file|blob|data):/.test(address)), []);
    assert.deepEqual(await axe(page), []);
    await picture(page, "pocket-phone-light");
    assert.deepEqual(page.wrong, []);
});

test("what is changed in it is there again, and leaves as a job file", async () => {
    const page = await openPage(browser, url);
    await page.fill(".title", "Changed on site");
    await page.waitForFunction(() => globalThis.toft.sync.value === "saving");
    await kept(page, "offline");
    await page.reload();
    await answered(page);
    assert.equal(await page.inputValue(".title"), "Changed on site");
    await page.goto(`${url}#/jobs`);
    const [download] = await Promise.all(
        [page.waitForEvent("download"), page.click("text=Save the job file")]);
    assert.equal(download.suggestedFilename(), "changed-on-site.json");
    const job = JSON.parse(readFileSync(await download.path(), "utf8"));
    assert.deepEqual([job.format, job.title], ["toft-job/1", "Changed on site"]);
});
