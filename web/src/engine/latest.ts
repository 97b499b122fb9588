import { Overtaken } from "./faults";

/**
 * Calls of one kind of which only the newest counts: one runs, one waits, and whatever waited
 * before it is told that it was overtaken. What runs is let finish, but told by its signal that a
 * newer one has come, so that it need not go on waiting for something else.
 */
export function latestWins<A, R>(
  call: (argument: A, newer: AbortSignal) => Promise<R>,
): (argument: A) => Promise<R> {
  type Waiting = { argument: A; done: (r: R) => void; failed: (e: unknown) => void };
  let running: AbortController | undefined;
  let waiting: Waiting | undefined;

  const go = async (): Promise<void> => {
    if (running || !waiting) return;
    const { argument, done, failed } = waiting;
    waiting = undefined;
    running = new AbortController();
    try {
      done(await call(argument, running.signal));
    } catch (error) {
      failed(error);
    }
    running = undefined;
    void go();
  };

  return (argument) => new Promise((done, failed) => {
    waiting?.failed(new Overtaken());
    waiting = { argument, done, failed };
    running?.abort();
    void go();
  });
}
