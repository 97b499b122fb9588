// What is folded away is not drawn anew with each change, only when the page has come to rest or when
// it is opened: drawing it would stand before what can be seen.

import type { ComponentChildren } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";

const REST_MS = 300;

interface Props {
  summary: ComponentChildren;
  class?: string;
  id?: string;
  open?: boolean;
  children: ComponentChildren;
}

export function Fold({ summary, children, ...rest }: Props) {
  const box = useRef<HTMLDetailsElement>(null);
  const kept = useRef<{ children: ComponentChildren; due: boolean }>({ children: null, due: true });
  const [, setTurn] = useState(0);
  const renew = () => {
    kept.current.due = true;
    setTurn((turn) => turn + 1);
  };
  if (kept.current.due || box.current?.open) kept.current = { children, due: false };
  const behind = kept.current.children !== children;
  useEffect(() => {
    if (!behind) return undefined;
    const timer = setTimeout(renew, REST_MS);
    return () => clearTimeout(timer);
  });
  return (
    <details ref={box} onToggle={(e) => e.target === box.current && behind && renew()} {...rest}>
      <summary>{summary}</summary>
      {kept.current.children}
    </details>
  );
}
