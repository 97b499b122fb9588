// The field of any fact, by what the format says stands there.

import { useId, useState } from "preact/hooks";
import { get, set } from "../bench";
import { say } from "../words";
import { Choice, open } from "./Choice";
import { DeviceField } from "./DeviceField";
import { FigureField } from "./FigureField";
import { rowOf } from "./rows";
import { Symbol } from "./Symbol";
import { did } from "./did";
import { called, symbolOf, toldOf, wordSaid, wordTold } from "./words";

export interface FieldProps {
  pointer: string;
  label?: string;
  tell?: string;
  big?: boolean;
  focus?: boolean;
  onTaken?: () => void;
  /** Without "I don't know" among the answers: it is asked elsewhere. */
  closed?: boolean;
}

const few = 4;

const put = (pointer: string, value: unknown) =>
  set(pointer, value, did(pointer, value));

export function YesNo({ pointer, label, tell, big, onTaken, closed }: FieldProps) {
  const stated = get<boolean | null>(pointer);
  return (
    <Choice
      legend={label ?? called(pointer)} tell={tell ?? toldOf(pointer)} big={big}
      options={[
        { value: "yes", text: say("fact.yes") },
        { value: "no", text: say("fact.no") },
        ...(closed ? [] : [{ value: open, text: say("fact.not_known") }]),
      ]}
      value={typeof stated === "boolean" ? (stated ? "yes" : "no") : open}
      onChoose={(value) => {
        put(pointer, value === open ? undefined : value === "yes");
        if (value !== open) onTaken?.();
      }}
    />
  );
}

function ManyWords({ pointer, label, tell, onTaken }: FieldProps) {
  const id = useId();
  const row = rowOf(pointer)!;
  const stated = get<string | null>(pointer) ?? "";
  return (
    <div class="field">
      <label for={id}>{label ?? called(pointer)}</label>
      {(tell ?? toldOf(pointer)) && <p class="tell">{tell ?? toldOf(pointer)}</p>}
      <select
        id={id} value={stated}
        onChange={(e) => {
          put(pointer, e.currentTarget.value || undefined);
          if (e.currentTarget.value) onTaken?.();
        }}
      >
        {!row.needed && <option value="">{say("fact.unknown")}</option>}
        {row.words!.map((word) => <option key={word} value={word}>{wordSaid(pointer, word)}</option>)}
      </select>
    </div>
  );
}

export function Words(props: FieldProps) {
  const { pointer, label, tell, big, onTaken, closed } = props;
  const row = rowOf(pointer)!;
  if (row.words!.length > few && !big) return <ManyWords {...props} />;
  const options = row.words!.map((word) => ({
    value: word, text: wordSaid(pointer, word), tell: wordTold(pointer, word),
  }));
  if ((!row.needed || big) && !closed) options.push({ value: open, text: say("fact.not_known"), tell: "" });
  return (
    <Choice
      legend={label ?? called(pointer)} tell={tell ?? toldOf(pointer)} big={big} options={options}
      value={get<string | null>(pointer) ?? (row.needed ? null : open)}
      onChoose={(word) => {
        put(pointer, word === open ? undefined : word);
        if (word !== open) onTaken?.();
      }}
    />
  );
}

/** Any of a list; none ticked is left out. */
function Ticks({ pointer, label }: FieldProps) {
  const stated = get<string[] | null>(pointer) ?? [];
  const turn = (word: string) => {
    const next = stated.includes(word) ? stated.filter((w) => w !== word) : [...stated, word];
    put(pointer, next.length > 0 ? next : undefined);
  };
  return (
    <fieldset class="choice">
      <legend>{label ?? called(pointer)}</legend>
      <div class="options">
        {rowOf(pointer)!.words!.map((word) => (
          <label key={word} class={stated.includes(word) ? "option on" : "option"}>
            <input type="checkbox" checked={stated.includes(word)} onChange={() => turn(word)} />
            <span>{wordSaid(pointer, word)}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}

function Text({ pointer, label, tell }: FieldProps) {
  const id = useId();
  const [full, setFull] = useState(false);
  return (
    <div class="field">
      <label for={id}>{label ?? called(pointer)}</label>
      {(tell ?? toldOf(pointer)) && <p class="tell">{tell ?? toldOf(pointer)}</p>}
      <input
        id={id} class="words" maxLength={60} autocomplete="off" value={get<string>(pointer) ?? ""}
        onInput={(e) => setFull(e.currentTarget.value.length >= 60)}
        onChange={(e) => put(pointer, e.currentTarget.value.trim() || undefined)}
      />
      <p class="tell" role="status">{full ? say("fact.full", { n: 60 }) : ""}</p>
    </div>
  );
}

function Count({ pointer, label, tell }: FieldProps) {
  const id = useId();
  const row = rowOf(pointer)!;
  return (
    <div class="field">
      <label for={id}>{label ?? called(pointer)} <Symbol of={symbolOf(pointer)} /></label>
      {(tell ?? toldOf(pointer)) && <p class="tell">{tell ?? toldOf(pointer)}</p>}
      <input
        id={id} type="number" min={row.low} max={row.high} step={row.whole ? 1 : "any"}
        value={get<number | null>(pointer) ?? ""}
        onChange={(e) => {
          const value = e.currentTarget.value === "" ? undefined : e.currentTarget.valueAsNumber;
          if (value === undefined || e.currentTarget.validity.valid) put(pointer, value);
        }}
      />
    </div>
  );
}

function Phases({ pointer, label, tell }: FieldProps) {
  return (
    <Choice
      legend={label ?? called(pointer)} tell={tell ?? toldOf(pointer)}
      options={[1, 3].map((n) => ({ value: String(n), text: say("fact.phases", { n }) }))}
      value={String(get<number | null>(pointer) ?? "")}
      onChoose={(n) => put(pointer, Number(n))}
    />
  );
}

export function Field(props: FieldProps) {
  const { pointer } = props;
  if (pointer.endsWith("/phases")) return <Phases {...props} />;
  switch (rowOf(pointer)?.kind) {
    case "figure": return <FigureField key={pointer} {...props} />;
    case "yes or no": return <YesNo {...props} />;
    case "word": return <Words {...props} />;
    case "words": return <Ticks {...props} />;
    case "device": return <DeviceField key={pointer} {...props} />;
    case "number": return <Count key={pointer} {...props} />;
    case "text": return <Text key={pointer} {...props} />;
    default: return null;
  }
}
