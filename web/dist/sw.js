// Keeps the page and its engine for when no server is in reach. VERSION and FILES are put in by the
// build; nothing of /api is ever kept here.

const VERSION = "0aeef9e5f35acce0";
const FILES = ["icon-192.png","icon-512.png","icon.svg","index.html","manifest.webmanifest","page/demo-CMzP2_1t.js","page/index-ClmhTq1S.js","page/index-FVF8DukL.css","page/worker-DOJezgbB.js","toft-papers.wasm","toft.wasm"];
const NAME = `toft-${VERSION}`;
const HOME = new URL("./", self.location).href;

self.addEventListener("install", (event) => {
    event.waitUntil((async () => {
        const kept = await caches.open(NAME);
        await kept.addAll(FILES.map((file) => new Request(new URL(file, HOME), { cache: "no-cache" })));
        await self.skipWaiting();
    })());
});

// The version before this one stays: a page that is open may still ask for its files.
self.addEventListener("activate", (event) => {
    event.waitUntil((async () => {
        const names = (await caches.keys()).filter((name) => name.startsWith("toft-"));
        const old = names.filter((name) => name !== NAME);
        await Promise.all(old.slice(0, -1).map((name) => caches.delete(name)));
        await self.clients.claim();
    })());
});

self.addEventListener("fetch", (event) => {
    const { request } = event;
    const url = new URL(request.url);
    if (request.method !== "GET" || !url.href.startsWith(HOME)) return;
    if (url.pathname.startsWith("/api/")) return;
    const asked = request.mode === "navigate" ? new URL("index.html", HOME).href : url.href;
    event.respondWith((async () => {
        const mine = await caches.open(NAME);
        return await mine.match(asked) ?? await caches.match(asked) ?? fetch(request);
    })());
});
