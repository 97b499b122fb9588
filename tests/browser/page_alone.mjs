// For all tests of a file: a browser, and the page served without a program.

import { after, before } from "node:test";
import { openBrowser, servePageAlone } from "./harness.mjs";

export let browser;
export let alone;

/** Opens both before the first test of the file and closes them after the last. */
export function withPageAlone() {
    before(async () => {
        browser = await openBrowser();
        alone = await servePageAlone();
    });
    after(async () => {
        await browser?.close();
        await alone?.close();
    });
}
