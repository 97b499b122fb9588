// The answer: a sentence first, then how close it is to its limits, what else would do, what fell.

import { faults, firstHeld, jobId, working } from "../bench";
import { useState } from "preact/hooks";
import type { Fault, First, Scheme } from "../contract";
import { awaited } from "../shell/rest";
import { later } from "../shell/later";
import { say } from "../words";
import "./answer.css";
import { Bars } from "./Bars";
import { Headline, Looking, Nothing } from "./Headline";
import { Acts, Grounds, Standing } from "./Notes";
import { Shape } from "./Mark";
import { faultSays, lacksEarthing } from "./speak";
import { shownFirst } from "./told";

const further = () => import("./further");
const Circuits = later(async () => (await further()).Circuits, true);
const Demand = later(async () => (await further()).Demand, true);
const Earth = later(async () => (await further()).Earth, true);
const Expected = later(async () => (await further()).Expected, true);
const Fell = later(async () => (await further()).Fell, true);
const Levers = later(async () => (await further()).Levers, true);
const Others = later(async () => (await further()).Others, true);
const Pictures = later(async () => (await further()).Pictures, true);

function Faulty() {
  if (faults.value.length === 0) return null;
  return (
    <div class="faulty" role="alert">
      <p class="status is-not-known">
        <Shape verdict="not known" /> {say("answer.faulty_first")}
      </p>
      {lacksEarthing(faults.value) && <p>{say("answer.no_earthing")}</p>}
      <ul>
        {faults.value.map((f: Fault) => (
          <li key={f.pointer + f.says}>
            {faultSays(f)}
            {f.nearest && ` ${say("answer.did_you_mean", { nearest: f.nearest })}`}
          </li>
        ))}
      </ul>
    </div>
  );
}

function Chosen({ scheme }: { scheme: Scheme }) {
  return (
    <>
      <Looking />
      <Headline scheme={scheme} />
      <div class="columns">
        <div class="answer-near">
          <Bars scheme={scheme} />
        </div>
        <div class="answer-beside">
          <Acts scheme={scheme} />
          <Others />
          <Pictures />
          <Levers />
          <Demand />
          <Fell />
          <Earth />
        </div>
        <div class="answer-under">
          <Expected scheme={scheme} />
          <Circuits scheme={scheme} />
          <Grounds />
        </div>
      </div>
      <Standing />
    </>
  );
}

function None() {
  return (
    <>
      <Nothing />
      <div class="columns">
        <div class="answer-near">
          <Fell />
        </div>
        <div class="answer-beside">
          <Levers />
          <Demand />
        </div>
        <div class="answer-under">
          <Earth />
          <Grounds />
        </div>
      </div>
      <Standing />
    </>
  );
}

function Told({ answer }: { answer: First }) {
  return answer.chosen ? <Chosen scheme={answer.chosen} /> : <None />;
}

/** While the job does not hold together its last answer is put away, and says whose it was. */
function Before({ answer }: { answer: First }) {
  const [open, setOpen] = useState(false);
  if (lacksEarthing(faults.value)) return null;
  return (
    <details
      class="part is-past"
      onToggle={(e) => {
        if (e.target === e.currentTarget) setOpen(e.currentTarget.open);
      }}
    >
      <summary>
        <h3>{say("answer.before")}</h3>
      </summary>
      {open && (
        <>
          <p>{say("answer.before_says")}</p>
          <Told answer={answer} />
        </>
      )}
    </details>
  );
}

export function Answer() {
  const answer = shownFirst.value;
  return (
    <section
      key={jobId.value}
      class="answer"
      aria-labelledby="answer-title"
      aria-busy={working.value}
    >
      <h2 id="answer-title" class="room-title" tabIndex={-1}>
        {say("answer.title")}
        <span class="at-work">{answer && working.value ? say("answer.working") : ""}</span>
      </h2>
      <Faulty />
      {!answer && faults.value.length === 0 && (
        <p class="quiet">{firstHeld.value ? awaited("answer.waiting")
            : say(working.value ? "answer.waiting" : "answer.empty")}</p>
      )}
      {answer && faults.value.length === 0 && <Told answer={answer} />}
      {answer && faults.value.length > 0 && <Before answer={answer} />}
    </section>
  );
}
