// The survey as a stranger does it: on the picture, with a thumb or with keys alone.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { answered, axe, openPage, picture, root, sentence } from "./harness.mjs";
import { alone, browser, withPageAlone } from "./page_alone.mjs";

withPageAlone();

const job = (page) => page.evaluate(() => globalThis.toft.job.value);
const faults = (page) => page.evaluate(() => globalThis.toft.faults.value.map((f) => f.pointer));

/** A new job, with its picture in sight. */
async function newSurvey(size = "phone") {
    const page = await openPage(browser, alone.url, { size });
    page.setDefaultTimeout(8000);
    await page.goto(`${alone.url}#/jobs`);
    await page.getByRole("button", { name: "Begin a job" }).first().click();
    await page.waitForFunction(() => globalThis.toft.job.value?.buildings.length === 1);
    await page.goto(`${alone.url}#/survey`);
    await page.waitForSelector(".plan");
    return page;
}

/** A finger on the plan, at parts of its width and height. */
async function touch(page, across, down) {
    await page.evaluate(() => scrollTo({ top: 0, behavior: "instant" }));
    const box = await page.locator(".plan").boundingBox();
    await page.mouse.click(box.x + box.width * across, box.y + box.height * down);
}

const chip = (page, scope, text) =>
    page.locator(`${scope} .option`).filter({ hasText: new RegExp(`^${text}`) }).first().click();

const choose = (page, pointer) => page.locator(`.plan [data-pointer="${pointer}"]`).evaluate(
    (thing) => thing.dispatchEvent(new MouseEvent("click", { bubbles: true, detail: 0 })));

/** House, shed, a straight run, three kilowatts: all but the earthing. */
async function surveyShed(page) {
    await touch(page, 0.75, 0.3);
    await chip(page, ".putting", "shed");
    await page.locator(".putting").getByRole("button", { name: /^Straight to/ }).click();
    const load = page.locator(".facts .loads input").last();
    await load.fill("3");
    await load.press("Enter");
    await page.waitForFunction(() => globalThis.toft.job.value.buildings[1].load_w);
}

test("a new job takes nothing for granted", async () => {
    const page = await newSurvey();
    assert.deepEqual((await job(page)).intake, {});
    assert.deepEqual((await faults(page)).sort(), ["/intake/earthing", "/runs"]);
    assert.match(await page.textContent("#place-hint"), /Tap the ground/);
    assert.deepEqual(await axe(page), []);
    await picture(page, "survey-blank");
});

test("a first answer on a phone takes a few touches and less than five minutes", async () => {
    const page = await newSurvey();
    const begun = Date.now();
    await surveyShed(page);
    assert.deepEqual(await faults(page), ["/intake/earthing"]);
    assert.deepEqual(await axe(page), []);
    await choose(page, "/buildings/0");
    await chip(page, ".facts", "TN-C-S");
    await page.waitForFunction(() => globalThis.toft.faults.value.length === 0
        && globalThis.toft.first.value?.chosen);
    const seconds = (Date.now() - begun) / 1000;
    console.log(`first job by script: ${seconds.toFixed(1)} s`);
    assert.match(await sentence(page), /^Feed it with/);
    const { buildings, runs } = await job(page);
    assert.deepEqual(buildings[1].load_w, { value: 3000, basis: "declared" });
    assert.equal(runs[0].legs[0].length_m.basis, "assumed");
    await picture(page, "survey-first-job");
});

test("an earthing nobody knows gets three answers, and none of them as the answer", async () => {
    const page = await newSurvey();
    await surveyShed(page);
    await choose(page, "/buildings/0");
    await page.waitForSelector(".facts .open-earthing dl", { timeout: 30_000 });
    const told = await page.textContent(".facts .open-earthing");
    for (const word of ["TN-S", "TN-C-S", "TT"]) assert.ok(told.includes(`If it is ${word}`), word);
    assert.match(told, /Nothing can be called safe/);
    assert.deepEqual(await faults(page), ["/intake/earthing"]);
    assert.equal(await sentence(page), "");
    assert.deepEqual(await axe(page), []);
    await picture(page, "survey-earthing-open");
});

test("a length is off the drawing until the tape has said it", async () => {
    const page = await newSurvey();
    await surveyShed(page);
    await choose(page, "/runs/0/legs/0");
    const field = page.locator(".facts").getByLabel("Length", { exact: true });
    await field.fill("24.5");
    await field.press("Enter");
    const length = async () => (await job(page)).runs[0].legs[0].length_m;
    assert.deepEqual(await length(), { value: 24.5, basis: "assumed" });
    assert.match(await page.textContent(".facts"), /Until then it counts as guessed/);
    assert.match(await page.textContent(".plan .length"), /≈/);
    await page.getByLabel("How the figure is known: Length").selectOption("measured");
    assert.deepEqual(await length(), { value: 24.5, basis: "measured" });
    assert.doesNotMatch(await page.textContent(".plan .length"), /≈/);
    await choose(page, "/buildings/1");
    await page.locator('[data-pointer="/buildings/1"]').focus();
    await page.keyboard.press("ArrowRight");
    const moved = await job(page);
    assert.equal(moved.runs[0].legs[0].length_m.value, 24.5);
    assert.deepEqual(moved.runs[0].legs[0].through_m.at(-1), moved.buildings[1].at_m);
});

test("a building is pulled to its place, and the step can be taken back", async () => {
    const page = await newSurvey("desk");
    await surveyShed(page);
    const before = (await job(page)).buildings[1].at_m;
    await page.keyboard.press("Escape");
    await page.evaluate(() => scrollTo({ top: 0, behavior: "instant" }));
    const box = await page.locator('[data-pointer="/buildings/1"] .touch').boundingBox();
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 40, y + 30, { steps: 4 });
    await page.mouse.up();
    const after = (await job(page)).buildings[1].at_m;
    assert.ok(after[0] > before[0] && after[1] < before[1], `${before} ${after}`);
    await page.getByRole("button", { name: "Undo" }).click();
    await page.waitForFunction(
        (at) => globalThis.toft.job.value.buildings[1].at_m[0] === at, before[0]);
});

test("keys alone put a building and its run down, move and remove it", async () => {
    const page = await newSurvey("desk");
    const press = async (name) => {
        await page.getByRole("button", { name }).first().focus();
        await page.keyboard.press("Enter");
    };
    await page.locator(".list summary").focus();
    await page.keyboard.press("Enter");
    await press("Add an outbuilding");
    await press(/^Straight to/);
    assert.equal((await job(page)).runs.length, 1);
    const at = (await job(page)).buildings[1].at_m;
    await page.locator('[data-pointer="/buildings/1"]').focus();
    await page.keyboard.press("ArrowUp");
    await page.keyboard.press("Shift+ArrowLeft");
    const [east, north] = (await job(page)).buildings[1].at_m;
    assert.ok(Math.abs(east - (at[0] - 0.1)) < 1e-9 && north === at[1] + 1);
    await page.keyboard.press("Enter");
    await page.waitForFunction(() => document.activeElement.closest(".facts")
        && /INPUT|SELECT/.test(document.activeElement.tagName));
    await page.locator(".plan").focus();
    await page.keyboard.press("Delete");
    assert.equal((await job(page)).buildings.length, 1);
    assert.equal((await job(page)).runs.length, 0);
});

const focusIn = (page, room) => page.waitForFunction((where) =>
    document.activeElement.closest(where) !== null, room);

test("the keyboard is never left nowhere: what came instead takes it", async () => {
    const page = await newSurvey("desk");
    const press = async (scope, name) => {
        await page.locator(scope).getByRole("button", { name }).first().focus();
        await page.keyboard.press("Enter");
    };
    await page.locator(".list summary").focus();
    await page.keyboard.press("Enter");
    await press(".list", "Add an outbuilding");
    await focusIn(page, ".beside .putting, .questions, .list");
    await press(".putting", /^Straight to/);
    await focusIn(page, ".beside .facts");
    await press(".facts", /leg 1/);
    await focusIn(page, ".beside .facts");
    await page.keyboard.type("45");
    assert.equal(await page.evaluate(() => location.hash), "#/survey");
    await page.keyboard.press("Enter");
    assert.equal((await job(page)).runs[0].legs[0].length_m.value, 45);
    await page.locator('[data-pointer="/buildings/0"]').focus();
    const house = page.locator(".facts").filter({ hasText: "The house and its supply" });
    assert.equal(await house.count(), 0);
    await page.keyboard.press("Enter");
    await house.waitFor();
    assert.deepEqual(page.wrong, []);
});

test("the middle of the house is the house, and its panel comes into sight", async () => {
    const page = await openPage(browser, alone.url);
    await page.evaluate(() => scrollTo({ top: 0, behavior: "instant" }));
    const box = await page.locator('[data-pointer="/buildings/0"] .touch').boundingBox();
    await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
    await page.locator("#facts-title", { hasText: "The house and its supply" }).waitFor();
    await page.waitForFunction(() => {
        const { top } = document.querySelector("#facts-title").getBoundingClientRect();
        return top > 0 && top < innerHeight * 0.6;
    });
    await picture(page, "survey-house-phone");
});

test("a long word in a name breaks no page", async () => {
    for (const size of ["phone", "desk"]) {
        const page = await openPage(browser, alone.url, { size });
        const name = "Donaudampfschifffahrtselektrizitätenhauptbetriebswerkbauhaus";
        await page.evaluate((said) => globalThis.toft.set("/buildings/1/name", said), name);
        await page.waitForFunction((said) =>
            document.querySelector(".plan").textContent.includes(said.slice(0, 20)), name);
        await choose(page, "/buildings/1");
        const wide = await page.evaluate(() =>
            document.documentElement.scrollWidth - document.documentElement.clientWidth);
        assert.ok(wide <= 0, `${size}: ${wide} px too wide`);
        const over = await page.evaluate(() => {
            const panel = document.querySelector(".beside").getBoundingClientRect();
            const close = document.querySelector(".facts header button").getBoundingClientRect();
            return close.right - panel.right;
        });
        assert.ok(over <= 1, `${size}: close stands ${over} px out of its column`);
        await picture(page, `survey-long-name-${size}`);
    }
});

test("a circuit's power is checked before it is added", async () => {
    const page = await newSurvey();
    await surveyShed(page);
    await page.locator(".facts .option").filter({ hasText: "one by one" }).click();
    await chip(page, ".facts .add", "heater");
    const circuits = async () => (await job(page)).buildings[1].circuits ?? [];
    for (const [wrong, says] of [
        ["abc", /A number/], ["-5", /From 0 to 100/], ["1e9", /A number/], ["", /plate/],
        ["10 A", /kW or W/],
    ]) {
        await page.fill("#new-load", wrong);
        await page.press("#new-load", "Enter");
        await page.locator("#new-load-say", { hasText: says }).waitFor();
        assert.deepEqual(await circuits(), [], wrong);
    }
    await page.fill("#new-load", "120 W");
    await page.press("#new-load", "Enter");
    await page.waitForFunction(() => globalThis.toft.job.value.buildings[1].circuits?.length === 1);
    assert.deepEqual((await circuits())[0].load_w, { value: 120, basis: "declared" });
});

test("once nobody knows the earthing the old answer is gone, and papers of it", async () => {
    const page = await openPage(browser, alone.url);
    await page.evaluate(() => globalThis.toft.set("/intake/earthing", undefined));
    await page.waitForFunction(() => globalThis.toft.faults.value.length > 0);
    assert.doesNotMatch(await page.textContent("#answer"), /Feed it with/);
    assert.match(await page.textContent("#answer"), /no scheme can be called safe/);
    assert.deepEqual(await axe(page), []);
    await page.goto(`${alone.url}#/papers`);
    await page.waitForSelector(".papers");
    assert.match(await page.textContent(".papers"), /nothing can be issued/);
    assert.doesNotMatch(await page.textContent(".papers"), /recommended scheme/);
    assert.equal(await page.locator(".paper-row:not(:disabled)").count(), 0);
    assert.deepEqual(await axe(page), []);
});

test("a reading may be half written, asks who reads, and is marked beyond its limit", async () => {
    const page = await openPage(browser, alone.url);
    await page.goto(`${alone.url}#/readings`);
    const write = () => page.locator(".test", { hasText: "Zs at the board" });
    await write().getByRole("button").first().click({ timeout: 30_000 });
    await write().getByLabel("Reading, Ω").fill("1.4");
    await page.goto(`${alone.url}#/papers`);
    await page.waitForSelector(".papers");
    await page.goto(`${alone.url}#/readings`);
    await write().waitFor();
    assert.equal(await write().getByLabel("Reading, Ω").inputValue(), "1.4");
    await write().getByRole("button", { name: "Keep" }).click();
    await write().getByRole("alert").waitFor();
    await write().getByLabel("Read by").fill("A. Tester");
    await write().getByRole("button", { name: "Keep" }).click();
    await write().locator(".beyond", { hasText: "above the limit stated" }).waitFor();
    const look = page.locator(".step", { hasText: "Inspection" }).locator(".test").first();
    await look.getByRole("button").first().click();
    assert.deepEqual(await axe(page), []);
    await look.getByText("as it should be", { exact: true }).click();
    await look.getByRole("button", { name: "Keep" }).click();
    await look.locator(".kept", { hasText: "as it should be" }).waitFor();
    await picture(page, "readings-written");
});

test("a run is drawn by keys: the cross goes with the arrows, Enter sets a corner", async () => {
    const page = await newSurvey("desk");
    await page.locator(".list summary").click();
    await page.locator(".list").getByRole("button", { name: "Add an outbuilding" }).click();
    await page.locator(".plan").focus();
    for (let i = 0; i < 8; i += 1) await page.keyboard.press("ArrowRight");
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: /^End at/ }).click();
    const [leg] = (await job(page)).runs[0].legs;
    assert.equal(leg.through_m.length, 2);
});

test("what one does not know is set aside, listed, and can be returned to", async () => {
    const page = await newSurvey();
    await surveyShed(page);
    await choose(page, "/buildings/0");
    await chip(page, ".facts", "TN-C-S");
    await page.waitForSelector(".question .press.second", { timeout: 30_000 });
    const asked = await page.textContent("#question-title");
    await page.locator(".question").getByRole("button", { name: /leave it open/ }).click();
    await page.waitForFunction((before) =>
        document.querySelector("#question-title")?.textContent !== before, asked);
    const left = page.locator(".lists").getByRole("button", { name: asked });
    assert.match(await left.textContent(), /not known/);
    assert.deepEqual(await axe(page), []);
    await picture(page, "survey-question");
    await left.click();
    assert.equal(await page.textContent("#question-title"), asked);
    assert.match(asked, /How deep will the cable lie/);
    await page.locator(".question").getByLabel("Your answer", { exact: false }).first().fill("0.6");
    await page.keyboard.press("Enter");
    await page.waitForSelector(".lists summary:has-text('Answered here')");
});

test("a photo of a thing is shrunk, kept, and there after the page was left", async () => {
    const page = await newSurvey();
    await choose(page, "/buildings/0");
    const large = await page.evaluate(() => {
        const canvas = document.createElement("canvas");
        Object.assign(canvas, { width: 3000, height: 1500 });
        canvas.getContext("2d").fillRect(0, 0, 900, 900);
        return canvas.toDataURL("image/png").split(",")[1];
    });
    await page.locator(".facts .hidden-file").setInputFiles(
        { name: "cut-out.png", mimeType: "image/png", buffer: Buffer.from(large, "base64") });
    await page.waitForSelector(".facts .thumb img");
    assert.deepEqual(await axe(page), []);
    await page.waitForFunction(() => globalThis.toft.sync.value === "offline");
    await page.reload();
    await answered(page);
    await choose(page, "/buildings/0");
    const wide = await page.locator(".facts .thumb img").evaluate((image) => image.naturalWidth);
    assert.equal(wide, 2000);
});

/** Types or picks what a fact's field is called. */
async function fill(page, label, value) {
    const scope = page.locator(".facts");
    if (typeof value === "boolean") {
        const legend = page.getByText(label, { exact: true });
        await scope.locator("fieldset").filter({ has: legend }).last().locator(".option")
            .filter({ hasText: value ? /^yes/ : /^no/ }).first().click();
        return;
    }
    const field = scope.getByLabel(label, { exact: false }).first();
    const listed = await field.evaluate((control) => control.tagName === "SELECT");
    if (listed) await field.selectOption(value);
    else {
        await field.fill(String(value));
        await field.press("Enter");
    }
}

async function openAll(page) {
    await page.evaluate(() => {
        for (const folded of document.querySelectorAll(".facts details")) folded.open = true;
    });
}

const supply = [
    ["Earth loop at the intake", 0.21], ["Fault current between", 1.1], ["Rating", "80"],
    ["Printed on it", "BS 88-3"], ["Is the supply looped to a neighbour’s?", false],
    ["The operator’s neutral, copper", 25], ["Section of the tails", 25],
    ["Length of the tails", 2], ["Earthing conductor of the house", 16],
    ["Main bonding of the house", 10], ["Free ways in the house", 1],
    ["Largest device its ways take", 50], ["RCD before the free ways", 0],
    ["Demand of the house as it is", 34],
    ["Soil", "loam"], ["Thermal resistivity", 2.5], ["Temperature at the depth", 15],
    ["Most voltage drop over the run", 2.5], ["Most voltage drop to the last lamp", 3],
    ["Most voltage drop to other loads", 5], ["Smallest core", 2.5],
];
const studio = [
    ["What it is made of", "timber"], ["Does metal of it stand in the ground?", false],
    ["Are animals kept in it?", false], ["Is the floor wet in use?", false],
    ["Are people barefoot or wet there?", false], ["Is a vehicle charged outdoors there?", false],
    ["Nearest thing on the house", 8],
];
const circuits = [
    ["sockets", 2, { "Power factor": 1, "Cable to its last point": 9 }],
    ["heater", 1.5, { "Power factor": 1, "Cable to its last point": 6 }],
    ["lighting", 0.12, { "Power factor": 0.95, "Cable to its last point": 11 }],
    ["motor", 0.4, { "Power factor": 0.8, "Cable to its last point": 7, "Starting current": 5 }],
];

async function enterCircuits(page) {
    await page.locator(".facts .option").filter({ hasText: "one by one" }).click();
    for (const [i, [kind, power, more]] of circuits.entries()) {
        await chip(page, ".facts .add", kind);
        await page.fill("#new-load", String(power));
        await page.keyboard.press("Enter");
        await page.waitForFunction(
            (n) => globalThis.toft.job.value.buildings[1].circuits?.length === n, i + 1);
        await page.locator(".facts .loads .thing-line").last().click();
        for (const [label, value] of Object.entries(more)) {
            const field = page.locator(".facts .inner").getByLabel(label, { exact: false }).first();
            await field.fill(String(value));
            await field.press("Enter");
        }
    }
}

test("the studio job of the examples is entered whole, and gets the example's answer", async () => {
    const page = await newSurvey();
    const begun = Date.now();
    await touch(page, 0.78, 0.3);
    await chip(page, ".putting", "studio");
    await chip(page, ".putting", "clipped");
    await touch(page, 0.6, 0.5);
    await chip(page, ".putting", "in the ground");
    await touch(page, 0.68, 0.4);
    await chip(page, ".putting", "clipped");
    await page.locator(".putting").getByRole("button", { name: /^End at/ }).click();
    await enterCircuits(page);
    await page.locator(".facts fieldset").filter({ hasText: "metal from outside" })
        .getByText("yes", { exact: true }).click();
    await chip(page, ".putting", "water pipe");
    await page.locator(".putting").getByRole("button", { name: /^It enters/ }).click();
    await fill(page, "Material", "copper");
    await chip(page, ".facts", "ground");
    await fill(page, "Is a length of plastic fitted in it?", false);
    await fill(page, "Is it bonded at the house?", true);
    await choose(page, "/buildings/1");
    await openAll(page);
    for (const [label, value] of studio) await fill(page, label, value);
    for (const [i, [length, more]] of [
        [7, [["Air around it", 30], ["Other loaded circuits", 1]]],
        [21, [["Depth", 0.6], ["What lies above it", "lawn"]]],
        [2, [["Air around it", 30], ["Other loaded circuits", 0]]],
    ].entries()) {
        await choose(page, `/runs/0/legs/${i}`);
        await openAll(page);
        await fill(page, "Length", length);
        for (const [label, value] of more) await fill(page, label, value);
    }
    await page.evaluate(() => scrollTo({ top: 0, behavior: "instant" }));
    await choose(page, "/buildings/0");
    await chip(page, ".facts", "TN-C-S");
    await openAll(page);
    for (const [label, value] of supply) await fill(page, label, value);
    console.log(`studio job by script: ${((Date.now() - begun) / 1000).toFixed(1)} s`);
    await page.waitForFunction(() => globalThis.toft.faults.value.length === 0
        && globalThis.toft.first.value?.chosen && !globalThis.toft.behind.value,
    undefined, { timeout: 60_000 });
    const demo = JSON.parse(readFileSync(`${root}examples/demo.json`, "utf8"));
    const entered = await sentence(page);
    await page.evaluate((whole) => globalThis.toft.change("the example", () => whole), demo);
    await page.waitForFunction(() => globalThis.toft.first.value?.job.startsWith("Potter"));
    assert.equal(entered, await sentence(page));
    assert.deepEqual(page.wrong, []);
});
