// Keeps the page and its engine for when no server is in reach. VERSION and FILES are put in by the
// build; nothing of /api is ever kept here.

const VERSION = "494d4a34b09203d9";
const FILES = ["icon-192.png","icon-512.png","icon.svg","index.html","manifest.webmanifest","page/Card-CE7VuNVy.js","page/Earthing-B9wEA_1W.js","page/Facts-HRdFGaD3.js","page/Guide-ClEFWZvl.js","page/Lists-CXCgZc7o.js","page/Loads-DRjccZKb.js","page/Photos-DYmR-EBB.js","page/Section-BAZzkw1o.js","page/Sheet-jGkkXOck.js","page/Working-Df7ofX1P.js","page/clash-AX-AiiqH.js","page/clash-CY3GaAZ-.css","page/day-DCGavJ2F.js","page/demo-CMzP2_1t.js","page/fetch-DF7h2A-g.js","page/files-DvfAGCTy.js","page/further-Br6-5Emc.js","page/help-BVvPemYC.js","page/history-4tDUejmG.js","page/history-DbLz7_S3.css","page/index-CP1r66lT.js","page/index-Co65bbJH.css","page/jobs-BCMLrhEO.css","page/jobs-EwI2-UsX.js","page/jsxRuntime-BR5iDTdE.js","page/office-DMzUStQH.js","page/outbox-DbS-HYWv.js","page/pair-CNqNxwI5.js","page/papers-CvvY-BR9.js","page/papers-zs7HKpix.css","page/prices-C9RBoJFz.css","page/prices-CEAu6igI.js","page/read-DZ-QWMit.js","page/readings-2enu4Yw9.js","page/readings-BdxnIFnf.css","page/rows-Dmf6p0br.js","page/words-CH809kEb.js","page/worker-DxEjo3v5.js","toft-first.wasm?v=3437d036f268086f","toft.wasm?v=db866c6592515ebe"];
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
