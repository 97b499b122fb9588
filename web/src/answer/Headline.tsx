// What to do, as a sentence; what it hangs on; what it costs.

import { ask, choose, faults } from "../bench";
import type { Scheme, Unknown } from "../contract";
import { say } from "../words";
import { count, figure, headroomShare, money, unbroken } from "./figure";
import { Fold } from "./Fold";
import { isIdle } from "./bars";
import { astray, runs } from "./look";
import { openRuleCount } from "./open";
import { Shape } from "./Mark";
import { governed, tasks } from "./sentence";
import type { OverYears, Price } from "./shapes";
import { factWords, ruleWords, runWords } from "./speak";
import { shownFirst } from "./told";
import { Live } from "./Was";

/** Headroom in words. */
export const roomOf = (scheme: { headroom: number | null }): string =>
  headroomShare(scheme.headroom, say("answer.no_headroom"));

export const priceOf = (scheme: { price: unknown }): Price => scheme.price as Price;

export function Looking() {
  const answer = shownFirst.value;
  if (!astray.value || !answer?.chosen) return null;
  const top = answer.schemes[0]!;
  return (
    <p class="looking">
      <span>
        {say("answer.looked", { rank: answer.chosen.rank, count: answer.schemes.length })}{" "}
        {say("answer.recommended_is", {
          price: money(priceOf(top).total, priceOf(top).currency),
          headroom: roomOf(top),
        })}
      </span>
      <button type="button" class="plain" onClick={goBack}>
        {say("answer.back")}
      </button>
    </p>
  );
}

/** The strip goes with the touch, so the keyboard goes on from the answer's head. */
function goBack(): void {
  choose(null);
  document.getElementById("answer-title")?.focus({ preventScroll: true });
}

function openFact(pointer: string): Unknown | undefined {
  const told = ask.value;
  return [...(told?.find_out ?? []), ...(told?.leave ?? [])].find((f) => f.fact === pointer);
}

/** Rules that could not be judged, in words. */
const openRules = (scheme: Scheme): string[] => [
  ...new Set(
    scheme.findings
      .filter((f) => f.verdict === "not known" && !isIdle(f))
      .map((f) => ruleWords(f.rule)),
  ),
];

function Conditions({ scheme }: { scheme: Scheme }) {
  const on = scheme.conditional_on;
  const rules = openRules(scheme);
  return (
    <div class="conditions">
      <p class="status is-not-known">
        <Shape verdict="not known" /> {say("answer.conditional")}
      </p>
      {on.length > 0 && <p>{say("answer.conditional_why")}</p>}
      <ul>
        {on.map((pointer) => {
          const fact = openFact(pointer);
          return (
            <li key={pointer}>
              {fact?.says ?? factWords(pointer)}
              {fact?.how && (
                <span class="quiet">
                  {" – "}
                  {fact.how}
                </span>
              )}
            </li>
          );
        })}
      </ul>
      {rules.length > 0 && <p>{say("answer.rules_open", { rules: rules.join("; ") })}</p>}
    </div>
  );
}

export function statusWords(scheme: Scheme): { verdict: string; words: string } {
  if (faults.value.length > 0) return { verdict: "not known", words: say("answer.of_before") };
  const failed = scheme.findings.filter((f) => f.verdict === "fails");
  if (failed.length > 0) {
    return {
      verdict: "fails",
      words: say("answer.failed", { rules: failed.map((f) => ruleWords(f.rule)).join("; ") }),
    };
  }
  if (scheme.conditional_on.length > 0 || openRules(scheme).length > 0) {
    return { verdict: "not known", words: say("answer.conditional") };
  }
  return judgedWords(scheme);
}

/** Nothing fails and nothing hangs: what was judged is met, with what must be said beside it. */
function judgedWords(scheme: Scheme): { verdict: string; words: string } {
  const unjudged = openRuleCount(scheme.findings);
  const cautions = scheme.cautions.length;
  const careful = cautions > 0 || scheme.findings.some((f) => f.verdict === "caution");
  const words = [
    say(unjudged > 0 ? "answer.sound_part" : "answer.sound"),
    ...(unjudged > 0 ? [countWords("answer.not_judged", unjudged)] : []),
    ...(cautions > 0 ? [countWords("answer.with_caution", cautions)] : []),
  ].join("; ");
  return { verdict: unjudged > 0 ? "not known" : careful ? "caution" : "meets", words };
}

const countWords = (key: "answer.not_judged" | "answer.with_caution", count: number): string =>
  say(count === 1 ? `${key}_one` : `${key}_count`, { count });

function Sentence({ scheme }: { scheme: Scheme }) {
  const all = tasks(scheme.sentence, runs.value);
  return (
    <div class={`sentence ${all.length > 1 ? "several" : ""}`}>
      {all.map((task) => (
        <div key={task.run} class="task">
          {all.length > 1 && (
            <h3 class="task-of">{say("answer.to", { building: runWords(task.run) })}</h3>
          )}
          <p>
            {task.steps.map((step, i) => (
              <span key={i} class="step">
                {unbroken(step)}{" "}
              </span>
            ))}
          </p>
        </div>
      ))}
    </div>
  );
}

function Lost({ years, currency }: { years: OverYears; currency: string }) {
  return (
    <p class="quiet">
      {say("answer.lost", {
        energy: figure(years.energy_lost_kwh_a_year, "kWh", 2),
        cost: money(years.energy_lost, currency),
        years: count(years.years),
        total: money(years.total, currency),
      })}{" "}
      {years.least && say("answer.lost_least")}
    </p>
  );
}

function PriceParts({ scheme }: { scheme: Scheme }) {
  const price = priceOf(scheme);
  const row = (words: string, sum: number, total = false) => (
    <tr key={words} class={total ? "total" : ""}>
      <th scope="row">{words}</th>
      <td>{money(sum, price.currency, true)}</td>
    </tr>
  );
  const parts = Object.entries(price.parts ?? {}).filter(([, sum]) => sum !== 0);
  const years = scheme["over_years"] as OverYears | undefined;
  return (
    <Fold class="price-parts" summary={say("answer.price_opens")}>
      <table class="sums">
        <tbody>
          {parts.map(([part, sum]) => row(say(`answer.part ${part}` as "answer.part run"), sum))}
          {row(say("answer.price_net"), price.net, true)}
          {row(say("answer.price_vat"), price.vat)}
          {row(say("answer.price_total"), price.total, true)}
        </tbody>
      </table>
      <p class="quiet">{say("answer.price_book", { book: price.basis })}</p>
      {years && <Lost years={years} currency={price.currency} />}
    </Fold>
  );
}

function PriceLine({ scheme }: { scheme: Scheme }) {
  const price = priceOf(scheme);
  const by = governed(scheme.governed_by ?? "");
  const room = roomOf(scheme);
  const invented = shownFirst.value!.cautions.some((c) => c.includes("invented"));
  return (
    <div class="price">
      <p class="price-line">
        <Live>{say("answer.about", { price: money(price.total, price.currency) })}</Live>{" "}
        <span class="quiet">
          {say(scheme.conditional_on.length > 0 ? "answer.with_tax_worse" : "answer.with_tax")}
        </span>
      </p>
      <p class="quiet">
        {say("answer.price_range", {
          low: money(price.low.total, price.currency),
          high: money(price.high.total, price.currency),
        })}
        {invented && <>. {say("answer.invented")}</>}
      </p>
      <p class="room">
        <Live>
          {!by.rule
            ? say("answer.headroom_bare", { share: room })
            : by.run
              ? say("answer.headroom_of", {
                  share: room,
                  rule: ruleWords(by.rule),
                  run: runWords(by.run),
                })
              : say("answer.headroom_says", { share: room, rule: ruleWords(by.rule) })}
        </Live>
      </p>
      <PriceParts scheme={scheme} />
    </div>
  );
}

function Unfinished() {
  const answer = shownFirst.value!;
  if (answer.proved && !answer.stopped) return null;
  return <p class="quiet">{say(answer.stopped ? "answer.stopped" : "answer.not_proved")}</p>;
}

/** That nothing was found says something only of a search that was run to its end. */
function nothingWords(): { verdict: string; words: string; why: string } {
  if (faults.value.length > 0) {
    return { verdict: "not known", words: say("answer.of_before"), why: "" };
  }
  if (shownFirst.value!.stopped) {
    return {
      verdict: "not known",
      words: say("answer.nothing_stopped"),
      why: say("answer.nothing_stopped_why"),
    };
  }
  return { verdict: "fails", words: say("answer.nothing"), why: say("answer.nothing_why") };
}

export function Nothing() {
  const { verdict, words, why } = nothingWords();
  return (
    <div class="headline">
      <p class={`status is-${verdict.replace(" ", "-")}`}>
        <Shape verdict={verdict} /> {words}
      </p>
      {why && <p class="sentence-text">{why}</p>}
      {verdict === "fails" && <Unfinished />}
    </div>
  );
}

export function Headline({ scheme }: { scheme: Scheme }) {
  const status = statusWords(scheme);
  const before = faults.value.length > 0;
  const hangs = status.words === say("answer.conditional") && !before;
  const taken = shownFirst.value!.assumed.length;
  return (
    <div class="headline">
      {hangs ? (
        <Conditions scheme={scheme} />
      ) : (
        <p class={`status is-${status.verdict.replace(" ", "-")}`}>
          <Shape verdict={status.verdict} /> {status.words}
        </p>
      )}
      {hangs && <p class="quiet">{say("answer.if_well")}</p>}
      <Sentence scheme={scheme} />
      <PriceLine scheme={scheme} />
      {taken > 0 && (
        <p class="quiet">
          <a href="#answer-assumed" onClick={openAssumed}>
            {taken === 1 ? say("answer.taken_one") : say("answer.taken_count", { count: taken })}
          </a>
        </p>
      )}
      <Unfinished />
    </div>
  );
}

/** The places of the page stand behind the hash, so a jump within it is made by hand. */
function openAssumed(event: Event): void {
  event.preventDefault();
  const place = document.getElementById("answer-assumed") as HTMLDetailsElement | null;
  if (!place) return;
  place.open = true;
  place.querySelector("summary")?.focus();
  place.scrollIntoView({ block: "start" });
}
