// The ways to answer one question: big buttons where there are few answers, a field for a figure.

import { useState } from "preact/hooks";
import { get, set } from "../bench";
import { Choice } from "../fact/Choice";
import { DeviceField } from "../fact/DeviceField";
import { Field } from "../fact/Field";
import { FigureField } from "../fact/FigureField";
import { patternOf, shownPer, usualBasis } from "../fact/kinds";
import { rowOf } from "../fact/rows";
import { did } from "../fact/did";
import { unsaid } from "../fact/value";
import { toldOf, wordSaid } from "../fact/words";
import { addMetal } from "../place/edits";
import { EarthingField } from "../place/facts/Earthing";
import { readFigure } from "../place/figure";
import type { Basis, Figure } from "../place/job";
import { edit } from "../place/state";
import { say } from "../words";

interface Props {
  fact: string;
  question: string;
  onTaken: () => void;
}

function Metal({ fact, question, onTaken }: Props) {
  const [some, setSome] = useState(false);
  const list = get<unknown[] | null>(fact);
  const building = fact.slice(0, fact.lastIndexOf("/"));
  const what = `${fact}/0/what`;
  return (
    <>
      <Choice
        big legend={question} value={some || list?.length ? "some" : list ? "none" : null}
        options={[
          { value: "none", text: say("place.metal_none") },
          { value: "some", text: say("place.metal_some") },
        ]}
        onChoose={(value) => {
          setSome(value === "some");
          if (value === "some") return;
          set(fact, [], did(fact, []));
          onTaken();
        }}
      />
      {some && (
        <Choice
          legend={say("place.what_metal")} value={null}
          options={rowOf(what)!.words!.map((word) => ({ value: word, text: wordSaid(what, word) }))}
          onChoose={(word) => {
            edit(say("place.did.metal"), (job) => addMetal(job, building, word, []));
            onTaken();
          }}
        />
      )}
    </>
  );
}

/** The figures a fact usually has, each a button; 0 is said in words. */
function usualOf(fact: string): number[] {
  const row = rowOf(fact)!;
  if (row.usual) return row.usual;
  return row.whole && (row.high ?? 99) <= 40 ? [0, 1, 2, 3] : [];
}

const bases: Basis[] = ["measured", "declared", "assumed"];

function Figures({ fact, question, onTaken }: Props) {
  const usual = usualOf(fact);
  const { per, unit } = shownPer(fact);
  const reading = readFigure(get<Figure>(fact));
  const basis = usualBasis(fact);
  const [how, setHow] = useState(unsaid(basis));
  const asksHow = basis === "measured" && usual.length > 0;
  const said = (x: number) => (x === 0 ? say("questions.none") : `${x / per} ${unit}`.trim());
  const field = usual.length > 0 ? say("questions.other_figure") : question;
  return (
    <>
      {asksHow && (
        <Choice
          legend={say("questions.how_known")} value={how || null} onChoose={(word) => setHow(word as Basis)}
          tell={how ? "" : say("questions.how_open")}
          options={bases.map((word) => ({ value: word, text: say(`fact.basis.${word}`) }))}
        />
      )}
      {usual.length > 0 && (
        <Choice
          big legend={question} value={reading.known && reading.low === reading.high ? String(reading.low) : null}
          options={usual.map((x) => ({ value: String(x), text: said(x) }))}
          onChoose={(x) => {
            const known = how === "" ? "assumed" : how;
            set(fact, known ? { value: Number(x), basis: known } : Number(x), did(fact, Number(x)));
            onTaken();
          }}
        />
      )}
      <FigureField
        key={fact} pointer={fact} label={field} onTaken={onTaken} closed how={asksHow ? how ?? "" : undefined}
      />
      <button
        type="button" class="press"
        onClick={() => { if (readFigure(get<Figure>(fact)).known) onTaken(); }}
      >{say("questions.take")}</button>
    </>
  );
}

export function AnswerTo(props: Props) {
  const { fact, question, onTaken } = props;
  if (fact === "/intake/earthing") return <EarthingField big closed onTaken={onTaken} />;
  if (patternOf(fact) === "/buildings/*/metalwork") return <Metal {...props} />;
  switch (rowOf(fact)?.kind) {
    case "figure": return <Figures {...props} />;
    case "device": return <DeviceField key={fact} pointer={fact} closed onTaken={onTaken} />;
    default: return <Field big closed pointer={fact} label={question} tell={toldOf(fact)} onTaken={onTaken} />;
  }
}
