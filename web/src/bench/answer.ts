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
/** Raised with each question: what an earlier one was answered is not shown as of now. */
let turn = 0;
let asking = 0;

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
  turn += 1;
  if (pace === "typing") typing = setTimeout(() => void answerNow(), TYPING_MS);
  else void answerNow();
}

export async function answerNow(): Promise<void> {
  if (!job.peek()) return;
  const id = jobId.peek();
  const another = () => jobId.peek() !== id;  // opened meanwhile: it asks for itself
  clearTimeout(idle);
  clearSlow();
  turn += 1;
  asking += 1;
  saying ??= setTimeout(() => { working.value = true; }, SAY_MS);
  try {
    const answer = await workFirst(body());
    if (another()) return;
    first.value = answer;
    faults.value = [];
  } catch (error) {
    if (error instanceof Overtaken || another()) return;
    faults.value = error instanceof EngineFaults ? error.faults : [programFault(error)];
  } finally {
    asking -= 1;
  }
  clearTimeout(saying);
  saying = undefined;
  working.value = false;
  clearTimeout(idle);
  idle = setTimeout(() => void answerRest(), IDLE_MS);
}

/** Whether an answer is on its way. */
export const isAsking = (): boolean => asking > 0;

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

/** Ends early when `past`: what a touch needs is not held up by practice for an earlier state. */
async function practise(asked: Omit<Body, "key">, past: () => boolean): Promise<void> {
  for (; practised < PRACTICE; practised += 1) {
    const begun = performance.now();
    await practiseFor("first", asked);
    if (performance.now() - begun > LONGEST_PRACTICE_MS) break;  // a change would wait for it
    await new Promise((done) => setTimeout(done, PRACTICE_PAUSE_MS));
    if (past()) return;
  }
  takeOver();
}

/** What the whole module is asked once the page is quiet; it is fetched for that. */
export async function answerRest(): Promise<void> {
  const mine = turn;
  const id = jobId.peek();
  const past = () => turn !== mine || jobId.peek() !== id;
  try {
    await fetchRest();
    if (past() || faults.peek().length > 0) return;
    const { key: _, ...asked } = body();
    const open = await work("ask", asked);
    if (past()) return;
    ask.value = open;
    await practise(asked, past);
    if (past()) return;
    const changes = await work("levers", asked);
    if (past()) return;
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
