// What was left open, what was answered, what makes no difference: each can be gone back to.

import { lengthless } from "../answer/open";
import { ask } from "../bench";
import { called } from "../fact/words";
import { isLoose } from "../place/outline";
import { choose, lengthTouched, shown, hand } from "../place/state";
import { rest } from "../place/hand";
import { tellOf } from "../place/telling";
import { say } from "../words";
import { returnTo } from "./queue";
import { factSaid } from "./said";
import { askFor, session } from "./state";
import "../words/facts";

function questionOf(fact: string): string {
  const all = [...(ask.value?.find_out ?? []), ...(ask.value?.leave ?? [])];
  return all.find((open) => open.fact === fact)?.question || called(fact);
}

function Back({ title, facts, values, open }: {
  title: string; facts: string[]; values?: boolean; open?: boolean;
}) {
  if (facts.length === 0) return null;
  return (
    <details class="more" open={open}>
      <summary>{title}</summary>
      <ul class="things-list">
        {facts.map((fact) => (
          <li key={fact}>
            <button type="button" class="thing-line" onClick={() => { session.value = returnTo(session.peek(), fact); }}>
              <span>{questionOf(fact)}</span>
              <span>{values ? factSaid(fact) : say("fact.unknown")}</span>
            </button>
          </li>
        ))}
      </ul>
    </details>
  );
}

/** Legs whose length is only drawn. */
function Unmeasured() {
  const legs = shown.value?.stretches.filter((leg) => isLoose(leg.length)) ?? [];
  if (legs.length === 0) return null;
  return (
    <details class="more" open>
      <summary>{say("questions.drawn", { n: legs.length })}</summary>
      <ul class="things-list">
        {legs.map((leg) => (
          <li key={leg.pointer}>
            <button type="button" class="thing-line" onClick={() => {
              hand.value = rest;
              choose(leg.pointer);
              lengthTouched.value = true;
            }}>{tellOf(leg)}</button>
          </li>
        ))}
      </ul>
    </details>
  );
}

/** Circuits whose cable has no length yet: what judges them is not judged. */
function Lengthless() {
  const open = lengthless();
  if (open.length === 0) return null;
  return (
    <details class="more" open>
      <summary>{say("questions.lengthless", { n: open.length })}</summary>
      <ul class="things-list">
        {open.map(({ pointer, circuit }) => (
          <li key={pointer}>
            <button type="button" class="thing-line" onClick={() => askFor(`${pointer}/length_m`)}>
              <span>{circuit.name}</span>
              <span>{say("fact.unknown")}</span>
            </button>
          </li>
        ))}
      </ul>
    </details>
  );
}

export function Lists() {
  const { aside, answered } = session.value;
  const idle = (ask.value?.leave ?? []).map((open) => open.fact)
    .filter((fact) => !aside.includes(fact) && !answered.includes(fact));
  return (
    <div class="lists">
      <Back title={say("questions.aside", { n: aside.length })} facts={aside} open />
      <Unmeasured />
      <Lengthless />
      <Back title={say("questions.answered", { n: answered.length })} facts={answered} values />
      <Back title={say("questions.idle", { n: idle.length })} facts={idle} />
    </div>
  );
}
