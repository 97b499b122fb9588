// The page behind the program: every edit at the server, shared, undone there, caught up with.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { answered, axe, kept, openBrowser, openPage, picture, problem, sentence, serveProgram }
    from "./harness.mjs";

let browser;
let served;
before(async () => {
    browser = await openBrowser();
    served = await serveProgram();
});
after(async () => {
    await browser?.close();
    await served?.close();
});

const set = (page, pointer, value) => page.evaluate(
    ([where, what]) => globalThis.toft.set(where, what, where), [pointer, value]);
const get = (page, pointer) =>
    page.evaluate((where) => globalThis.toft.get(where) ?? null, pointer);
const gets = (page, pointer, value) => page.waitForFunction(
    ([where, what]) => globalThis.toft.get(where) === what, [pointer, value]);
const idOf = (page) => page.evaluate(() => globalThis.toft.jobId.value);
const jobs = async () => (await (await fetch(`${served.url}api/jobs`)).json()).jobs;
const atServer = async (id) => (await fetch(`${served.url}api/jobs/${id}`)).json();

async function begin(page) {
    await page.evaluate(async () => globalThis.toft.newJob(await globalThis.toft.demoJob()));
    await answered(page);
    await kept(page, "saved");
    return idOf(page);
}

test("it opens with the demo job, which the server then has", async () => {
    const page = await openPage(browser, served.url);
    assert.match(await sentence(page), /^Feed it with 3-core 10 mm² armoured cable/);
    await kept(page, "saved");
    const id = await idOf(page);
    assert.ok((await jobs()).some((job) => job.id === id));
    assert.deepEqual(page.wrong, []);
});

test("saved means that the server has it", async () => {
    const page = await openPage(browser, served.url);
    const id = await begin(page);
    await set(page, "/intake/ze_ohm", 0.33);
    assert.equal(await page.evaluate(() => globalThis.toft.sync.value), "saving");
    await kept(page, "saved");
    assert.equal((await atServer(id)).job.intake.ze_ohm, 0.33);
});

test("two people who change different facts both see both", async () => {
    const one = await openPage(browser, served.url, { size: "desk" });
    const id = await begin(one);
    const two = await openPage(browser, served.url, { size: "desk" });
    await two.evaluate((job) => globalThis.toft.openJob(job), id);
    await set(one, "/intake/ze_ohm", 0.4);
    await set(two, "/intake/demand_a", 12);
    await gets(one, "/intake/demand_a", 12);
    await gets(two, "/intake/ze_ohm", 0.4);
    await kept(one, "saved");
    await kept(two, "saved");
    const { job } = await atServer(id);
    assert.deepEqual([job.intake.ze_ohm, job.intake.demand_a], [0.4, 12]);
});

test("two people who change one fact choose, and the history keeps both", async () => {
    const one = await openPage(browser, served.url);
    const id = await begin(one);
    const two = await openPage(browser, served.url, { size: "desk" });
    await two.evaluate((job) => globalThis.toft.openJob(job), id);
    await kept(two, "saved");
    await Promise.all([set(one, "/intake/tails_m", 3), set(two, "/intake/tails_m", 4)]);
    await Promise.race([kept(one, "clash"), kept(two, "clash")]);
    const late = await one.evaluate(() => globalThis.toft.sync.value === "clash") ? one : two;
    const mine = await get(late, "/intake/tails_m");
    await late.click("text=Look at both");
    await late.waitForSelector("fieldset.clash");
    assert.deepEqual(await axe(late), []);
    await picture(late, "clash-of-two");
    await late.click("text=Yours everywhere");
    await late.click("text=Keep what is chosen");
    await kept(late, "saved");
    assert.equal((await atServer(id)).job.intake.tails_m, mine);
    const other = late === one ? two : one;
    await gets(other, "/intake/tails_m", mine);
    const { revisions } = await (await fetch(`${served.url}api/jobs/${id}/revisions`)).json();
    assert.ok(revisions.length >= 3);
});

test("undo and redo are the server's, and outlive the page", async () => {
    const page = await openPage(browser, served.url);
    const id = await begin(page);
    const before = await get(page, "/intake/tails_m");
    await set(page, "/intake/tails_m", 5);
    await kept(page, "saved");
    await page.evaluate(() => globalThis.toft.undo());
    await gets(page, "/intake/tails_m", before);
    await kept(page, "saved");
    const there = await atServer(id);
    assert.equal(there.job.intake.tails_m, before);
    assert.equal(there.can_redo, true);
    await page.reload();
    await answered(page);
    await page.waitForFunction(() => globalThis.toft.canRedo.value);
    await page.evaluate(() => globalThis.toft.redo());
    await gets(page, "/intake/tails_m", 5);
    assert.equal((await atServer(id)).job.intake.tails_m, 5);
});

test("while the program is away everything goes on, and is sent when it is back", async () => {
    const page = await openPage(browser, served.url);
    await page.evaluate(() => navigator.serviceWorker.ready);
    const known = await begin(page);
    await served.stop();
    await set(page, "/intake/ze_ohm", 0.41);
    await kept(page, "offline");
    await page.reload();
    await answered(page);
    assert.equal(await get(page, "/intake/ze_ohm"), 0.41);
    const begun = await page.evaluate(() => globalThis.toft.newJob());
    await kept(page, "offline");
    await served.start();
    await kept(page, "saved");
    assert.equal((await atServer(begun)).id, begun);
    await page.waitForFunction(async ([id, ze]) =>
        (await (await fetch(`/api/jobs/${id}`)).json()).job.intake.ze_ohm === ze, [known, 0.41]);
});

test("an old state is looked at and gone back to", async () => {
    const page = await openPage(browser, served.url, { size: "desk" });
    await begin(page);
    const before = await get(page, "/intake/demand_a");
    await set(page, "/intake/demand_a", 55);
    await kept(page, "saved");
    await page.goto(`${served.url}#/history`);
    await page.waitForSelector(".entry");
    await page.waitForFunction(() => document.querySelectorAll(".entry").length === 2);
    await page.click(".entry:last-child button");
    await page.waitForSelector(".entry-then table");
    await picture(page, "history-look-desk");
    assert.deepEqual(await axe(page), []);
    await page.click("text=Go back to this");
    await gets(page, "/intake/demand_a", before);
    await kept(page, "saved");
    await page.waitForFunction(() => document.querySelectorAll(".entry").length === 3);
});

test("a job put away leaves the list and comes back", async () => {
    const page = await openPage(browser, served.url);
    const id = await begin(page);
    await page.fill(".title", "To be put away");
    await kept(page, "saving");
    await kept(page, "saved");
    await page.goto(`${served.url}#/jobs`);
    await page.click("[aria-label='Put away: To be put away']");
    await page.waitForSelector("[aria-label='Put away: To be put away']", { state: "detached" });
    assert.equal((await atServer(id)).archived, true);
    await page.click("text=Show what was put away");
    await page.click("[aria-label='Bring back: To be put away']");
    await page.waitForFunction(async (job) =>
        !(await (await fetch(`/api/jobs/${job}`)).json()).archived, id);
});

test("what one takes back the other sees taken back, though it is an older revision", async () => {
    const one = await openPage(browser, served.url);
    const id = await begin(one);
    const other = await openPage(browser, served.url);
    await other.evaluate((job) => globalThis.toft.openJob(job), id);
    await kept(other, "saved");
    const before = await get(one, "/runs/0/legs/1/length_m");
    await set(one, "/runs/0/legs/1/length_m", 90);
    await gets(other, "/runs/0/legs/1/length_m", 90);
    await kept(one, "saved");
    await one.evaluate(() => globalThis.toft.undo());
    await gets(one, "/runs/0/legs/1/length_m", before);
    await gets(other, "/runs/0/legs/1/length_m", before);
    await kept(other, "saved");
    const revisions = await Promise.all([one, other].map((page) =>
        page.evaluate(() => globalThis.toft.revision.value)));
    assert.equal(revisions[0], revisions[1]);
    await other.reload();
    await answered(other);
    assert.equal(await get(other, "/runs/0/legs/1/length_m"), before);
});

test("the last letters typed before the page is left are not lost", async () => {
    const page = await openPage(browser, served.url);
    const id = await begin(page);
    await page.fill(".title", "Typed and gone");
    await page.reload();
    await answered(page);
    assert.equal(await page.inputValue(".title"), "Typed and gone");
    await kept(page, "saved");
    assert.equal((await atServer(id)).job.title, "Typed and gone");
});

test("eight pages of one browser do not stall one another", async () => {
    const page = await openPage(browser, served.url);
    const id = await begin(page);
    const others = [];
    for (let i = 0; i < 7; i += 1) {
        others.push(await openPage(browser, served.url, { context: page.context() }));
    }
    const last = others.at(-1);
    assert.equal(await idOf(last), id);
    await set(last, "/intake/ze_ohm", 0.29);
    await kept(last, "saved");
    assert.equal((await atServer(id)).job.intake.ze_ohm, 0.29);
    for (const one of [page, ...others]) {
        await gets(one, "/intake/ze_ohm", 0.29);
        await kept(one, "saved");
        await one.close();
    }
});

test("what one page keeps while the program is away no other page calls saved", async () => {
    const one = await openPage(browser, served.url);
    await begin(one);
    const other = await openPage(browser, served.url, { context: one.context() });
    await kept(other, "saved");
    await served.stop();
    await set(one, "/intake/ze_ohm", 0.45);
    await kept(one, "offline");
    await gets(other, "/intake/ze_ohm", 0.45);
    await kept(other, "offline");
    await served.start();
    await kept(one, "saved");
    await kept(other, "saved");
});

test("papers are issued of the revision on screen, and of no other", async () => {
    const page = await openPage(browser, served.url, { size: "desk" });
    await begin(page);
    await page.evaluate(() => { globalThis.toft.author.value = "A"; });
    const asked = [];
    await page.route("**/api/jobs/*/papers", (route) => {
        if (route.request().method() !== "POST") return route.continue();
        asked.push(route.request().postDataJSON());
        return route.fulfill(problem(409, "another"));
    });
    await page.goto(`${served.url}#/papers`);
    await page.click("text=Issue all papers");
    await page.waitForSelector("text=was changed elsewhere meanwhile");
    assert.deepEqual(asked.map(({ revision }) => revision),
        [await page.evaluate(() => globalThis.toft.revision.value)]);
    await page.evaluate(() => { globalThis.toft.sync.value = "clash"; });
    await page.waitForFunction(() => document.querySelector(".issue-now button").disabled);
});

async function read(page, value) {
    const test = page.locator(".test", { hasText: /Zs at the board/ }).first();
    await test.locator("button", { hasText: /^Write$/ }).click();
    await test.locator(".write-value input").fill(value);
    await page.keyboard.press("Enter");
    await page.waitForSelector(`.kept >> text=${value}`);
}

test("readings of all jobs reach the server once, and what is refused says so", async () => {
    const page = await openPage(browser, served.url, { size: "desk" });
    const id = await begin(page);
    await page.evaluate(() => { globalThis.toft.author.value = "A"; });
    await page.goto(`${served.url}#/readings`);
    const asked = [];
    let answer = "lost";
    await page.route("**/api/jobs/*/readings", async (route) => {
        if (route.request().method() !== "POST") return route.continue();
        const body = route.request().postDataJSON();
        asked.push(body);
        if (answer === "refused" && body.value === 0.31) {
            return route.fulfill(problem(422, "too far"));
        }
        if (answer !== "lost") return route.continue();
        await route.fetch();
        return route.abort();
    });
    await read(page, "0.29");
    assert.equal(asked[0].revision, 1);
    answer = "refused";
    await page.evaluate(async () => globalThis.toft.newJob(await globalThis.toft.demoJob()));
    await answered(page);
    await kept(page, "saved");
    const other = await idOf(page);
    await read(page, "0.31");
    await page.waitForSelector("text=does not take it: too far");
    assert.deepEqual(await axe(page), []);
    await read(page, "0.33");
    const at = async (job) => (await (await fetch(`${served.url}api/jobs/${job}/readings`)).json())
        .readings.map(({ value }) => value);
    for (const [job, values] of [[id, [0.29]], [other, [0.33]]]) {
        while ((await at(job)).length < values.length) await page.waitForTimeout(100);
        assert.deepEqual(await at(job), values);
    }
    const sent = asked.filter(({ value }) => value === 0.29);
    assert.ok(sent.length >= 2, "sent again, as its answer was lost");
    assert.equal(new Set(sent.map(({ id: own }) => own)).size, 1);
    await page.click("text=Let it go");
    await page.waitForSelector("text=does not take it: too far", { state: "detached" });
});

test("papers are frozen at the revision on screen", async () => {
    const page = await openPage(browser, served.url, { size: "desk" });
    const id = await begin(page);
    await set(page, "/intake/ze_ohm", 0.3);
    await kept(page, "saved");
    await page.evaluate(() => { globalThis.toft.author.value = "A"; });
    await page.goto(`${served.url}#/papers`);
    await page.click("text=Issue all papers");
    await page.waitForSelector(".issue-list li", { timeout: 90_000 });
    const { issues } = await (await fetch(`${served.url}api/jobs/${id}/papers`)).json();
    assert.deepEqual(issues.map(({ revision }) => revision), [2]);
});
