// What the buildings draw, and what the house's intake has left.

import { say } from "../words";
import { figure } from "./figure";
import { runAsked, runs } from "./look";
import { numberAt, type Demand as Told } from "./shapes";
import { buildingWords } from "./speak";
import { shownFirst } from "./told";
import { Live } from "./Was";
import { Opens } from "./Opens";

const scenarios = ["today", "likely", "everything"] as const;

function Drawn({ told }: { told: Told }) {
  const drawn = Object.entries(told.buildings).filter(
    ([, d]) => numberAt(d, "likely.total_a") !== null,
  );
  if (drawn.length === 0) return null;
  return (
    <table class="figures">
      <thead>
        <tr>
          <th scope="col">{say("answer.demand_of")}</th>
          {scenarios.map((s) => (
            <th key={s} scope="col">
              {say(`answer.scenario ${s}`)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {drawn.map(([id, demand]) => (
          <tr key={id}>
            <th scope="row">{buildingWords(id)}</th>
            {scenarios.map((s) => {
              const amps = numberAt(demand, `${s}.total_a`);
              return <td key={s}>{amps === null ? "–" : <Live>{figure(amps, "A")}</Live>}</td>;
            })}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Left({ told }: { told: Told }) {
  const way = told.house[0];
  return (
    <>
      {!way && <p>{say("answer.demand_house_open")}</p>}
      {way && (
        <p>
          {say("answer.demand_house", { way: way.way })} <Live>{figure(way.demand_a, "A")}</Live>
        </p>
      )}
      <ul class="figure-list">
        {told.limits.map((limit) => {
          const left = way?.left.find((l) => l.part === limit.part);
          return (
            <li key={limit.part} class="pair">
              <span>
                {limit.part}, {say(limit.known ? "answer.carries" : "answer.carries_open")}{" "}
                {figure(limit.carries_a, "A")}
              </span>
              {left && (
                <span>
                  <Live>{figure(left.left_a, "A")}</Live>{" "}
                  <span class="quiet">{say("answer.left")}</span>
                </span>
              )}
            </li>
          );
        })}
      </ul>
    </>
  );
}

export function Demand() {
  const told = shownFirst.value!.demand as Told | null;
  if (!told) return null;
  return (
    <section class="demand" aria-labelledby="demand-title">
      <h3 id="demand-title">{say("answer.demand")}</h3>
      <Drawn told={told} />
      {told.run_a !== null && runs.value.length === 1 && (
        <ul class="figure-list">
          <li>
            <Opens figure="demand.likely_a" class="figure-opens" {...runAsked.value}>
              <span>{say("answer.demand_run")}</span>
              <Live>{figure(told.run_a, "A")}</Live>
            </Opens>
          </li>
        </ul>
      )}
      <Left told={told} />
      {told.operator && (
        <>
          <p>{say("answer.operator", { do: told.operator.do })}</p>
          <ul class="plain-list">
            {told.operator.reasons.map((r) => (
              <li key={r.why}>{r.why}</li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}
