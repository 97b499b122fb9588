// The engine as the page calls it: work(verb, body). Three lanes, so that a change on screen never
// waits for what takes seconds: `quick` for what follows a touch, `slow` for what may be cleared
// when the job changes, `paper` for what is drawn (its module is fetched when first needed).

import type { AnswerOf, BodyOf, Faults, Verb } from "../contract";
import { EngineFaults } from "./faults";
import { Lane, type WorkerLike } from "./lane";
import { latestWins } from "./latest";
import { moduleFile } from "./files";
import EngineWorker from "./start";

export { EngineFaults, NotLoaded, Overtaken } from "./faults";

const start = (): WorkerLike => EngineWorker() as unknown as WorkerLike;
const quick = new Lane(start, () => moduleFile("toft"));
const slow = new Lane(start, () => moduleFile("toft"));
const paper = new Lane(start, () => moduleFile("toft-papers"));

const lanes: Record<Verb, Lane> = {
  first: quick, explain: quick, why: quick, readings: quick, prices: quick, check: quick,
  about: quick, design: slow, ask: slow, levers: slow, picture: paper, paper,
};

/** Lets the engine do one thing. Throws EngineFaults, or Overtaken when it was cleared. */
export async function work<V extends Verb>(verb: V, body: BodyOf<V>): Promise<AnswerOf<V>> {
  const answer = JSON.parse(await lanes[verb].call(verb, JSON.stringify(body)));
  if ((answer as Faults).format === "toft-faults/1") throw new EngineFaults(answer.faults);
  return answer as AnswerOf<V>;
}

/** `first`, of which only the newest call counts. */
export const workFirst = latestWins((body: BodyOf<"first">) => work("first", body));

/** Ends what is being worked out in the background; its callers see Overtaken. */
export function clearSlow(): void {
  slow.clear();
}

export async function warmEngine(): Promise<void> {
  await quick.warm();
}
