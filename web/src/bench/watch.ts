// Hears of new revisions of the open job. A browser allows six connections to one host, so pages of
// one job share a stream (the one that has the lock hears and passes it on), and a page that nobody
// looks at has none: it catches up when it is looked at again.

import { serverThere, tryServer } from "./reach";

type Heard = (revision?: number) => void;
interface News { id: string; revision: number }

const news = typeof BroadcastChannel === "undefined"
  ? null : new BroadcastChannel("toft-revisions");
let open: { id: string; heard: Heard } | null = null;
let end: (() => void) | undefined;

const hidden = (): boolean =>
  typeof document !== "undefined" && document.visibilityState === "hidden";

/** Watches one job in place of the one before; null for none. */
export function watch(id: string | null, heard: Heard = () => {}): void {
  end?.();
  end = undefined;
  open = id === null ? null : { id, heard };
  if (id === null || hidden() || typeof EventSource === "undefined") return;
  const stop = new AbortController();
  end = () => stop.abort();
  const listen = () => new Promise<void>((done) => {
    if (stop.signal.aborted) return done();
    const close = stream(id, heard, stop.signal);
    stop.signal.addEventListener("abort", () => { close(); done(); });
  });
  const locks = typeof navigator === "undefined" ? undefined : navigator.locks;
  if (locks) locks.request(`toft-events/${id}`, { signal: stop.signal }, listen).catch(() => {});
  else void listen();
}

const AGAIN_MS = 15_000;

function stream(id: string, heard: Heard, signal: AbortSignal): () => void {
  const events = new EventSource(`/api/jobs/${encodeURIComponent(id)}/events`);
  events.addEventListener("revision", ({ data }) => {
    const { revision } = JSON.parse(String(data)) as News;
    heard(revision);
    news?.postMessage({ id, revision });
  });
  events.addEventListener("open", () => heard());  // for what was told while nobody listened
  events.addEventListener("error", () => {
    if (serverThere.peek() === true) void tryServer();
    if (events.readyState !== EventSource.CLOSED) return;  // the browser tries again
    setTimeout(() => { if (!signal.aborted) watch(id, heard); }, AGAIN_MS);
  });
  return () => events.close();
}

news?.addEventListener("message", ({ data }: MessageEvent<News>) => {
  if (open && data.id === open.id) open.heard(data.revision);
});

if (typeof document !== "undefined") {
  document.addEventListener("visibilitychange", () => {
    if (!open) return;
    const { id, heard } = open;
    watch(id, heard);
    if (!hidden()) heard();
  });
}
