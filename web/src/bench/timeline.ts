// Steps that can be gone back over, of one job since it was opened here.

import type { Job } from "../contract";
import { rebase } from "../keep/merge";

export interface Step {
  before: Job;
  after: Job;
  words: string;
  /** The server's revision that holds it; null while it is not sent. */
  revision: number | null;
}

const KEPT = 300;

export class Timeline {
  past: Step[] = [];
  future: Step[] = [];

  did(step: Step, joins: boolean): void {
    const last = this.past.at(-1);
    if (joins && last && last.words === step.words && last.revision === null) {
      last.after = step.after;
    } else {
      this.past.push(step);
      if (this.past.length > KEPT) this.past.shift();
    }
    this.future = [];
  }

  /** What the server has not seen yet, oldest first. */
  unsent(): Step[] {
    return this.past.filter((step) => step.revision === null);
  }

  sent(steps: Step[], revision: number): void {
    for (const step of steps) step.revision = revision;
  }

  /** Takes the last step back; what came from elsewhere since then stays. */
  back(now: Job): Job | undefined {
    const step = this.past.pop();
    if (!step) return undefined;
    this.future.push(step);
    return rebase(step.after, step.before, now);
  }

  forth(now: Job): Job | undefined {
    const step = this.future.pop();
    if (!step) return undefined;
    this.past.push({ ...step, revision: null });
    return rebase(step.before, step.after, now);
  }

  /** The server took revision `number` back: so did we. */
  serverBack(number: number): void {
    while (this.past.at(-1)?.revision === number) this.future.push(this.past.pop()!);
  }

  clear(): void {
    this.past = [];
    this.future = [];
  }
}
