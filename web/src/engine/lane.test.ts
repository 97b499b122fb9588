import { expect, test } from "vitest";
import { Overtaken } from "./faults";
import { Lane, type Answered, type Asked, type WorkerLike } from "./lane";
import { latestWins } from "./latest";

/** Answers when told to. */
class SlowWorker implements WorkerLike {
  static alive = 0;
  onmessage: ((event: MessageEvent<Answered>) => void) | null = null;
  onerror = null;
  asked: Array<{ id: number; verb: string; body: string }> = [];
  ended = false;
  postMessage(message: Asked): void {
    if ("verb" in message) this.asked.push(message);
  }
  terminate(): void { this.ended = true; }
  answer(text: string): void {
    const { id } = this.asked.at(-1)!;
    this.onmessage?.({ data: { id, text, took: 1 } } as MessageEvent<Answered>);
  }
}

function lane() {
  const workers: SlowWorker[] = [];
  const made = new Lane(() => {
    workers.push(new SlowWorker());
    return workers.at(-1)!;
  }, async () => ({}) as WebAssembly.Module);
  return { made, workers };
}

const soon = () => new Promise((done) => setTimeout(done));

test("calls of a lane are answered one after the other", async () => {
  const { made, workers } = lane();
  const one = made.call("first", "1");
  const two = made.call("first", "2");
  await soon();
  expect(workers[0]!.asked.length).toBe(1);
  workers[0]!.answer("one");
  expect(await one).toBe("one");
  await soon();
  workers[0]!.answer("two");
  expect(await two).toBe("two");
  expect(workers.length).toBe(1);
});

test("clearing ends what runs with its worker, and the next call gets a new one", async () => {
  const { made, workers } = lane();
  const running = made.call("levers", "1");
  const waiting = made.call("levers", "2");
  await soon();
  made.clear();
  await expect(running).rejects.toBeInstanceOf(Overtaken);
  await expect(waiting).rejects.toBeInstanceOf(Overtaken);
  expect(workers[0]!.ended).toBe(true);
  const next = made.call("ask", "3");
  await soon();
  workers[1]!.answer("three");
  expect(await next).toBe("three");
});

test("clearing a lane at rest keeps its worker", async () => {
  const { made, workers } = lane();
  const call = made.call("ask", "1");
  await soon();
  workers[0]!.answer("one");
  await call;
  made.clear();
  expect(workers[0]!.ended).toBe(false);
});

test("a worker in which the engine failed is ended, and the next call gets a new one", async () => {
  const { made, workers } = lane();
  const call = made.call("first", "1");
  await soon();
  const { id } = workers[0]!.asked[0]!;
  const told = expect(call).rejects.toThrow("unreachable");
  workers[0]!.onmessage?.({ data: { id, failed: "unreachable" } } as MessageEvent<Answered>);
  await told;
  expect(workers[0]!.ended).toBe(true);
  const next = made.call("first", "2");
  await soon();
  workers[1]!.answer("two");
  expect(await next).toBe("two");
});

test("of many changes the first and the newest are worked out, the others are overtaken", async () => {
  const begun: number[] = [];
  const ends: Array<() => void> = [];
  const call = latestWins((n: number) => {
    begun.push(n);
    return new Promise<number>((done) => ends.push(() => done(n)));
  });
  const results = [call(1), call(2), call(3)];
  const overtaken = expect(results[1]).rejects.toBeInstanceOf(Overtaken);
  ends[0]!();
  expect(await results[0]).toBe(1);
  await overtaken;
  await soon();
  ends[1]!();
  expect(await results[2]).toBe(3);
  expect(begun).toEqual([1, 3]);
});

test("a lane that is let go ends its worker when nothing runs in it any more", async () => {
  const { made, workers } = lane();
  const one = made.call("first", "1");
  const two = made.call("first", "2");
  await soon();
  made.retire();
  workers[0]!.answer("one");
  expect(await one).toBe("one");
  expect(workers[0]!.ended).toBe(false);
  workers[0]!.answer("two");
  expect(await two).toBe("two");
  expect(workers[0]!.ended).toBe(true);
});

test("a worker starts while its module is on the way, and is asked at once when it is there", async () => {
  const { made, workers } = lane();
  const warm = made.warm();
  expect(workers.length).toBe(1);
  await warm;
  void made.call("first", "1");
  expect(workers[0]!.asked.length).toBe(1);
});

/** A lane whose module comes, or does not, when it is told. */
function laneAwaiting() {
  const workers: SlowWorker[] = [];
  const modules: Array<{ come: () => void; fail: () => void }> = [];
  const made = new Lane(() => {
    workers.push(new SlowWorker());
    return workers.at(-1)!;
  }, () => new Promise((done, failed) => modules.push({
    come: () => done({} as WebAssembly.Module), fail: () => failed(new Error("404")),
  })));
  return { made, workers, modules };
}

test("a lane that is let go while its module is on the way leaves no worker behind", async () => {
  const { made, workers, modules } = laneAwaiting();
  const warm = expect(made.warm()).rejects.toBeInstanceOf(Overtaken);
  made.retire();
  modules[0]!.come();
  await warm;
  await soon();
  expect(workers.map(({ ended }) => ended)).toEqual([true]);
});

test("a module that did not come for one call is not the fault of the next", async () => {
  const { made, workers, modules } = laneAwaiting();
  const old = expect(made.call("ask", "1")).rejects.toBeInstanceOf(Overtaken);
  made.clear();
  await old;
  const now = made.call("ask", "2");
  modules[0]!.fail();
  await soon();
  modules[1]!.come();
  await soon();
  workers.at(-1)!.answer("two");
  expect(await now).toBe("two");
});

test("a lane that begins anew lets what runs finish, and answers the next in a new worker", async () => {
  const { made, workers } = lane();
  const one = made.call("first", "1");
  const two = made.call("first", "2");
  await soon();
  made.renew();
  workers[0]!.answer("one");
  expect(await one).toBe("one");
  await soon();
  expect(workers[0]!.ended).toBe(true);
  workers[1]!.answer("two");
  expect(await two).toBe("two");
  made.renew();
  expect(workers[1]!.ended).toBe(true);
});
