// How close the scheme is to each limit: bars of use, longest first.

import { useState } from "preact/hooks";
import { faults } from "../bench";
import type { Finding, Scheme } from "../contract";
import { say } from "../words";
import { barEnd, findingsByRun, sortBars, type Bar } from "./bars";
import { beside, percent, unitWords } from "./figure";
import { isUnstated, lengthless, type OpenCircuit } from "./open";
import { askFor } from "../questions/state";
import { lookAlong, run, runAsked, runs } from "./look";
import { Verdict } from "./Mark";
import { governed } from "./sentence";
import { Sign } from "./Sign";
import { ruleSymbol, ruleWords, runWords, sayOr } from "./speak";
import { Live } from "./Was";
import { useWas } from "./was";
import { Opens } from "./Opens";

/** Of an answer that a fault has overtaken no verdict is known to hold. */
const verdictNow = ({ verdict }: Finding): string =>
  faults.value.length > 0 ? "not known" : verdict;

const LIMIT_AT = 0.86;
const SHOWN = 8;

/** Value and limit in the unit that a meter shows; a bare number says of what it is a number. */
export function valueAgainst(finding: Finding): string {
  if (finding.unit === "" && finding.limit === 1) {
    return say("answer.value_share", {
      share: percent(finding.value!),
      what: sayOr(`answer.bare ${finding.rule}`, say("answer.bare")),
    });
  }
  const [value, limit] = beside(finding.value!, finding.limit!);
  const unit = unitWords(finding.unit) || sayOr(`answer.bare ${finding.rule}`, say("answer.bare"));
  const space = unit === "%" ? "\u202f" : "\u00a0";
  return say(finding.at_least ? "answer.value_least" : "answer.value_most", {
    value: value + (finding.unit ? space + unit : ""),
    limit: limit + space + unit,
  });
}

function Track({ use, words }: { use: number; words: string }) {
  const { end, over } = barEnd(use, LIMIT_AT);
  const was = useWas(String(use));
  const before = was === undefined ? null : barEnd(Number(was), LIMIT_AT).end;
  return (
    <span class={`track ${over ? "is-over" : ""}`} role="img" aria-label={words}>
      <span class="bar" style={{ width: `${end * 100}%` }} />
      {before !== null && <span class="bar-was" style={{ left: `${before * 100}%` }} />}
      <span class="limit" style={{ left: `${LIMIT_AT * 100}%` }} />
    </span>
  );
}

function Foot({ finding }: { finding: Finding }) {
  const basis = (finding.basis as unknown as string[] | null) ?? [];
  return (
    <p class="quiet">
      {finding.says && <>{finding.says}. </>}
      {say("answer.clause", { clause: finding.clause })}.{" "}
      {basis.length > 0 && say("answer.basis", { basis: basis.join(", ") })}
    </p>
  );
}

function BarRow({ bar, scheme, beyond }: { bar: Bar; scheme: Scheme; beyond: boolean }) {
  const { finding, use } = bar;
  const by = governed(scheme.governed_by);
  const sets = by.rule === finding.rule && (by.run === null || by.run === run.value);
  const share = Number.isFinite(use) ? percent(use) : say("answer.no_end");
  return (
    <li class={`bar-row ${beyond ? "is-beyond" : ""}`}>
      <Opens
        figure={finding.rule}
        keyOf={scheme.key}
        class="bar-opens"
        {...runAsked.value}
        foot={<Foot finding={finding} />}
      >
        <span class="bar-name">
          {ruleWords(finding.rule)} <Sign of={ruleSymbol(finding.rule)} />
        </span>
        <Verdict verdict={verdictNow(finding)} />
        <Track use={use} words={Number.isFinite(use) ? say("answer.of_limit", { share }) : share} />
        <span class="bar-value">
          <Live>{valueAgainst(finding)}</Live>
        </span>
        <span class="bar-share" aria-hidden="true">
          {share}
        </span>
        {(sets || !runs.value.includes(finding.subject)) && (
          <span class="bar-note">
            {!runs.value.includes(finding.subject) &&
              say("answer.circuit", { name: finding.subject })}
            {sets && <> {say("answer.sets_headroom")}</>}
          </span>
        )}
      </Opens>
    </li>
  );
}

function ToldRow({ finding }: { finding: Finding }) {
  return (
    <li class="told-row">
      <Verdict verdict={verdictNow(finding)} />
      <span>
        {ruleWords(finding.rule)}
        {finding.says && <span class="quiet">: {finding.says}</span>}{" "}
        <span class="clause">{finding.clause}</span>
      </span>
    </li>
  );
}

/** Rules over circuits that nobody gave a length: never called met, and the way to the length. */
function Unjudged({ rules, lacking }: { rules: Finding[]; lacking: OpenCircuit[] }) {
  return (
    <div class="unjudged">
      <h4>{say("answer.unjudged")}</h4>
      <p>
        <Verdict verdict="not known" />{" "}
        {say("answer.unjudged_circuits", {
          circuits: lacking.map(({ circuit }) => circuit.name).join(", "),
        })}{" "}
        {rules.length > 0
          ? say("answer.unjudged_rules", { rules: rules.map((f) => ruleWords(f.rule)).join("; ") })
          : say("answer.unjudged_others")}
      </p>
      <button type="button" class="plain" onClick={() => askFor(`${lacking[0]!.pointer}/length_m`)}>
        {say("answer.give_length", { circuit: lacking[0]!.circuit.name })}
      </button>
    </div>
  );
}

export function RunChoice() {
  if (runs.value.length < 2) return null;
  return (
    <div class="run-choice" role="group" aria-label={say("answer.run_of")}>
      {runs.value.map((id) => (
        <button
          key={id}
          type="button"
          class="plain"
          aria-pressed={id === run.value}
          onClick={() => lookAlong(id)}
        >
          {say("answer.to", { building: runWords(id) })}
        </button>
      ))}
    </div>
  );
}

export function Bars({ scheme }: { scheme: Scheme }) {
  const [all, setAll] = useState(false);
  const mine = findingsByRun(scheme.findings, runs.value).get(run.value) ?? [];
  const lacking = lengthless(run.value);
  const kinds = lacking.map(({ circuit }) => circuit.kind);
  const { measured, told, idle, open } = sortBars(mine, kinds, isUnstated);
  const rest = measured.length - SHOWN;
  return (
    <section class="bars" aria-labelledby="bars-title">
      <h3 id="bars-title">{say("answer.bars")}</h3>
      <RunChoice />
      <p class="quiet hint">{say("answer.bars_note")}</p>
      <ul class="bar-list">
        {measured.map((bar, i) => (
          <BarRow
            key={`${run.value} ${bar.finding.rule}`}
            bar={bar}
            scheme={scheme}
            beyond={!all && i >= SHOWN}
          />
        ))}
      </ul>
      {rest > 0 && (
        <button type="button" class="plain" aria-expanded={all} onClick={() => setAll(!all)}>
          {all
            ? say("answer.fewer")
            : say("answer.more", { count: rest, share: percent(measured[SHOWN - 1]!.use) })}
        </button>
      )}
      {told.length > 0 && <h4>{say("answer.told")}</h4>}
      <ul class="told-list">
        {told.map((f) => (
          <ToldRow key={f.rule} finding={f} />
        ))}
      </ul>
      {lacking.length > 0 && <Unjudged rules={open} lacking={lacking} />}
      {idle.length > 0 && (
        <p class="quiet">
          {say("answer.idle", { rules: idle.map((f) => ruleWords(f.rule)).join("; ") })}
        </p>
      )}
    </section>
  );
}
