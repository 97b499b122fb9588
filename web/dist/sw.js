// Keeps the page and its engine for when no server is in reach. VERSION and FILES are put in by the
// build; nothing of /api is ever kept here.

const VERSION = "439332e780c2d027";
const FILES = ["icon-192.png","icon-512.png","icon.svg","index.html","manifest.webmanifest","page/Card-CQ4I4CAn.js","page/Earthing-CxfOZhyu.js","page/Facts-DMkQqW44.js","page/Guide-Cd7xCuEv.js","page/Lists-Bq3lP9xm.js","page/Loads-CPf2jzaF.js","page/Photos-TDd9qK0P.js","page/Section-C5AQao6F.js","page/Sheet-D9xmpcYM.js","page/Working-BoC3x6oT.js","page/clash-CUA8rnPR.js","page/clash-CY3GaAZ-.css","page/day-DCGavJ2F.js","page/demo-CMzP2_1t.js","page/fetch-CDk6NfuY.js","page/files-DvfAGCTy.js","page/further-BaoZBxWK.js","page/help-k5NssLGg.js","page/history-BN85SfVy.js","page/history-DbLz7_S3.css","page/index-CbMrr6lR.js","page/index-y_2WFyTj.css","page/jobs-BCMLrhEO.css","page/jobs-kESYs3Hy.js","page/jsxRuntime-Oucu61Sf.js","page/office-v_zJi1iY.js","page/outbox-CDGlefxF.js","page/pair-2x7ZDmZx.js","page/papers-kgCDkK67.js","page/papers-zs7HKpix.css","page/prices-C9RBoJFz.css","page/prices-DYmfopFb.js","page/read-CXSUFmeL.js","page/readings-BdxnIFnf.css","page/readings-DlWNElh2.js","page/rows-C1zuynGE.js","page/words-DpnEBToD.js","page/worker-DxEjo3v5.js","toft-first.wasm","toft.wasm"];
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
