import { useEffect, useState } from "preact/hooks";
import { faults, get, job, ownPrices, set } from "../../bench";
import type { First, Job } from "../../contract";
import { EngineFaults, work } from "../../engine";
import { Choice } from "../../fact/Choice";
import { rowOf } from "../../fact/rows";
import { did } from "../../fact/did";
import { called, wordTold } from "../../fact/words";
import { say } from "../../words";

const IDLE_MS = 500;
const fact = "/intake/earthing";
const words = () => rowOf(fact)!.words!;

interface Outcome {
  earthing: string;
  says: string;
}

function outcomeOf(earthing: string, answer: First): Outcome {
  const best = answer.schemes[0];
  if (!best) return { earthing, says: say("place.if_none") };
  const { total, currency } = best.price;
  const price = new Intl.NumberFormat("en-GB", { style: "currency", currency, maximumFractionDigits: 0 })
    .format(total);
  return { earthing, says: `${best.sentence} ${say("place.if_price", { price })}` };
}

/**
 * The answer for each earthing the supply might have; nothing while other facts are missing. Between
 * two of them it gives up when the job has changed, so that the engine is free for what was touched.
 */
async function outcomes(
  stated: Job, prices: string | null, still: () => boolean,
): Promise<Outcome[]> {
  const found: Outcome[] = [];
  for (const earthing of words()) {
    if (!still()) return [];
    const tried = { ...stated, intake: { ...stated.intake, earthing } } as Job;
    try {
      found.push(outcomeOf(earthing, await work("first", { job: tried, ...(prices ? { prices } : {}) })));
    } catch (error) {
      if (error instanceof EngineFaults) return [];
      throw error;
    }
  }
  return found;
}

/** While nobody knows the earthing: what the answer would be for each, and that none of it holds. */
export function EarthingOpen() {
  const [found, setFound] = useState<Outcome[]>([]);
  const open = job.value !== null && !get(fact);
  const only = faults.value.length === 1;
  useEffect(() => {
    let now = true;
    if (!open || !only) setFound([]);
    const timer = open && only ? setTimeout(() => {
      void outcomes(job.peek()!, ownPrices.peek(), () => now)
        .then((all) => { if (now) setFound(all); })
        .catch((error: unknown) => console.warn(error));
    }, IDLE_MS) : undefined;
    return () => {
      now = false;
      clearTimeout(timer);
    };
  }, [job.value, open, only]);
  if (!open) return null;
  return (
    <div class="open-earthing">
      <p>
        <strong>{say("place.earthing_matters")}</strong> {say("place.earthing_hangs")}{" "}
        {found.length > 0 && say("place.earthing_below")}
      </p>
      {found.length > 0 && (
        <dl>
          {found.map(({ earthing, says }) => (
            <div key={earthing}>
              <dt>{say("place.if_earthing", { earthing })}</dt>
              <dd>{says} <em>{say(`place.if_lost.${earthing}` as "place.if_lost.TT")}</em></dd>
            </div>
          ))}
        </dl>
      )}
    </div>
  );
}

function HowToTell() {
  return (
    <details class="more">
      <summary>{say("place.tell_earthing")}</summary>
      <p>{say("place.tell_look")}</p>
      <ul>
        <li>{say("place.tell_tns")}</li>
        <li>{say("place.tell_tncs")}</li>
        <li>{say("place.tell_tt")}</li>
      </ul>
      <p>{say("place.tell_deceives")}</p>
    </details>
  );
}

export function EarthingField({ big, onTaken, closed }: { big?: boolean; onTaken?: () => void; closed?: boolean }) {
  const stated = get<string | null>(fact) ?? null;
  const options = words().map((word) => ({ value: word, text: word, tell: wordTold(fact, word) }));
  return (
    <>
      <Choice
        legend={called(fact)} big={big} value={stated ?? "?"}
        options={closed ? options : [...options, { value: "?", text: say("fact.not_known") }]}
        onChoose={(word) => {
          const stated = word === "?" ? undefined : word;
          set(fact, stated, did(fact, stated));
          if (word !== "?") onTaken?.();
        }}
      />
      <HowToTell />
      <EarthingOpen />
    </>
  );
}
