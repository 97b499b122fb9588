// Two modules, one after the other: a small one that is soon here and answers what a first visit
// asks, and the whole one, to which everything goes once it is here and has practised.

import type { AnswerOf, BodyOf, EngineAbout, Faults, Verb } from "../contract";
import { EngineFaults, NotLoaded, OtherBuild, Overtaken, RestAway } from "./faults";
import type { Lane as Whole } from "./lane";
import type { Rest } from "./rest";

/** What the small module takes; of `first` only the jobs that it says it can do. */
const small: readonly Verb[] = ["about", "check", "first"];

/** The small module's word for a job that the whole one must be asked about. */
const ELSEWHERE = "elsewhere";

/** So long a `first` waits for the small module alone; then the whole one is asked as well. */
export const PATIENCE_MS = 2000;

type Lane = Pick<Whole, "call" | "clear" | "renew" | "retire" | "warm">;
/** What the small module said, or as what it is told where the whole one does not come either. */
type Said = { answer: unknown } | { none: typeof NotLoaded };

export interface Parts {
  /** Null where the whole module is there from the beginning. */
  early: Lane | null;
  lanes: Record<Verb, Lane>;
  fetchWhole: () => Promise<unknown>;
  tell: (rest: Rest) => void;
  /** The whole module that came is of another build. */
  other: () => void;
  /** Whether a `first` waits for the whole module. */
  hold: (held: boolean) => void;
}

export class HandOver {
  #early: Lane | null;
  #coming: Promise<void> | undefined;
  #here = false;
  #arrive = () => {};
  readonly #arrived = new Promise<void>((done) => { this.#arrive = done; });
  /** What the small module says of itself; empty until it has. */
  #about = "";
  #asksAbout = false;

  constructor(readonly parts: Parts) {
    this.#early = parts.early;
  }

  /**
   * Lets the engine do one thing, by whichever module can. Where it would have to wait for the whole
   * one and `newer` is aborted, it ends as Overtaken.
   */
  async work<V extends Verb>(verb: V, body: BodyOf<V>, newer?: AbortSignal): Promise<AnswerOf<V>> {
    const text = JSON.stringify(body);
    const early = this.#early;
    if (!early || !small.includes(verb)) return this.#whole(verb, text, { newer });
    const said = this.#bySmall(early, verb, text);
    if (verb === "first" && await isLate(said)) return this.#bySooner(verb, text, said, newer);
    return this.#after(verb, text, await said, newer);
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

  async #bySmall(early: Lane, verb: Verb, text: string): Promise<Said> {
    try {
      const answer = JSON.parse(await early.call(verb, text));
      if (!isElsewhere(answer)) {
        this.#askAbout(early);
        return { answer };
      }
      early.renew();  // it broke off where it stood: what it held then is not given back
      return { none: RestAway };
    } catch (error) {
      if (!(error instanceof NotLoaded) && !(error instanceof Overtaken)) console.warn(error);
      return { none: NotLoaded };
    }
  }

  #askAbout(early: Lane): void {
    if (this.#asksAbout) return;
    this.#asksAbout = true;
    early.call("about", "{}").then((text) => { this.#about = text; }, () => {});
  }

  async #after<V extends Verb>(verb: V, text: string, said: Said, newer?: AbortSignal):
  Promise<AnswerOf<V>> {
    if ("answer" in said) return sound<V>(said.answer);
    try {
      return await this.#whole(verb, text, { none: said.none, newer });
    } catch (error) {
      if (error instanceof RestAway) void this.#early?.warm().catch(() => {});
      throw error;
    }
  }

  /** By whichever module answers first; where it is the whole one, the other is given up. */
  async #bySooner<V extends Verb>(verb: V, text: string, said: Promise<Said>, newer?: AbortSignal):
  Promise<AnswerOf<V>> {
    const enough = new AbortController();
    newer?.addEventListener("abort", () => enough.abort());
    if (newer?.aborted) enough.abort();
    const whole = this.#whole(verb, text, { newer: enough.signal });
    const bySmall = said.then((now) => {
      if ("none" in now) return whole.catch((error) => { throw as(now.none, error); });
      enough.abort();
      return sound<V>(now.answer);
    });
    const byWhole = whole.catch(async (error) => {
      if (!(error instanceof NotLoaded)) throw error;
      await unless(enough.signal, this.#arrived);  // the small one may still answer meanwhile
      return this.#whole(verb, text);
    }).then((answer) => {
      if (!enough.signal.aborted) this.#giveUpSmall();
      return answer;
    });
    try {
      return await Promise.race([bySmall, byWhole]);
    } catch (error) {
      if (error instanceof Overtaken) this.#early?.clear();  // nobody waits for it any more
      throw error;
    }
  }

  #giveUpSmall(): void {
    const early = this.#early;
    this.takeOver();
    early?.clear();
  }

  async #wait(first: boolean, none: typeof NotLoaded, newer?: AbortSignal): Promise<void> {
    if (first) this.parts.hold(true);
    try {
      await unless(newer, this.fetchRest());
    } catch (error) {
      throw as(none, error as Error);
    } finally {
      if (first) this.parts.hold(false);
    }
  }

  async #fetch(): Promise<void> {
    this.parts.tell("coming");
    try {
      await this.parts.fetchWhole();
      if (await this.#differs()) throw new OtherBuild("another version or other data");
      this.#here = true;
      this.#arrive();
      this.parts.tell("here");
    } catch (error) {
      this.#coming = undefined;
      if (error instanceof OtherBuild) this.parts.other();
      this.parts.tell("away");
      throw new RestAway(String(error));
    }
  }

  /** Whether the modules are of two builds: what one answered cannot stand beside the other's. */
  async #differs(): Promise<boolean> {
    if (!this.#about) return false;
    const said = await this.parts.lanes.about.call("about", "{}").catch(() => this.#about);
    const [small, whole] = [this.#about, said].map((text) => JSON.parse(text) as EngineAbout);
    return small!.version !== whole!.version || small!.data_version !== whole!.data_version;
  }

  async #whole<V extends Verb>(
    verb: V, text: string, how: { none?: typeof NotLoaded; newer?: AbortSignal | undefined } = {},
  ): Promise<AnswerOf<V>> {
    if (!this.#here) await this.#wait(verb === "first", how.none ?? RestAway, how.newer);
    return sound<V>(JSON.parse(await this.parts.lanes[verb].call(verb, text)));
  }
}

/** What a call is told that needed what did not come. */
const as = (none: typeof NotLoaded, error: Error): Error =>
  (error instanceof NotLoaded ? new none(error.message) : error);

async function isLate(said: Promise<unknown>): Promise<boolean> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<boolean>((done) => { timer = setTimeout(done, PATIENCE_MS, true); });
  const is = await Promise.race([said.then(() => false), late]);
  clearTimeout(timer);
  return is;
}

/** What `coming` brings; Overtaken once `newer` is aborted. */
function unless<T>(newer: AbortSignal | undefined, coming: Promise<T>): Promise<T> {
  if (!newer) return coming;
  return new Promise((done, failed) => {
    const end = () => failed(new Overtaken());
    if (newer.aborted) end();
    newer.addEventListener("abort", end);
    coming.then(done, failed);
  });
}

function isElsewhere(answer: Faults): boolean {
  return answer.format === "toft-faults/1" && answer.faults.length === 1
    && answer.faults[0]!.code === ELSEWHERE;
}

function sound<V extends Verb>(answer: unknown): AnswerOf<V> {
  if ((answer as Faults).format === "toft-faults/1") throw new EngineFaults((answer as Faults).faults);
  return answer as AnswerOf<V>;
}
