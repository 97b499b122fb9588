import { useId, useState } from "preact/hooks";
import { get, set } from "../bench";
import { say } from "../words";
import { rowOf } from "./rows";
import { did } from "./did";
import { called, toldOf } from "./words";

interface Named {
  standard: string;
  rating_a: number;
  curve?: string | null;
}

const ratings = [16, 20, 25, 32, 40, 45, 50, 60, 63, 80, 100, 125];

interface Props {
  pointer: string;
  onTaken?: () => void;
  closed?: boolean;
}

/** A fuse or breaker by what is printed on it. Half of it is not kept: both are needed. */
export function DeviceField({ pointer, onTaken, closed }: Props) {
  const id = useId();
  const stated = get<Named | null>(pointer) ?? null;
  const [standard, setStandard] = useState(stated?.standard ?? "");
  const [rating, setRating] = useState(stated ? String(stated.rating_a) : "");
  const standards = rowOf(`${pointer}/standard`)?.words ?? [];
  const usual = rowOf(pointer)?.usual ?? [];
  const listed = [...new Set([...usual, ...ratings, ...(rating ? [Number(rating)] : [])])];
  const keep = (word: string, amperes: string) => {
    setStandard(word);
    setRating(amperes);
    if (!word || !amperes) return;
    const device = { ...(stated ?? {}), standard: word, rating_a: Number(amperes) };
    set(pointer, device, did(pointer, device));
    onTaken?.();
  };
  const forget = () => {
    setStandard("");
    setRating("");
    set(pointer, undefined, did(pointer, undefined));
  };
  return (
    <fieldset class="field device">
      <legend>{called(pointer)}</legend>
      {toldOf(pointer) && <p class="tell">{toldOf(pointer)}</p>}
      <div class="row">
        <label for={`${id}-a`}>{say("fact.rating")}</label>
        <select id={`${id}-a`} value={rating} onChange={(e) => keep(standard, e.currentTarget.value)}>
          <option value="">{say("fact.unknown")}</option>
          {listed.sort((a, b) => a - b).map((a) => <option key={a} value={String(a)}>{a} A</option>)}
        </select>
        <label for={`${id}-s`}>{say("fact.standard")}</label>
        <select id={`${id}-s`} value={standard} onChange={(e) => keep(e.currentTarget.value, rating)}>
          <option value="">{say("fact.unknown")}</option>
          {standards.map((word) => <option key={word} value={word}>{word}</option>)}
        </select>
      </div>
      {Boolean(standard) !== Boolean(rating) && <p class="say" role="status">{say("fact.both")}</p>}
      {!closed && (
        <div class="row quiet">
          <button type="button" aria-pressed={!stated && !standard && !rating} onClick={forget}>
            {say("fact.not_known")}
          </button>
        </div>
      )}
    </fieldset>
  );
}
