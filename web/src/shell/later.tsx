// Parts of the page that come when they are first needed, or before, when the page has time.

import { signal, type Signal } from "@preact/signals";
import type { ComponentType } from "preact";
import { useEffect } from "preact/hooks";
import { renew } from "../offline";
import { say } from "../words";

type Came<P> = { is: ComponentType<P> } | "coming" | "lacking";

/** A browser may remember that a part did not come: after so many tries only a new page helps. */
const ENOUGH_TRIES = 2;

const all: Array<() => Promise<void>> = [];

export type Later<P> = ComponentType<P> & {
  /** Ends when it is there, or was not to be had. */
  fetch: () => Promise<void>;
};

/** A component that is fetched with the first of its uses; until it is there the page says so. */
export function later<P extends object>(load: () => Promise<ComponentType<P>>, quiet = false):
Later<P> {
  const came: Signal<Came<P>> = signal<Came<P>>("coming");
  let fetching: Promise<void> | undefined;
  let failed = 0;
  const fetch = (): Promise<void> => fetching ??= load().then(
    (is) => { came.value = { is }; },
    (error) => {
      console.warn(error);
      fetching = undefined;
      failed += 1;
      came.value = "lacking";
    });
  all.push(fetch);
  function Part(props: P) {
    useEffect(() => { void fetch(); }, []);
    const now = came.value;
    if (typeof now === "object") return <now.is {...props} />;
    if (now === "coming") return quiet ? null : <p class="sheet" role="status">{say("shell.room_coming")}</p>;
    return (
      <p class="sheet" role="status">
        {say("shell.room_lacks")}{" "}
        <button type="button" onClick={() => { came.value = "coming"; void fetch(); }}>{say("shell.rest_try")}</button>
        {failed >= ENOUGH_TRIES && (
          <>
            {" "}
            <button type="button" onClick={() => void renew()}>{say("shell.renew")}</button>
          </>
        )}
      </p>
    );
  }
  return Object.assign(Part, { fetch });
}

/** Fetches all of them one after the other, so that they are there at once and without a network. */
export async function fetchParts(): Promise<void> {
  for (const fetch of all) await fetch();
}
