import { Overtaken } from "./faults";

/**
 * Calls of one kind of which only the newest counts: one runs, one waits, and whatever waited
 * before it is told that it was overtaken. What runs is let finish.
 */
export function latestWins<A, R>(call: (argument: A) => Promise<R>): (argument: A) => Promise<R> {
  type Waiting = { argument: A; done: (r: R) => void; failed: (e: unknown) => void };
  let running = false;
  let waiting: Waiting | undefined;

  const go = async (): Promise<void> => {
    if (running || !waiting) return;
    const { argument, done, failed } = waiting;
    waiting = undefined;
    running = true;
    try {
      done(await call(argument));
    } catch (error) {
      failed(error);
    }
    running = false;
    void go();
  };

  return (argument) => new Promise((done, failed) => {
    waiting?.failed(new Overtaken());
    waiting = { argument, done, failed };
    void go();
  });
}
