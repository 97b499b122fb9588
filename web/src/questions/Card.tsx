import { useEffect, useRef } from "preact/hooks";
import { factWords } from "../answer/speak";
import { ask } from "../bench";
import { Photos } from "../fact/Photos";
import { called } from "../fact/words";
import { choose, hand, shown } from "../place/state";
import { rest } from "../place/hand";
import { thingOfFact } from "../place/outline";
import { tellOf } from "../place/telling";
import { say, hasWords } from "../words";
import { AnswerTo } from "./AnswerTo";
import { answer, left, setAside } from "./queue";
import { session, type Asked } from "./state";
import "../words/facts";

function byWhom(by: string): string {
  const key = `questions.by.${by}`;
  return hasWords(key) ? say(key) : by;
}

/** Which of several it is asked of: the building or the leg. */
function ofWhat(fact: string): string {
  const circuit = /^(\/buildings\/\d+\/circuits\/\d+)\//.exec(fact)?.[1];
  if (circuit) return factWords(circuit);
  const of = shown.value;
  const thing = of ? thingOfFact(of, fact) : undefined;
  return thing && thing.kind !== "house" ? tellOf(thing) : "";
}

function showOnPlace(fact: string): void {
  const of = shown.peek();
  const thing = of ? thingOfFact(of, fact) : undefined;
  if (!thing) return;
  hand.value = rest;
  choose(thing.pointer);
  document.getElementById("place-title")?.scrollIntoView({ block: "start" });
}

function Reasons({ asked }: { asked: Asked }) {
  const { open } = asked;
  if (!open) return null;
  return (
    <div class="reasons">
      {open.why && <p>{say("questions.why", { why: open.why })}</p>}
      {open.hangs && (
        <details class="more">
          <summary>{say("questions.hangs")}</summary>
          <p>{open.hangs}</p>
        </details>
      )}
      {open.how && <p>{say("questions.how", { how: open.how })}</p>}
      {open.by && open.minutes !== null && (
        <p class="small">{say(open.minutes === 1 ? "questions.who_one" : "questions.who", { by: byWhom(open.by), minutes: open.minutes })}</p>
      )}
    </div>
  );
}

/** One question: what is asked, why, how to find out, the answers, and the way past it. */
export function Card({ asked }: { asked: Asked }) {
  const title = useRef<HTMLHeadingElement>(null);
  const card = useRef<HTMLElement>(null);
  const before = useRef(asked.fact);
  const { fact, open } = asked;
  const question = open?.question || called(fact);
  useEffect(() => {
    if (before.current !== fact) title.current?.focus({ preventScroll: true });
    before.current = fact;
  }, [fact]);
  const still = left(ask.value?.find_out ?? [], session.value);
  const about = ofWhat(fact);
  return (
    <article class="question" ref={card} aria-labelledby="question-title">
      {!session.value.back && <p class="small count">{say(still > 1 ? "questions.left" : "questions.last", { n: still })}</p>}
      <h3 id="question-title" ref={title} tabIndex={-1}>{question}</h3>
      {about && <p class="small">{about}</p>}
      <Reasons asked={asked} />
      <AnswerTo
        key={fact} fact={fact} question={say("questions.answer")}
        onTaken={() => { session.value = answer(session.peek(), fact); }}
      />
      <div class="acts">
        <button type="button" class="press second" onClick={() => { session.value = setAside(session.peek(), fact); }}>
          {say("questions.not_known")}
        </button>
        <button type="button" class="plainly" onClick={() => showOnPlace(fact)}>{say("questions.show")}</button>
      </div>
      <Photos fact={fact} what={called(fact)} />
    </article>
  );
}
