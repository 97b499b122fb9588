// What the engine is asked for when something is opened. What was there stays until the new comes.

import { useEffect, useRef, useState } from "preact/hooks";
import { job, jobId, ownPrices, rest } from "../bench";
import type { AnswerOf, BodyOf, Job, Verb } from "../contract";
import { fetchRest, Overtaken, RestAway, work } from "../engine";
import { latestWins } from "../engine/latest";
import { shownFirst } from "./told";

export interface Asked<T> {
  answer: T | null;
  failed: unknown;
  waiting: boolean;
}

type Rest<V extends Verb> = Omit<BodyOf<V>, "job" | "prices">;

/** Job and prices as every verb takes them. */
export function whole(): { job: Job; prices?: string } {
  const prices = ownPrices.peek();
  return { job: job.peek()!, ...(prices ? { prices } : {}) };
}

interface Question<V extends Verb> { verb: V; body: BodyOf<V>; idle: () => boolean }

/** What one asker asks: while the whole module is on its way only the newest of it waits. */
const asker = <V extends Verb>() => latestWins(async ({ verb, body, idle }: Question<V>) => {
  if (rest.peek() !== "here") await fetchRest();
  if (idle()) throw new Overtaken();
  return work(verb, body);
});

/** Asks `verb` now and again after each answer to a change, as long as it is shown. */
export function useWork<V extends Verb>(verb: V, body: Rest<V> | null): Asked<AnswerOf<V>> {
  const id = jobId.value;
  const nothing = { answer: null, failed: null, waiting: true, of: id };
  const [state, setState] = useState<Asked<AnswerOf<V>> & { of: string | null }>(nothing);
  const answered = shownFirst.value;
  const asks = body === null ? "" : JSON.stringify(body);
  const own = useRef<ReturnType<typeof asker<V>> | null>(null);
  own.current ??= asker<V>();
  const [lacks, setLacks] = useState(false);
  const again = lacks && rest.value === "here";
  useEffect(() => {
    if (!asks || !job.peek()) return undefined;
    let gone = false;
    setState((was) => (was.of === id ? { ...was, waiting: true } : nothing));
    const body = { ...whole(), ...JSON.parse(asks) } as BodyOf<V>;
    own.current!({ verb, body, idle: () => gone }).then(
      (answer) => {
        if (!gone) setState({ answer, failed: null, waiting: false, of: id });
      },
      (failed) => {
        if (gone || failed instanceof Overtaken) return;
        if (failed instanceof RestAway) return setLacks(true);  // goes on waiting for it
        setState((was) => ({ ...was, failed, waiting: false }));
      },
    );
    return () => {
      gone = true;
    };
  }, [verb, asks, answered, id, again]);
  return state.of === id ? state : nothing;  // never what another job was answered
}
