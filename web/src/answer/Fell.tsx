// What fell and why; what one change would bring.

import { useId, useState } from "preact/hooks";
import { behind, levers } from "../bench";
import type { Dropped, Lever } from "../contract";
import { awaited } from "../shell/rest";
import { say } from "../words";
import { count, money, percent } from "./figure";
import { Fold } from "./Fold";
import { priceOf } from "./Headline";
import { runAsked } from "./look";
import type { Nearest } from "./shapes";
import { keyWords, ruleWords, schemeWords } from "./speak";
import { shownFirst } from "./told";
import { Working } from "./Working";

function NearestMiss({ rule, nearest }: { rule: string; nearest: Nearest }) {
  const [open, setOpen] = useState(false);
  const id = useId();
  return (
    <>
      <p class="quiet">
        {say("answer.nearest_miss", {
          scheme: keyWords(nearest.key),
          share: percent(nearest.use - 1),
        })}
      </p>
      <button
        type="button"
        class="plain"
        aria-expanded={open}
        aria-controls={id}
        onClick={() => setOpen(!open)}
      >
        {say("answer.nearest_working")}
      </button>
      {open && (
        <div id={id} class="opened">
          <Working figure={rule} keyOf={nearest.key} {...runAsked.value} />
        </div>
      )}
    </>
  );
}

function FellRow({ dropped }: { dropped: Dropped }) {
  const nearest = dropped.nearest as Nearest | null;
  return (
    <li>
      <p>
        <strong>{ruleWords(dropped.rule)}</strong>{" "}
        <span class="quiet">{say("answer.fell_ways", { count: count(dropped.count) })}</span>
      </p>
      <p>{dropped.says}</p>
      {nearest && <NearestMiss rule={dropped.rule} nearest={nearest} />}
    </li>
  );
}

export function Fell() {
  const answer = shownFirst.value!;
  if (answer.dropped.length === 0) return null;
  const list = (
    <ul class="fell-list">
      {answer.dropped.map((d) => (
        <FellRow key={d.rule} dropped={d} />
      ))}
    </ul>
  );
  return answer.chosen ? (
    <Fold class="part" summary={<h3>{say("answer.fell")}</h3>}>
      {list}
    </Fold>
  ) : (
    <section class="part" aria-labelledby="fell-title">
      <h3 id="fell-title">{say("answer.fell")}</h3>
      {list}
    </section>
  );
}

function LeverRow({ lever, currency }: { lever: Lever; currency: string }) {
  return (
    <li>
      <p class="lever-change">{lever.change}</p>
      <p>
        <strong>{lever.opens ? say("answer.lever_opens") : lever.brings}</strong>
        {lever.cost_says && <span class="quiet"> ({lever.cost_says})</span>}
      </p>
      {lever.lever === "straight-route" && <p class="quiet">{say("answer.lever_drawn")}</p>}
      <p class="quiet">
        {say("answer.lever_then", {
          scheme: schemeWords(lever.scheme),
          price: money(lever.price, currency),
        })}
      </p>
    </li>
  );
}

export function Levers() {
  const told = levers.value;
  const scheme = shownFirst.value?.schemes[0];
  const currency = scheme ? priceOf(scheme).currency : "GBP";
  const tried = (told as unknown as { tried?: number } | null)?.tried ?? 0;
  return (
    <section class="levers" aria-labelledby="levers-title" aria-busy={behind.value}>
      <h3 id="levers-title">{say("answer.levers")}</h3>
      {!told && <p class="quiet">{awaited("answer.levers_waiting")}</p>}
      {told && behind.value && <p class="quiet">{say("answer.behind")}</p>}
      {told?.levers.length === 0 && (
        <p class="quiet">
          {say(told.sound || told.conditional ? "answer.levers_none" : "answer.levers_none_sound",
            { count: tried })}
        </p>
      )}
      {told && told.levers.length > 0 && (
        <ul class="lever-list">
          {told.levers.map((l) => (
            <LeverRow key={l.lever + l.change} lever={l} currency={currency} />
          ))}
        </ul>
      )}
    </section>
  );
}
