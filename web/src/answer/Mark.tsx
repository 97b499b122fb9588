// A verdict: a shape and a word, never a colour alone.

import { sayOr } from "./speak";

const shapes: Record<string, string> = {
  meets: "M6 1a5 5 0 1 0 0 10a5 5 0 0 0 0-10z",
  caution: "M6 .8 11.6 11H.4z",
  fails: "M1 1h10v10H1z",
};

/** The shape alone, for where the word stands beside it. */
export function Shape({ verdict }: { verdict: string }) {
  const path = shapes[verdict];
  return (
    <svg class={`shape is-${verdict.replace(/ /g, "-")}`} viewBox="0 0 12 12" aria-hidden="true">
      {path ? (
        <path d={path} fill="currentColor" />
      ) : (
        <path d="M6 .9 11.1 6 6 11.1.9 6z" fill="none" stroke="currentColor" stroke-width="1.6" />
      )}
      {verdict === "fails" && (
        <path class="cross" d="M3.4 3.4l5.2 5.2m0-5.2L3.4 8.6" fill="none" stroke-width="1.6" />
      )}
    </svg>
  );
}

export function Verdict({ verdict }: { verdict: string }) {
  return (
    <span class={`verdict is-${verdict.replace(/ /g, "-")}`}>
      <Shape verdict={verdict} /> {sayOr(`answer.${verdict}`, verdict)}
    </span>
  );
}
