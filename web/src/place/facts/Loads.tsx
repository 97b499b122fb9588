import { useState } from "preact/hooks";
import { get, set } from "../../bench";
import { Choice } from "../../fact/Choice";
import { did } from "../../fact/did";
import { Field } from "../../fact/Field";
import { rowOf } from "../../fact/rows";
import { powerOf } from "../../fact/power";
import { wordSaid } from "../../fact/words";
import { hasWords, say } from "../../words";
import { addCircuit, remove } from "../edits";
import type { Circuit } from "../job";
import { edit } from "../state";
import { figureSaid } from "../telling";

const shortList = ["socket radial", "lighting", "fixed load", "motor", "vehicle charging"];

/** What a board calls a circuit of that kind, until somebody names it. */
function boardName(kind: string): string {
  const key = `place.name.${kind}`;
  return hasWords(key) ? say(key) : kind[0]!.toUpperCase() + kind.slice(1);
}

/** Kinds that must say what they draw; of the others the engine knows what is usual. */
const telling = ["fixed load", "motor", "welder", "pump", "freezer", "sub-board"];
const powers = (): [number, number] => {
  const row = rowOf("/buildings/0/circuits/0/load_w");
  return [row?.low ?? 0, row?.high ?? Infinity];
};

/** What is wrong with a power that was typed; empty where it fits. */
function wrong(kind: string, power: string): string {
  const [low, high] = powers();
  const read = powerOf(power, low, high);
  if (!read.fits) {
    return read.wants === "range"
      ? say("fact.wants.range", { low: low / 1000, high: high / 1000, unit: "kW" })
      : say(read.wants === "watts" ? "place.load_watts" : "fact.wants.number");
  }
  return read.watts === null && telling.includes(kind) ? say("place.load_needed") : "";
}

function AddCircuit({ building }: { building: string }) {
  const kinds = rowOf(`${building}/circuits/0/kind`)!.words!;
  const [kind, setKind] = useState<string | null>(null);
  const [all, setAll] = useState(false);
  const [power, setPower] = useState("");
  const offered = all ? [...shortList, ...kinds.filter((k) => !shortList.includes(k))] : shortList;
  const pointer = `${building}/circuits/0/kind`;
  const [refused, setRefused] = useState("");
  const add = () => {
    if (!kind) return;
    const fault = wrong(kind, power);
    setRefused(fault);
    if (fault) return document.getElementById("new-load")?.focus();
    const read = powerOf(power, ...powers());
    const circuit: Circuit = { name: boardName(kind), kind };
    if (read.fits && read.watts !== null) circuit.load_w = { value: read.watts, basis: "declared" };
    edit(say("place.did.circuit"), (job) => { addCircuit(job, building, circuit); });
    setKind(null);
    setPower("");
  };
  return (
    <div class="add">
      <Choice
        legend={say("place.load_add")} value={kind} onChoose={setKind}
        options={offered.map((word) => ({ value: word, text: wordSaid(pointer, word) }))}
      />
      {!all && <button type="button" class="plainly" onClick={() => setAll(true)}>{say("place.load_all")}</button>}
      {kind && (
        <form class="field figure row" onSubmit={(e) => { e.preventDefault(); add(); }}>
          <label for="new-load">{say("place.load_power", { what: wordSaid(pointer, kind) })}</label>
          <input
            id="new-load" inputMode="decimal" autocomplete="off" value={power}
            aria-invalid={refused !== ""} aria-describedby="new-load-say"
            onInput={(e) => { setPower(e.currentTarget.value); setRefused(""); }}
          />
          <span class="unit">kW</span>
          <button type="submit" class="press">{say("place.add")}</button>
          <p class="say" id="new-load-say" role="status">{refused}</p>
        </form>
      )}
    </div>
  );
}

const few = ["name", "load_w", "length_m"];

function CircuitFacts({ pointer, circuit }: { pointer: string; circuit: Circuit }) {
  const [open, setOpen] = useState(false);
  const motor = circuit.kind === "motor" || circuit.kind === "pump";
  const keys = [
    ...few, "power_factor", ...(motor ? ["starting_multiple", "starts_per_hour", "drive"] : []),
    "continuous", "later", "kind",
  ];
  const load = figureSaid(circuit.load_w, "kW", 1000);
  return (
    <li>
      <button type="button" class="thing-line" aria-expanded={open} onClick={() => setOpen(!open)}>
        <span>{circuit.name}</span> <span>{load}</span>
      </button>
      {open && (
        <div class="inner">
          {keys.map((key) => <Field key={key} pointer={`${pointer}/${key}`} />)}
          <button
            type="button" class="plainly"
            onClick={() => { edit(say("place.did.remove"), (job) => remove(job, pointer)); }}
          >{say("place.remove", { what: circuit.name })}</button>
        </div>
      )}
    </li>
  );
}

/** The load of the whole building, in kilowatts or in amperes: one of them, never both. */
function Whole({ building }: { building: string }) {
  const [inAmperes, setInAmperes] = useState(get(`${building}/load_a`) != null);
  const measure = (amperes: boolean) => {
    setInAmperes(amperes);
    const other = `${building}/${amperes ? "load_w" : "load_a"}`;
    if (get(other) != null) set(other, undefined, did(other, undefined));
  };
  const key = inAmperes ? "load_a" : "load_w";
  return (
    <>
      <Field key={key} pointer={`${building}/${key}`} />
      <div class="row quiet" role="group" aria-label={say("place.load_unit")}>
        {[false, true].map((amperes) => (
          <button
            key={String(amperes)} type="button" aria-pressed={inAmperes === amperes} onClick={() => measure(amperes)}
          >{say(amperes ? "place.load_in_a" : "place.load_in_kw")}</button>
        ))}
      </div>
    </>
  );
}

/** What a building will use: one figure for all of it, or what it feeds, one by one. */
export function Loads({ building }: { building: string }) {
  const circuits = get<Circuit[] | null>(`${building}/circuits`) ?? [];
  const stated = get(`${building}/load_w`) != null || get(`${building}/load_a`) != null;
  const [whole, setWhole] = useState(circuits.length === 0);
  const asWhole = circuits.length === 0 && whole;
  return (
    <section class="loads" aria-label={say("place.loads")}>
      {circuits.length === 0 && (
        <Choice
          legend={say("place.loads")} value={asWhole ? "whole" : "each"}
          onChoose={(how) => setWhole(how === "whole")}
          options={[
            { value: "whole", text: say("place.load_whole") },
            { value: "each", text: say("place.load_each") },
          ]}
        />
      )}
      {asWhole
        ? <Whole building={building} />
        : (
          <>
            {circuits.length > 0 && <h4>{say("place.loads")}</h4>}
            {stated && circuits.length === 0 && <p class="tell">{say("place.load_gives_way")}</p>}
            <ul class="things-list">
              {circuits.map((circuit, i) => (
                <CircuitFacts key={`${i} ${circuits.length}`} pointer={`${building}/circuits/${i}`} circuit={circuit} />
              ))}
            </ul>
            <AddCircuit building={building} />
          </>
        )}
    </section>
  );
}

