// What must be said with the scheme: what is done first, whom to tell, cautions; and what the
// answer takes for granted and rests on.

import { ask } from "../bench";
import type { Scheme, Unknown } from "../contract";
import { say } from "../words";
import { count } from "./figure";
import { Fold } from "./Fold";
import { shownFirst } from "./told";

function Listed({ title, items }: { title: string; items: string[] }) {
  if (items.length === 0) return null;
  return (
    <div class="note">
      <h4>{title}</h4>
      <ul>
        {items.map((item) => (
          <li key={item}>{item}</li>
        ))}
      </ul>
    </div>
  );
}

/** What the scheme asks of people: open, never folded away. */
export function Acts({ scheme }: { scheme: Scheme }) {
  return (
    <section class="duties" aria-labelledby="duties-title">
      <h3 id="duties-title">{say("answer.before_anyone")}</h3>
      <Listed title={say("answer.cautions")} items={scheme.cautions} />
      <Listed title={say("answer.house_first")} items={scheme.house_work as string[]} />
      <div class="note">
        {scheme.tell.length > 0 && <h4>{say("answer.tell")}</h4>}
        <ul>
          {scheme.tell.map((t) => (
            <li key={t.who + t.why}>
              <strong>{say("answer.tell_when", { who: t.who, when: t.when })}</strong>: {t.why}
            </li>
          ))}
        </ul>
      </div>
      <Listed title={say("answer.needs")} items={scheme.needs_a_person} />
    </section>
  );
}

/** Cautions that stand under every answer, also under one that found nothing. */
export function Standing() {
  return (
    <section class="standing">
      {shownFirst.value!.cautions.map((c) => (
        <p key={c}>{c}</p>
      ))}
    </section>
  );
}

function OpenFact({ fact }: { fact: Unknown }) {
  return (
    <li>
      <p>
        {fact.says}: <strong>{fact.effect}</strong>
      </p>
      {fact.hangs && <p class="quiet">{fact.hangs}</p>}
    </li>
  );
}

export function Grounds() {
  const answer = shownFirst.value!;
  const open = [...(ask.value?.find_out ?? []), ...(ask.value?.leave ?? [])];
  return (
    <section class="grounds">
      <Fold class="part" id="answer-assumed" summary={<h3>{say("answer.assumed")}</h3>}>
        {answer.assumed.length === 0 && <p>{say("answer.assumed_none")}</p>}
        <ul class="plain-list">
          {answer.assumed.map((a) => (
            <li key={a}>{a}</li>
          ))}
        </ul>
      </Fold>
      {open.length > 0 && (
        <Fold class="part" summary={<h3>{say("answer.open_facts")}</h3>}>
          <ul class="plain-list">
            {open.map((f) => (
              <OpenFact key={f.fact} fact={f} />
            ))}
          </ul>
        </Fold>
      )}
      <Sources />
    </section>
  );
}

interface Source {
  key: string;
  title: string;
  basis: string;
}

function Sources() {
  const answer = shownFirst.value!;
  const sources = (answer as unknown as { sources?: Source[] }).sources ?? [];
  const search = answer.search;
  return (
    <Fold class="part" summary={<h3>{say("answer.sources")}</h3>}>
      {answer.rulebook && (
        <p>
          {say("answer.edition", {
            edition: answer.rulebook.edition,
            version: answer.rulebook.data_version,
          })}
        </p>
      )}
      <p class="quiet">
        {say("answer.searched", {
          candidates: count(search["candidates"] ?? 0),
          evaluated: count(search["evaluated"] ?? 0),
          sound: count(search["sound"] ?? 0),
        })}
      </p>
      <ul class="plain-list">
        {sources.map((s) => (
          <li key={`${s.key} ${s.basis}`}>
            {s.title} <span class="quiet">({s.basis})</span>
          </li>
        ))}
      </ul>
    </Fold>
  );
}
