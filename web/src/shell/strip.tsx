// The answer in one line, in sight while its sentence is not; and the same for those who listen.

import { signal, useSignalEffect } from "@preact/signals";
import { useEffect, useRef, useState } from "preact/hooks";
import { Shape } from "../answer/Mark";
import { openRuleCount } from "../answer/open";
import { faultSays } from "../answer/speak";
import { inSight } from "../answer/told";
import { faults, first, ofProgram, said, working } from "../bench";
import type { First } from "../contract";
import { say, type WordKey } from "../words";
import { price } from "./format";

type Verdict = "meets" | "fails" | "caution" | "not known";

interface Short { verdict: Verdict; words: string; price: string }

const verdictWords: Record<Verdict, WordKey> = {
  meets: "shell.meets", fails: "shell.fails", caution: "shell.with_caution",
  "not known": "shell.not_known",
};

/** Unknown is never shown as safe, nor is what wants care. */
function verdictOf(answer: First, conditional: boolean): Verdict {
  const verdicts = answer.chosen?.findings.map(({ verdict }) => verdict) ?? [];
  if (verdicts.includes("fails")) return "fails";
  if (conditional || verdicts.includes("not known")) return "not known";
  const runs = Object.keys(answer.chosen?.runs ?? {});
  if (openRuleCount(answer.chosen?.findings ?? [], runs) > 0) return "not known";
  const careful = verdicts.includes("caution") || (answer.chosen?.cautions.length ?? 0) > 0;
  return careful ? "caution" : "meets";
}

export function inShort(answer: First | null): Short {
  const line = answer?.schemes.find((scheme) => scheme.key === answer.chosen_key)
    ?? answer?.schemes[0];
  const none = (verdict: Verdict, words: WordKey): Short =>
    ({ verdict, words: say(words), price: "" });
  if (!answer) return none("not known", "shell.strip_unknown");
  if (!line && answer.stopped) return none("not known", "shell.strip_stopped");
  if (!line) return none("fails", "shell.strip_none");
  const verdict = verdictOf(answer, !answer.sound || (line.conditional_on?.length ?? 0) > 0);
  return {
    verdict, words: line.words,
    price: price(line.price.total, line.price.currency),
  };
}

/** Whether the sentence of the answer can be seen: then the strip would say it twice. Also tells the
    answer whether it is in sight. */
const sentenceSeen = signal(false);

function useSeen(): void {
  useEffect(() => {
    const target = document.querySelector("#answer");
    if (!target || typeof IntersectionObserver === "undefined") return;
    const watch = new IntersectionObserver(([entry]) => {
      sentenceSeen.value = !!entry && entry.isIntersecting;
    }, { rootMargin: "0px 0px -120px 0px" });
    const near = new IntersectionObserver(([entry]) => {
      inSight.value = !entry || entry.isIntersecting;
    }, { rootMargin: "100px" });
    watch.observe(target);
    near.observe(target);
    return () => {
      watch.disconnect();
      near.disconnect();
      inSight.value = true;
    };
  }, []);
}

export function Strip() {
  useSeen();
  const short = inShort(first.value);
  const fault = faults.value[0];
  const verdict = fault ? "not known" : short.verdict;
  return (
    <a class="strip" href="#answer" hidden={sentenceSeen.value}
      onClick={(event) => {
        event.preventDefault();
        document.querySelector("#answer")?.scrollIntoView();
      }}>
      <Shape verdict={verdict} />
      <span class="strip-words">
        <span class="unseen">{say("shell.strip")}: </span>
        {fault && !ofProgram(fault) ? say("shell.fault", { says: faultSays(fault) })
          : fault ? say("shell.strip_unknown") : short.words}
      </span>
      <span class={`strip-price is-${verdict.replace(" ", "-")}`}>
        {working.value ? say("shell.working") : (
          <>
            <b>{fault ? "" : short.price}</b>
            <span>{say(verdictWords[verdict])}</span>
          </>
        )}
      </span>
    </a>
  );
}

const QUIET_MS = 900;

const saidWords: Record<string, WordKey> = {
  undo: "shell.said_undo", redo: "shell.said_redo", merged: "shell.said_merged",
  "changed-elsewhere": "shell.said_changed_elsewhere",
};

/** Says changes to those who listen, once things have come to rest. */
export function Spoken() {
  const [text, setText] = useState("");
  const last = useRef("");
  useSignalEffect(() => {
    const key = saidWords[said.value];
    if (key) setText(say(key));
  });
  useSignalEffect(() => {
    const answer = first.value;
    if (!answer || faults.value.length > 0) {
      if (last.current) setText("");
      last.current = "";
      return;
    }
    const short = inShort(answer);
    const words = short.price
      ? say("shell.said_answer", {
        words: short.words, price: short.price, verdict: say(verdictWords[short.verdict]),
      })
      : say("shell.said_no_answer");
    const timer = setTimeout(() => {
      if (words === last.current) return;
      last.current = words;
      setText(words);
    }, QUIET_MS);
    return () => clearTimeout(timer);
  });
  return <p class="unseen" aria-live="polite">{text}</p>;
}
