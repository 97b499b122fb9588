// The answer: a sentence first, then how close it is to its limits, what else would do, what fell.

import { faults, first, jobId, working } from "../bench";
import type { Fault, Scheme } from "../contract";
import { say } from "../words";
import "./answer.css";
import { Bars } from "./Bars";
import { Demand } from "./Demand";
import { Earth } from "./Earth";
import { Circuits, Expected } from "./Expected";
import { Fell, Levers } from "./Fell";
import { Headline, Looking, Nothing } from "./Headline";
import { Acts, Grounds, Standing } from "./Notes";
import { Pictures } from "./Pictures";
import { Others } from "./Plot";

function Faulty() {
  if (faults.value.length === 0) return null;
  return (
    <div class="faulty" role="alert">
      <p>{say(first.value ? "answer.faulty" : "answer.faulty_first")}</p>
      <ul>
        {faults.value.map((f: Fault) => (
          <li key={f.pointer + f.says}>
            {f.says}
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

export function Answer() {
  const answer = first.value;
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
        <p class="quiet">{say(working.value ? "answer.waiting" : "answer.empty")}</p>
      )}
      {answer?.chosen && <Chosen scheme={answer.chosen} />}
      {answer && !answer.chosen && <None />}
    </section>
  );
}
