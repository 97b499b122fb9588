// What the browser tests share: a browser, the page alone or behind `toft serve`, pictures of it.
//   TOFT_PROGRAM   the program under test (build/release/toft)
//   TOFT_PAGE      a built page to serve before the program, in place of the one inside it
//   CHROMIUM       the browser (/usr/bin/chromium)

import { spawn } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, statSync } from "node:fs";
import { createServer, request as ask } from "node:http";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { extname, join } from "node:path";

export const root = new URL("../../", import.meta.url).pathname;
const fromPage = createRequire(join(root, "web/package.json"));
const { chromium } = fromPage("playwright-core");
const axeSource = readFileSync(fromPage.resolve("axe-core/axe.min.js"), "utf8");

export const program = process.env.TOFT_PROGRAM ?? join(root, "build/release/toft");
export const pictures = join(root, "build/page");

export const sizes = {
    phone: { width: 360, height: 740 },
    desk: { width: 1280, height: 800 },
};

export function openBrowser() {
    return chromium.launch({
        executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
        args: [
            "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
            "--disable-background-networking", "--disable-component-update", "--disable-sync",
        ],
    });
}

const types = {
    ".html": "text/html", ".js": "text/javascript", ".css": "text/css", ".svg": "image/svg+xml",
    ".png": "image/png", ".wasm": "application/wasm", ".webmanifest": "application/manifest+json",
};

/** The built page with no program behind it (`behind` answers for /api): {url, close}. */
export function servePageAlone(folder = join(root, "web/dist"), behind = undefined) {
    const server = createServer((request, answer) => {
        const path = new URL(request.url, "http://page").pathname;
        if (behind && path.startsWith("/api/")) return behind(request, answer);
        const file = join(folder, path === "/" ? "index.html" : path);
        if (!file.startsWith(folder) || !existsSync(file) || !statSync(file).isFile()) {
            answer.writeHead(404).end();
            return;
        }
        answer.writeHead(200, { "content-type": types[extname(file)] ?? "text/plain" });
        answer.end(readFileSync(file));
    });
    return new Promise((done) => server.listen(0, "127.0.0.1", () => done({
        url: `http://127.0.0.1:${server.address().port}/`,
        close: () => new Promise((closed) => {
            server.closeAllConnections();
            server.close(closed);
        }),
    })));
}

/** Passes a call on to the program; where it is away the connection ends, as if none was there. */
function passOn(served) {
    return (request, answer) => {
        const { origin: _, referer: __, ...headers } = request.headers;
        headers.host = `localhost:${served.port}`;
        const { method, url: path } = request;
        const to = { host: "127.0.0.1", port: served.port, method, path, headers, agent: false };
        const onward = ask(to, (told) => {
            answer.writeHead(told.statusCode, told.headers);
            answer.flushHeaders();
            told.on("error", () => answer.destroy());
            told.pipe(answer);
        });
        onward.on("error", () => request.socket.destroy());
        answer.on("close", () => onward.destroy());
        request.pipe(onward);
    };
}

/** `toft serve` on a free port with a store of its own: {url, said, stop, start, close}. */
export async function serveProgram(more = []) {
    const data = mkdtempSync(join(tmpdir(), "toft-page-"));
    const served = { port: 0, url: "", child: undefined };
    served.start = async () => {
        served.child = spawn(program,
            ["serve", "--port", String(served.port), "--data", data, ...more],
            { stdio: ["ignore", "pipe", "pipe"] });
        served.said = "";
        for (const stream of [served.child.stdout, served.child.stderr]) {
            stream.on("data", (bytes) => { served.said += bytes; });
        }
        const own = await listening(served.child);
        served.port = Number(new URL(own).port);
        if (!served.before) served.url = own;
    };
    served.stop = () => new Promise((ended) => {
        if (served.child.exitCode !== null) return ended();
        served.child.once("exit", ended);
        served.child.kill("SIGTERM");
    });
    served.close = async () => {
        await served.stop();
        await served.before?.close();
        rmSync(data, { recursive: true, force: true });
    };
    await served.start();
    if (process.env.TOFT_PAGE) {
        served.before = await servePageAlone(process.env.TOFT_PAGE, passOn(served));
        served.url = served.before.url;
    }
    return served;
}

/** The address that the program says it listens at. */
function listening(child) {
    return new Promise((done, failed) => {
        let said = "";
        const timer = setTimeout(() => failed(new Error(`no address in: ${said}`)), 20_000);
        const hear = (bytes) => {
            said += bytes;
            const found = said.match(/http:\/\/(localhost|127\.0\.0\.1):\d+\//);
            if (!found) return;
            clearTimeout(timer);
            done(found[0]);
        };
        child.stdout.on("data", hear);
        child.stderr.on("data", hear);
        child.once("exit", (code) => {
            clearTimeout(timer);
            failed(new Error(`the program ended with ${code}: ${said}`));
        });
    });
}

/** A page in a context of its own; what goes wrong in it is collected in page.wrong. */
export async function openPage(browser, url, { size = "phone", theme = "light", context } = {}) {
    const own = context ?? await browser.newContext({ viewport: sizes[size], colorScheme: theme });
    const page = await own.newPage();
    page.wrong = [];
    page.on("pageerror", (error) => page.wrong.push(error.message));
    page.on("console", (message) => {
        if (message.type() !== "error") return;
        if (/Failed to load resource/.test(message.text())) return;
        page.wrong.push(message.text());
    });
    await page.goto(url);
    await answered(page);
    return page;
}

/** Waits until an answer (or what is at fault) is there, what stands below it too. */
export async function answered(page) {
    await page.waitForFunction(() => {
        const bench = globalThis.toft;
        if (!bench?.job.value) return false;
        if (bench.faults.value.length > 0) return true;
        const lower = document.querySelector(".levers") || !document.querySelector(".survey");
        return bench.first.value && lower;
    }, undefined, { timeout: 60_000 });
}

export const sentence = (page) =>
    page.evaluate(() => globalThis.toft.first.value?.chosen?.sentence ?? "");

/** Waits until the page says so of how the job is kept. */
export async function kept(page, word) {
    await page.waitForFunction((sync) => globalThis.toft.sync.value === sync, word,
        { timeout: 30_000 });
}

/** What axe finds, one line each; an empty list is what is asked for. */
export async function axe(page) {
    await page.evaluate(axeSource);
    const found = await page.evaluate(() => globalThis.axe.run(document, {
        runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
    }));
    return found.violations.flatMap(({ id, nodes }) =>
        nodes.map((node) => `${id}: ${node.target.join(" ")} ${node.failureSummary}`));
}

export async function picture(page, name) {
    mkdirSync(pictures, { recursive: true });
    await page.screenshot({ path: join(pictures, `${name}.png`) });
}

/** What a route answers in place of a server that says no. */
export const problem = (status, title) => ({
    status, contentType: "application/problem+json",
    body: JSON.stringify({ type: "about:blank", title, status, detail: "" }),
});
