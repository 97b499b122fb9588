// The rest of the engine where it did not come at once: tried again, and what waited for it then goes
// on. What is here goes on answering meanwhile.

import { effect } from "@preact/signals";
import { rest } from "../engine/rest";
import { answerNow, answerRest } from "./answer";
import { faults, NOT_WHOLE } from "./state";

const FIRST_WAIT_MS = 4000;
const LONGEST_WAIT_MS = 60000;

/** Tries to fetch it now. */
export function tryRest(): void {
  if (rest.peek() !== "away") return;
  const lacked = faults.peek().some(({ code }) => code === NOT_WHOLE);
  void (lacked ? answerNow() : answerRest());
}

/** Tries again while it is away: when the network comes back, and after a while. */
export function keepTryingRest(): void {
  let wait = FIRST_WAIT_MS;
  addEventListener("online", () => {
    wait = FIRST_WAIT_MS;
    tryRest();
  });
  effect(() => {
    if (rest.value !== "away") return undefined;
    const timer = setTimeout(tryRest, wait);
    wait = Math.min(LONGEST_WAIT_MS, wait * 2);
    return () => clearTimeout(timer);
  });
}
