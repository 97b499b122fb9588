// The engine as the page calls it: work(verb, body). The small module answers first, then the whole
// one in three lanes, so that a change on screen never waits for what takes seconds: `quick` for what
// follows a touch, `slow` for what may be cleared when the job changes, `paper` for what is drawn.

import type { BodyOf, Verb } from "../contract";
import { isInside, moduleFile } from "./files";
import { HandOver } from "./handover";
import { Lane, type WorkerLike } from "./lane";
import { latestWins } from "./latest";
import { firstHeld, otherBuild, rest } from "./rest";
import EngineWorker from "./start";

export { EngineFaults, NotLoaded, Overtaken, RestAway } from "./faults";

const start = (): WorkerLike => EngineWorker() as unknown as WorkerLike;
const whole = () => moduleFile("toft");
const quick = new Lane(start, whole);
const slow = new Lane(start, whole);
const paper = new Lane(start, whole);

const lanes: Record<Verb, Lane> = {
  first: quick, explain: quick, why: quick, readings: quick, prices: quick, check: quick,
  about: quick, design: slow, ask: slow, levers: slow, picture: paper, paper,
};

const engine = new HandOver({
  early: isInside("toft") ? null : new Lane(start, () => moduleFile("toft-first")),
  lanes,
  fetchWhole: whole,
  tell: (now) => { rest.value = now; },
  other: () => { otherBuild.value = true; },
  hold: (held) => { firstHeld.value = held; },
});

/** Lets the engine do one thing. Throws EngineFaults, or Overtaken when it was cleared. */
export const work = engine.work.bind(engine) as typeof engine.work;
export const practiseFor = engine.practise.bind(engine) as typeof engine.practise;
export const fetchRest = () => engine.fetchRest();
export const takeOver = () => engine.takeOver();
export const warmEngine = () => engine.warm();

/** `first`, of which only the newest call counts. */
export const workFirst = latestWins(
  (body: BodyOf<"first">, newer) => engine.work("first", body, newer));

/** Ends what is being worked out in the background; its callers see Overtaken. */
export function clearSlow(): void {
  slow.clear();
}
