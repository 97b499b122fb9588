// The page kept by the browser, and whether it still fits the program behind it.

import { effect, signal } from "@preact/signals";
import { about, rest, serverThere } from "../bench";
import type { EngineAbout } from "../contract";
import { work } from "../engine";
import { otherBuild } from "../engine/rest";

/** True where the program has another edition than this page and its engine. */
export const outdated = signal(false);

effect(() => {
  if (otherBuild.value) outdated.value = true;
});

const keeps = (): boolean => import.meta.env.PROD && isSecureContext && "serviceWorker" in navigator
  && location.protocol !== "file:";

/**
 * Notices when the browser takes up another build of the page than the one that is open; from the
 * beginning, so that none goes by.
 */
export function followBuild(kept = keeps() ? navigator.serviceWorker : undefined): void {
  if (!kept) return;
  let before = kept.controller;
  kept.addEventListener("controllerchange", () => {
    if (before) outdated.value = true;
    before = kept.controller;
  });
}

/** Lets the browser keep the page; where it cannot (plain http from elsewhere), nothing changes. */
export async function keepPage(): Promise<void> {
  followEdition();
  if (!keeps()) return;
  await restHere();  // what keeps the page fetches all of it: the first answer goes before
  try {
    await navigator.serviceWorker.register(new URL("sw.js", document.baseURI));
  } catch (error) {
    console.warn(error);
  }
}

const restHere = (): Promise<void> => new Promise((done) => {
  effect(() => {
    if (rest.value === "here") done();
  });
});

export const sameEdition = (page: EngineAbout, program: EngineAbout): boolean =>
  page.version === program.version && page.data_version === program.data_version
  && page.edition === program.edition;

/** Compares the engine of this page with the program, each time the program is reached. */
function followEdition(): void {
  let own: EngineAbout | undefined;
  about.subscribe(async (program) => {
    if (!program || serverThere.peek() === "never") return;
    try {
      own ??= await work("about", {});
      if (!sameEdition(own, program)) outdated.value = true;
    } catch {
      // told with the first answer
    }
  });
}

const RENEW_MS = 10_000;

/** Fetches the page as the program has it now. */
export async function renew(): Promise<void> {
  const kept = await navigator.serviceWorker?.getRegistration().catch(() => undefined);
  await kept?.update().catch(() => {});
  const coming = kept?.installing ?? kept?.waiting;
  if (coming) {
    await new Promise<void>((done) => {
      setTimeout(done, RENEW_MS);
      coming.addEventListener("statechange", () => {
        if (coming.state === "activated" || coming.state === "redundant") done();
      });
    });
  }
  location.reload();
}
