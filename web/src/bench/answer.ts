// After each change: `first` at once, then what is open, then what one change would bring. The old
// answer stays on screen until the new one is there.

import {
  clearSlow, EngineFaults, fetchRest, NotLoaded, Overtaken, practiseFor, RestAway, takeOver, work,
  workFirst,
} from "../engine";
import type { Fault, Job } from "../contract";
import {
  ask, behind, BROKE_OFF, chosenKey, faults, first, job, jobId, levers, NOT_LOADED, NOT_WHOLE,
  ownPrices, working,
} from "./state";

const TYPING_MS = 120;
const SAY_MS = 150;
const IDLE_MS = 250;

let typing: ReturnType<typeof setTimeout> | undefined;
let idle: ReturnType<typeof setTimeout> | undefined;
let saying: ReturnType<typeof setTimeout> | undefined;

interface Body { job: Job; prices?: string; key?: string }

function body(): Body {
  const prices = ownPrices.peek();
  const key = chosenKey.peek();
  return { job: job.peek()!, ...(prices ? { prices } : {}), ...(key ? { key } : {}) };
}

/** Asks the engine anew, at once or when the typing stops for a moment. */
export function answerSoon(pace: "tap" | "typing"): void {
  clearTimeout(typing);
  behind.value = true;
  if (pace === "typing") typing = setTimeout(() => void answerNow(), TYPING_MS);
  else void answerNow();
}

export async function answerNow(): Promise<void> {
  if (!job.peek()) return;
  const id = jobId.peek();
  const another = () => jobId.peek() !== id;  // opened meanwhile: it asks for itself
  clearTimeout(idle);
  clearSlow();
  saying ??= setTimeout(() => { working.value = true; }, SAY_MS);
  try {
    const answer = await workFirst(body());
    if (another()) return;
    first.value = answer;
    faults.value = [];
  } catch (error) {
    if (error instanceof Overtaken || another()) return;
    faults.value = error instanceof EngineFaults ? error.faults : [programFault(error)];
  }
  clearTimeout(saying);
  saying = undefined;
  working.value = false;
  idle = setTimeout(() => void answerRest(), IDLE_MS);
}

function programCode(error: unknown): string {
  if (error instanceof RestAway) return NOT_WHOLE;
  return error instanceof NotLoaded ? NOT_LOADED : BROKE_OFF;
}

const programFault = (error: unknown): Fault => ({
  code: programCode(error),
  pointer: "", says: String(error), nearest: null, allowed: [],
});

/**
 * Browsers compile better what runs often: the whole module practises while the small one still
 * answers, and takes over when a change is as quick as it will be.
 */
const PRACTICE = 6;
const PRACTICE_PAUSE_MS = 60;
const LONGEST_PRACTICE_MS = 500;
let practised = 0;

async function practise(asked: Omit<Body, "key">): Promise<void> {
  for (; practised < PRACTICE; practised += 1) {
    const begun = performance.now();
    await practiseFor("first", asked);
    if (performance.now() - begun > LONGEST_PRACTICE_MS) break;  // a change would wait for it
    await new Promise((done) => setTimeout(done, PRACTICE_PAUSE_MS));
  }
  takeOver();
}

/** What the whole module is asked once the page is quiet; it is fetched for that. */
export async function answerRest(): Promise<void> {
  const id = jobId.peek();
  try {
    await fetchRest();
    if (jobId.peek() !== id || faults.peek().length > 0) return;
    const { key: _, ...asked } = body();
    const open = await work("ask", asked);
    if (jobId.peek() !== id) return;
    ask.value = open;
    await practise(asked);
    const changes = await work("levers", asked);
    if (jobId.peek() !== id) return;
    levers.value = changes;
    behind.value = false;
  } catch (error) {
    if (!(error instanceof Overtaken) && !(error instanceof RestAway)) console.warn(error);
  }
}

/** Looks at another scheme of the list; null for the first. */
export function choose(key: string | null): void {
  chosenKey.value = key;
  void answerNow();
}
