// Which fact is asked next. The engine orders them by worth; what the person set aside or has just
// answered is passed over, and either can be returned to.

import type { Unknown } from "../contract";

export interface Session {
  /** Facts the person does not know, in the order they were set aside. */
  aside: string[];
  /** Facts answered here, in order. */
  answered: string[];
  /** A fact that is returned to; null for the next of the list. */
  back: string | null;
}

export const fresh: Session = { aside: [], answered: [], back: null };

export function nextAsked(list: readonly Unknown[], session: Session): Unknown | undefined {
  return list.find(({ fact }) => !session.aside.includes(fact) && !session.answered.includes(fact));
}

/** How many are still to be asked. */
export function left(list: readonly Unknown[], session: Session): number {
  return list.filter(({ fact }) => !session.aside.includes(fact) && !session.answered.includes(fact)).length;
}

export function answer(session: Session, fact: string): Session {
  return {
    aside: session.aside.filter((f) => f !== fact),
    answered: [...session.answered.filter((f) => f !== fact), fact],
    back: null,
  };
}

export function setAside(session: Session, fact: string): Session {
  return {
    aside: [...session.aside.filter((f) => f !== fact), fact],
    answered: session.answered.filter((f) => f !== fact),
    back: null,
  };
}

export function returnTo(session: Session, fact: string): Session {
  return { ...session, back: fact };
}

/** A new answer of the engine asks again only for what is really open: it forgets nothing else. */
export function heardAgain(session: Session, list: readonly Unknown[]): Session {
  const open = new Set(list.map(({ fact }) => fact));
  const answered = session.answered.filter((fact) => !open.has(fact));
  return answered.length === session.answered.length ? session : { ...session, answered };
}
