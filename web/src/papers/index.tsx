// The papers: what each is for, how it looks, and what was issued.

import { useState } from "preact/hooks";
import { astray } from "../answer/look";
import { Shape } from "../answer/Mark";
import { faultSays, schemeWords } from "../answer/speak";
import { chosenKey, faults, first } from "../bench";
import { say } from "../words";
import { dayOf, isDay } from "./day";
import { Issued } from "./Issued";
import { kinds, type Kind } from "./kinds";
import "./papers.css";
import "./words";
import { Preview } from "./Preview";

function PaperRow({
  kind,
  date,
  open,
  turn,
}: {
  kind: Kind;
  date: string;
  open: boolean;
  turn: () => void;
}) {
  return (
    <li class={open ? "is-open" : ""}>
      <button
        type="button"
        class="paper-row"
        aria-expanded={open}
        aria-controls={`preview-${kind}`}
        onClick={turn}
      >
        <span class="paper-name">{say(`papers.${kind}`)}</span>
        <span class="small paper-for">{say(`papers.${kind}_for`)}</span>
        <span class="small paper-look">{say(open ? "papers.close" : "papers.look")}</span>
      </button>
      {open && <Preview key={chosenKey.value} kind={kind} date={date} />}
    </li>
  );
}

/** The job has no answer as it stands: what was recommended before must not be handed over. */
function Held() {
  return (
    <div class="conditional" role="alert">
      <p>
        <Shape verdict="not known" /> {say("papers.held")}
      </p>
      <ul>
        {faults.value.map((f) => (
          <li key={f.pointer + f.says}>{faultSays(f)}</li>
        ))}
      </ul>
    </div>
  );
}

function OfWhich() {
  const answer = first.value;
  if (faults.value.length > 0) return <Held />;
  if (!answer?.chosen) return <p>{say("papers.nothing_sound")}</p>;
  return (
    <>
      <p class="small">
        {say(astray.value ? "papers.of_looked" : "papers.of_recommended", {
          rank: answer.chosen.rank,
          scheme: schemeWords(answer.chosen.words),
        })}
      </p>
      {faults.value.length > 0 && <p class="conditional">◇ {say("answer.of_before")}</p>}
      {answer.chosen.conditional_on.length > 0 && (
        <p class="conditional">◇ {say("papers.conditional")}</p>
      )}
    </>
  );
}

export function Papers() {
  const [open, setOpen] = useState<Kind | null>(null);
  const [date, setDate] = useState(dayOf(new Date()));
  const held = faults.value.length > 0;
  return (
    <div class="papers sheet">
      <h1>{say("papers.title")}</h1>
      <OfWhich />
      <label class="date">
        <span>{say("papers.date")}</span>
        <input
          type="date"
          value={date}
          required
          onChange={(e) => {
            if (isDay(e.currentTarget.value)) setDate(e.currentTarget.value);
          }}
        />
      </label>
      <fieldset class="bare" disabled={held}>
        <ul class="paper-list">
          {kinds.map((kind) => (
            <PaperRow
              key={kind}
              kind={kind}
              date={date}
              open={open === kind && !held}
              turn={() => setOpen(open === kind ? null : kind)}
            />
          ))}
        </ul>
        <Issued date={date} />
      </fieldset>
    </div>
  );
}
