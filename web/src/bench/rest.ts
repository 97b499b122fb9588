// The rest of the engine where it did not come at once: tried again, and what waited for it then goes
// on. What is here goes on answering meanwhile.

import { effect } from "@preact/signals";
import { otherBuild, rest } from "../engine/rest";
import { answerNow, answerRest, isAsking } from "./answer";
import { faults, NOT_WHOLE } from "./state";

const FIRST_WAIT_MS = 4000;
const LONGEST_WAIT_MS = 60000;

/** Whether the job on the bench has no answer because the rest was not here. */
const lacksAnswer = (): boolean => faults.peek().some(({ code }) => code === NOT_WHOLE);

/** Tries to fetch it now. */
export function tryRest(): void {
  if (rest.peek() !== "away") return;
  void (lacksAnswer() ? answerNow() : answerRest());
}

/**
 * Tries again while it is away: when the network comes back, and after a while, which grows with
 * each try of its own; not where the program has another build by now. Whoever fetched it: a job
 * that lacked it is answered when it is here.
 */
export function keepTryingRest(): () => void {
  let wait = FIRST_WAIT_MS;
  const atOnce = () => {
    wait = FIRST_WAIT_MS;
    tryRest();
  };
  const afterAWhile = () => {
    wait = Math.min(LONGEST_WAIT_MS, wait * 2);
    tryRest();
  };
  addEventListener("online", atOnce);
  const end = effect(() => {
    if (rest.value === "here" && lacksAnswer() && !isAsking()) void answerNow();
    if (rest.value !== "away" || otherBuild.value) return undefined;
    const timer = setTimeout(afterAWhile, wait);
    return () => clearTimeout(timer);
  });
  return () => {
    removeEventListener("online", atOnce);
    end();
  };
}
