// What a figure was before the last answer, so that a change is seen without anything jumping.

import { useRef } from "preact/hooks";
import { shownFirst } from "./told";

/** The former words of a figure if the last answer changed them. */
export function useWas(now: string): string | undefined {
  const answer = shownFirst.value;
  const kept = useRef<{ answer: unknown; now: string; was: string | undefined } | null>(null);
  if (kept.current === null) kept.current = { answer, now, was: undefined };
  else if (kept.current.answer !== answer) {
    const before = kept.current.now;
    kept.current = { answer, now, was: before === now ? undefined : before };
  } else if (kept.current.now !== now) {
    kept.current = { ...kept.current, now };
  }
  return kept.current.was;
}
