// The answer: a sentence first, then how close it is to its limits, what else would do, what fell.

import { useEffect, useRef, useState } from "preact/hooks";
import { faults, first, jobId, working } from "../bench";
import type { Fault, Scheme } from "../contract";
import { say } from "../words";
import "./answer.css";
import { Bars } from "./Bars";
import { Demand } from "./Demand";
import { Earth } from "./Earth";
import { Circuits, Expected } from "./Expected";
import { Fell, Levers } from "./Fell";
import { money, percent } from "./figure";
import { Headline, Looking, Nothing, priceOf, statusWords } from "./Headline";
import { Acts, Grounds, Standing } from "./Notes";
import { Pictures } from "./Pictures";
import { Others } from "./Plot";

const SAY_AFTER_MS = 900;

/** One sentence for those who hear the page, once the answer has come to rest. */
function Announce() {
  const [said, setSaid] = useState("");
  const answer = first.value;
  const beganWith = useRef(answer);
  useEffect(() => {
    if (!answer || answer === beganWith.current) return undefined;
    const timer = setTimeout(() => setSaid(announcement()), SAY_AFTER_MS);
    return () => clearTimeout(timer);
  }, [answer]);
  return <p class="unseen" role="status" aria-live="polite">{said}</p>;
}

function announcement(): string {
  const scheme = first.value?.chosen;
  if (!scheme) return say("answer.announce_nothing");
  return say("answer.announce", {
    verdict: statusWords(scheme).words, headroom: percent(scheme.headroom),
    price: money(priceOf(scheme).total, priceOf(scheme).currency),
  });
}

function Faulty() {
  if (faults.value.length === 0) return null;
  return (
    <div class="faulty" role="alert">
      <p>{say(first.value ? "answer.faulty" : "answer.faulty_first")}</p>
      <ul>{faults.value.map((f: Fault) => (
        <li key={f.pointer + f.says}>
          {f.says}{f.nearest && ` ${say("answer.did_you_mean", { nearest: f.nearest })}`}
        </li>
      ))}</ul>
    </div>
  );
}

function Chosen({ scheme }: { scheme: Scheme }) {
  return (
    <>
      <Looking />
      <Headline scheme={scheme} />
      <div class="columns">
        <div class="near"><Bars scheme={scheme} /></div>
        <div class="beside">
          <Acts scheme={scheme} />
          <Others />
          <Pictures />
          <Levers />
        </div>
        <div class="under">
          <Expected scheme={scheme} />
          <Circuits scheme={scheme} />
          <Demand />
          <Earth />
          <Fell />
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
        <div class="near"><Fell /></div>
        <div class="beside"><Levers /><Demand /></div>
        <div class="under"><Earth /><Grounds /></div>
      </div>
      <Standing />
    </>
  );
}

export function Answer() {
  const answer = first.value;
  return (
    <section
      key={jobId.value} class="answer" aria-labelledby="answer-title" aria-busy={working.value}
    >
      <h2 id="answer-title" class="room-title">
        {say("answer.title")}
        <span class="at-work">{answer && working.value ? say("answer.working") : ""}</span>
      </h2>
      <Announce />
      <Faulty />
      {!answer && faults.value.length === 0
        && <p class="quiet">{say(working.value ? "answer.waiting" : "answer.empty")}</p>}
      {answer?.chosen && <Chosen scheme={answer.chosen} />}
      {answer && !answer.chosen && <None />}
    </section>
  );
}
