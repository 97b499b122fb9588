// Keeps the page and its engine for when no server is in reach. VERSION and FILES are put in by the
// build; nothing of /api is ever kept here.

const VERSION = "eac0111b11a6c7c6";
const FILES = ["icon-192.png","icon-512.png","icon.svg","index.html","manifest.webmanifest","page/Card-B_3yPCky.js","page/Earthing-pkOwLxqv.js","page/Facts-CFHofXtj.js","page/Guide-Gdi2Fz6Z.js","page/Lists-DoO5hyI0.js","page/Loads-CvSWo3e-.js","page/Photos-DYmR-EBB.js","page/Section-C6o7p6ej.js","page/Sheet-jGkkXOck.js","page/Working-C6KLGub_.js","page/clash-BkUzZCtj.js","page/clash-CY3GaAZ-.css","page/day-DCGavJ2F.js","page/demo-CMzP2_1t.js","page/fetch-CTl4w_Zx.js","page/files-DvfAGCTy.js","page/further-DU0Ictyr.js","page/help-BP4XaURV.js","page/history-4tDUejmG.js","page/history-DbLz7_S3.css","page/index-OhI2NEaF.js","page/index-y_2WFyTj.css","page/jobs-BCMLrhEO.css","page/jobs-CyCHzV8C.js","page/jsxRuntime-BR5iDTdE.js","page/office-DMzUStQH.js","page/outbox-DbS-HYWv.js","page/pair-LHaVC2Qx.js","page/papers-DKZHIFrf.js","page/papers-zs7HKpix.css","page/prices-C9RBoJFz.css","page/prices-CGwVEvQ5.js","page/read-DZ-QWMit.js","page/readings-BdxnIFnf.css","page/readings-Ce7yQfE0.js","page/rows-mGsgyp-h.js","page/words-CH809kEb.js","page/worker-DxEjo3v5.js","toft-first.wasm?v=3437d036f268086f","toft.wasm?v=db866c6592515ebe"];
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
