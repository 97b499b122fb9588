// Two modules, one after the other: a small one that is soon here and answers what a first visit
// asks, and the whole one, to which everything goes once it is here and has practised.

import type { AnswerOf, BodyOf, Faults, Verb } from "../contract";
import { EngineFaults, NotLoaded, Overtaken, RestAway } from "./faults";
import type { Lane as Whole } from "./lane";
import type { Rest } from "./rest";

/** What the small module takes; of `first` only the jobs that it says it can do. */
const small: readonly Verb[] = ["about", "check", "first"];

/** The small module's word for a job that the whole one must be asked about. */
const ELSEWHERE = "elsewhere";

type Lane = Pick<Whole, "call" | "retire" | "warm">;

export interface Parts {
  /** Null where the whole module is there from the beginning. */
  early: Lane | null;
  lanes: Record<Verb, Lane>;
  fetchWhole: () => Promise<unknown>;
  tell: (rest: Rest) => void;
  /** Whether a `first` waits for the whole module. */
  hold: (held: boolean) => void;
}

export class HandOver {
  #early: Lane | null;
  #coming: Promise<void> | undefined;
  #here = false;

  constructor(readonly parts: Parts) {
    this.#early = parts.early;
  }

  /** Lets the engine do one thing, by whichever module can. */
  async work<V extends Verb>(verb: V, body: BodyOf<V>): Promise<AnswerOf<V>> {
    const text = JSON.stringify(body);
    if (!this.#early || !small.includes(verb)) return this.#whole(verb, text);
    let none = NotLoaded;
    try {
      const answer = JSON.parse(await this.#early.call(verb, text));
      if (!isElsewhere(answer)) return sound<V>(answer);
      none = RestAway;
    } catch (error) {
      if (error instanceof EngineFaults || error instanceof Overtaken) throw error;
      if (!(error instanceof NotLoaded)) console.warn(error);
    }
    return this.#whole(verb, text, none);
  }

  /** The same by the whole module, though the small one still answers: it practises. */
  async practise<V extends Verb>(verb: V, body: BodyOf<V>): Promise<AnswerOf<V>> {
    return this.#whole(verb, JSON.stringify(body));
  }

  /** Fetches the whole module where it is not here. Throws RestAway when it cannot be had. */
  fetchRest(): Promise<void> {
    this.#coming ??= this.#fetch();
    return this.#coming;
  }

  /** From now on everything goes to the whole module; the small one ends what it is at. */
  takeOver(): void {
    this.#early?.retire();
    this.#early = null;
  }

  async warm(): Promise<void> {
    if (this.#early) return this.#early.warm();
    await this.fetchRest();
    await this.parts.lanes.first.warm();
  }

  async #wait(first: boolean, none: typeof NotLoaded): Promise<void> {
    if (first) this.parts.hold(true);
    try {
      await this.fetchRest();
    } catch (error) {
      throw new none((error as Error).message);
    } finally {
      if (first) this.parts.hold(false);
    }
  }

  async #fetch(): Promise<void> {
    this.parts.tell("coming");
    try {
      await this.parts.fetchWhole();
      this.#here = true;
      this.parts.tell("here");
    } catch (error) {
      this.#coming = undefined;
      this.parts.tell("away");
      throw new RestAway(String(error));
    }
  }

  async #whole<V extends Verb>(verb: V, text: string, none: typeof NotLoaded = RestAway):
  Promise<AnswerOf<V>> {
    if (!this.#here) await this.#wait(verb === "first", none);
    return sound<V>(JSON.parse(await this.parts.lanes[verb].call(verb, text)));
  }
}

function isElsewhere(answer: Faults): boolean {
  return answer.format === "toft-faults/1" && answer.faults.length === 1
    && answer.faults[0]!.code === ELSEWHERE;
}

function sound<V extends Verb>(answer: unknown): AnswerOf<V> {
  if ((answer as Faults).format === "toft-faults/1") throw new EngineFaults((answer as Faults).faults);
  return answer as AnswerOf<V>;
}
