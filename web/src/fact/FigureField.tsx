import { useEffect, useId, useRef, useState } from "preact/hooks";
import { get, set } from "../bench";
import type { Basis, Figure } from "../place/job";
import { say } from "../words";
import { shownPer, usualBasis, type FactRow } from "./kinds";
import { rowOf } from "./rows";
import { Symbol } from "./Symbol";
import { draftOf, figureOf, unsaid, type Draft } from "./value";
import { did } from "./did";
import { called, symbolOf, toldOf } from "./words";

const IDLE_MS = 700;
const bases: Basis[] = ["measured", "declared", "assumed"];

export interface FigureProps {
  pointer: string;
  /** Told instead of the usual words. */
  label?: string;
  tell?: string;
  /** Called once a figure, or nothing, has been taken over. */
  onTaken?: () => void;
  focus?: boolean;
  /** How it is known, where that was said beside the field; "" until then. */
  how?: Basis | "";
  /** Without the way to say that it is not known: it is asked elsewhere. */
  closed?: boolean;
}

function wrong(fit: ReturnType<typeof figureOf>, row: FactRow, per: number, unit: string): string {
  if (fit.fits) return "";
  if (fit.wants !== "range") return say(`fact.wants.${fit.wants}`);
  return say("fact.wants.range", { low: (row.low ?? 0) / per, high: (row.high ?? 0) / per, unit });
}

/** Keeps what is typed apart from what the job says, so that no figure jumps while it is typed. */
function useDraft(pointer: string) {
  const row = rowOf(pointer) ?? { kind: "figure" as const };
  const { per, unit } = shownPer(pointer);
  const usual = usualBasis(pointer);
  const stated = get<Figure>(pointer);
  const [draft, setDraft] = useState<Draft>(() => draftOf(stated, usual, per));
  const typing = useRef(false);
  const idle = useRef<ReturnType<typeof setTimeout>>(undefined);
  useEffect(() => {
    if (!typing.current) setDraft(draftOf(stated, usual, per));
  }, [JSON.stringify(stated ?? null), pointer]);
  const take = (next: Draft) => {
    clearTimeout(idle.current);
    typing.current = false;
    const fit = figureOf(next, row, per);
    if (!fit.fits) return false;
    if (JSON.stringify(fit.figure) === JSON.stringify(get(pointer))) return true;
    set(pointer, fit.figure, did(pointer, fit.figure));
    return true;
  };
  const type = (next: Draft) => {
    typing.current = true;
    setDraft(next);
    clearTimeout(idle.current);
    idle.current = setTimeout(() => { take(next); typing.current = true; }, IDLE_MS);
  };
  return { draft, setDraft, take, type, row, per, unit, usual };
}

/** A measured quantity: one figure or two, its unit, and how it is known. */
export function FigureField(
  { pointer, label, tell, onTaken, focus, how, closed }: FigureProps,
) {
  const id = useId();
  const { draft, setDraft, take, type, row, per, unit, usual } = useDraft(pointer);
  const [unknownHow, setUnknownHow] = useState(false);
  const saidHow = useRef(false);
  const first = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (!focus) return;
    first.current?.focus();
    first.current?.select();
  }, [focus, pointer]);
  const fault = wrong(figureOf(draft, row, per), row, per, unit);
  const unsaidNow = saidHow.current ? draft.basis : unsaid(usual);
  const done = (next: Draft) => { if (take(next)) onTaken?.(); };
  const field = (end: "low" | "high", name: string, ref?: typeof first) => (
    <input
      ref={ref} id={end === "low" ? id : undefined} inputMode="decimal" autocomplete="off"
      aria-label={name || undefined} aria-invalid={fault !== ""} aria-describedby={`${id}-say`}
      value={draft[end]}
      onInput={(e) => {
        const basis = usual && how !== undefined ? how : unsaidNow;
        setUnknownHow(basis === "" && how === undefined);
        type({ ...draft, [end]: e.currentTarget.value, basis });
      }}
      onBlur={() => { take(draft); }}
      onKeyDown={(e) => { if (e.key === "Enter") done(draft); }}
    />
  );
  const said = label ?? called(pointer);
  return (
    <div class="field figure">
      <label for={id}>{said} <Symbol of={symbolOf(pointer)} /></label>
      {(tell ?? toldOf(pointer)) && <p class="tell">{tell ?? toldOf(pointer)}</p>}
      <div class="row">
        {field("low", draft.range ? say("fact.lowest", { what: said }) : "", first)}
        {draft.range && <span>{say("fact.to")}</span>}
        {draft.range && field("high", say("fact.highest", { what: said }))}
        <span class="unit">{unit}</span>
        {usual && how === undefined && (
          <select
            aria-label={say("fact.basis_of", { what: said })} value={unknownHow ? "" : draft.basis ?? usual}
            onChange={(e) => {
              const next = { ...draft, basis: e.currentTarget.value as Draft["basis"] };
              saidHow.current = next.basis !== "";
              setUnknownHow(!saidHow.current && draft.low !== "");
              setDraft(next);
              take(next);
            }}
          >
            {(unknownHow || draft.basis === "") && <option value="">{say("fact.basis_open")}</option>}
            {bases.map((basis) => <option key={basis} value={basis}>{say(`fact.basis.${basis}`)}</option>)}
          </select>
        )}
      </div>
      <p class={fault ? "say" : "tell"} id={`${id}-say`} role="status">
        {fault || (unknownHow && draft.low !== "" ? say("fact.basis_ask") : "")}
      </p>
      <div class="row quiet">
        <button
          type="button" aria-pressed={draft.range}
          onClick={() => setDraft({
            ...draft, range: !draft.range,
            basis: !draft.range && draft.basis === "measured" ? "assumed" : draft.basis,
          })}
        >{say("fact.between")}</button>
        {!row.needed && !closed && (
          <button
            type="button" aria-pressed={draft.low === "" && draft.high === ""}
            onClick={() => done({ ...draft, low: "", high: "" })}
          >{say("fact.not_known")}</button>
        )}
      </div>
    </div>
  );
}
