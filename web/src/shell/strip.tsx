// The answer in one line, in sight while its sentence is not; and the same for those who listen.

import { signal, useSignalEffect } from "@preact/signals";
import { useEffect, useRef, useState } from "preact/hooks";
import { faults, first, said, working } from "../bench";
import type { First } from "../contract";
import { say, type WordKey } from "../words";
import { price } from "./format";

type Shape = "meets" | "fails" | "caution" | "unknown";

interface Short { shape: Shape; verdict: string; words: string; price: string }

const verdictWords: Record<Shape, WordKey> = {
  meets: "shell.meets", fails: "shell.fails", caution: "shell.with_caution",
  unknown: "shell.not_known",
};

/** Unknown is never shown as safe, nor is what wants care. */
function shapeOf(answer: First, conditional: boolean): Shape {
  const verdicts = answer.chosen?.findings.map(({ verdict }) => verdict) ?? [];
  if (verdicts.includes("fails")) return "fails";
  if (conditional || verdicts.includes("not known")) return "unknown";
  return verdicts.includes("caution") ? "caution" : "meets";
}

export function inShort(answer: First | null): Short {
  const line = answer?.schemes.find((scheme) => scheme.key === answer.chosen_key)
    ?? answer?.schemes[0];
  const none = (shape: Shape, words: WordKey): Short =>
    ({ shape, verdict: say(verdictWords[shape]), words: say(words), price: "" });
  if (!answer) return none("unknown", "shell.strip_unknown");
  if (!line) return none("fails", "shell.strip_none");
  const shape = shapeOf(answer, !answer.sound || (line.conditional_on?.length ?? 0) > 0);
  return {
    shape, verdict: say(verdictWords[shape]), words: line.words,
    price: price(line.price.total, line.price.currency),
  };
}

/** A verdict's shape; the word stands beside it. */
export function Mark({ shape }: { shape: Shape }) {
  return (
    <svg class={`mark mark-${shape}`} viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">
      {shape === "meets" && <circle cx="10" cy="10" r="7" />}
      {shape === "fails" && <path d="M4 4 16 16M16 4 4 16" />}
      {shape === "caution" && <path d="M10 3 18 17H2Z" />}
      {shape === "unknown" && <circle cx="10" cy="10" r="7" stroke-dasharray="3 2.5" />}
    </svg>
  );
}

/** Whether the sentence of the answer can be seen: then the strip would say it twice. */
const sentenceSeen = signal(false);

function useSeen(): void {
  useEffect(() => {
    const target = document.querySelector("#answer");
    if (!target || typeof IntersectionObserver === "undefined") return;
    const watch = new IntersectionObserver(([entry]) => {
      sentenceSeen.value = !!entry && entry.isIntersecting;
    }, { rootMargin: "0px 0px -120px 0px" });
    watch.observe(target);
    return () => watch.disconnect();
  }, []);
}

export function Strip() {
  useSeen();
  const short = inShort(first.value);
  const fault = faults.value[0];
  return (
    <a class="strip" href="#answer" hidden={sentenceSeen.value}
      onClick={(event) => {
        event.preventDefault();
        document.querySelector("#answer")?.scrollIntoView();
      }}>
      <Mark shape={fault ? "unknown" : short.shape} />
      <span class="strip-words">
        <span class="unseen">{say("shell.strip")}: </span>
        {fault ? say("shell.fault", { says: fault.says }) : short.words}
      </span>
      <span class="strip-price">
        {working.value ? say("shell.working") : (
          <>
            <b>{fault ? "" : short.price}</b>
            <span class={`word word-${fault ? "unknown" : short.shape}`}>
              {fault ? say("shell.not_known") : short.verdict}
            </span>
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
    if (!answer) return;
    const short = inShort(answer);
    const words = short.price
      ? say("shell.said_answer", { ...short })
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
