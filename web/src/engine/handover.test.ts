import { afterEach, beforeEach, expect, test, vi } from "vitest";
import type { Job, Verb } from "../contract";
import { EngineFaults, NotLoaded, Overtaken, RestAway } from "./faults";
import { HandOver, PATIENCE_MS } from "./handover";
import { latestWins } from "./latest";
import type { Rest } from "./rest";

const elsewhere = JSON.stringify({
  format: "toft-faults/1",
  faults: [{ code: "elsewhere", pointer: "", says: "", nearest: null, allowed: [] }],
});

/** Answers with its name, or what it is told to. */
function lane(name: string) {
  const asked: string[] = [];
  return {
    asked, retired: 0, cleared: 0, renewed: 0, warmed: 0, slow: false, about: "1",
    ends: [] as Array<(text: string) => void>, answers: undefined as string | Error | undefined,
    async call(verb: string) {
      if (verb === "about" && this.answers instanceof Error) throw this.answers;
      if (verb === "about") return JSON.stringify({ version: this.about, by: name });
      asked.push(verb);
      if (this.answers instanceof Error) throw this.answers;
      if (this.slow) return new Promise<string>((done) => this.ends.push(done));
      return this.answers ?? JSON.stringify({ by: name });
    },
    clear() { this.cleared += 1; },
    renew() { this.renewed += 1; },
    retire() { this.retired += 1; },
    async warm() { this.warmed += 1; },
  };
}

let early = lane("small");
let whole = lane("whole");
let told: Rest[] = [];
let held: boolean[] = [];
let others = 0;
let fetched: Array<{ done: () => void; failed: (error: Error) => void }> = [];
const body = { job: {} as Job };

function engine(small: typeof early | null = early) {
  const lanes = new Proxy({}, { get: () => whole }) as Record<Verb, typeof whole>;
  return new HandOver({
    early: small, lanes, other: () => { others += 1; },
    tell: (rest) => told.push(rest), hold: (yes) => held.push(yes),
    fetchWhole: () => new Promise<void>((done, failed) => fetched.push({ done, failed })),
  });
}

beforeEach(() => {
  early = lane("small");
  whole = lane("whole");
  [told, held, fetched, others] = [[], [], [], 0];
});

afterEach(() => { vi.useRealTimers(); });

const soon = () => new Promise((done) => setTimeout(done));

test("the small module answers at once, and nothing else is fetched for it", async () => {
  const both = engine();
  expect(await both.work("first", body)).toEqual({ by: "small" });
  expect(await both.work("about", {})).toMatchObject({ by: "small" });
  expect(fetched.length).toBe(0);
});

test("a verb that the small one does not take waits for the whole module", async () => {
  const both = engine();
  const asked = both.work("levers", body);
  await soon();
  expect([fetched.length, told, whole.asked]).toEqual([1, ["coming"], []]);
  fetched[0]!.done();
  expect(await asked).toEqual({ by: "whole" });
  expect([early.asked, told]).toEqual([[], ["coming", "here"]]);
});

test("so does a job that the small one sends elsewhere, and the page can say so", async () => {
  const both = engine();
  early.answers = elsewhere;
  const asked = both.work("first", body);
  await soon();
  expect(held).toEqual([true]);
  fetched[0]!.done();
  expect(await asked).toEqual({ by: "whole" });
  expect(held).toEqual([true, false]);
});

test("and what it breaks off at; faults of the job are told as they are", async () => {
  const both = engine();
  early.answers = new Error("unreachable");
  const asked = both.work("first", body);
  await soon();
  fetched[0]!.done();
  expect(await asked).toEqual({ by: "whole" });
  early.answers = JSON.stringify({ format: "toft-faults/1", faults: [{ code: "missing" }] });
  await expect(both.work("first", body)).rejects.toBeInstanceOf(EngineFaults);
  expect(whole.asked).toEqual(["first"]);
});

test("until it takes over the whole module only practises; then everything goes to it", async () => {
  const both = engine();
  const practice = both.practise("first", body);
  await soon();
  fetched[0]!.done();
  expect(await practice).toEqual({ by: "whole" });
  expect(await both.work("first", body)).toEqual({ by: "small" });
  both.takeOver();
  both.takeOver();
  expect(early.retired).toBe(1);
  expect(await both.work("first", body)).toEqual({ by: "whole" });
});

test("where the whole module cannot be had the small one goes on, and it is tried again", async () => {
  const both = engine();
  const asked = both.work("ask", body);
  const failed = expect(asked).rejects.toBeInstanceOf(RestAway);
  fetched[0]!.failed(new Error("no network"));
  await failed;
  expect(told).toEqual(["coming", "away"]);
  expect(await both.work("first", body)).toEqual({ by: "small" });
  early.answers = elsewhere;
  const needs = expect(both.work("first", body)).rejects.toBeInstanceOf(RestAway);
  await soon();
  fetched[1]!.failed(new Error("no network"));
  await needs;
  const again = both.work("ask", body);
  fetched[2]!.done();
  expect(await again).toEqual({ by: "whole" });
  expect(told.at(-1)).toBe("here");
});

test("where neither comes nothing is loaded; where only the small one does not, the whole answers", async () => {
  const both = engine();
  early.answers = new NotLoaded("404");
  const none = both.work("first", body).catch((error: Error) => error);
  await soon();
  fetched[0]!.failed(new Error("404"));
  expect(await none).toBeInstanceOf(NotLoaded);
  expect(await none).not.toBeInstanceOf(RestAway);
  const asked = both.work("first", body);
  await soon();
  fetched[1]!.done();
  expect(await asked).toEqual({ by: "whole" });
});

test("a page that holds the whole module inside begins with it", async () => {
  const both = engine(null);
  const warm = both.warm();
  fetched[0]!.done();
  await warm;
  expect([early.warmed, whole.warmed]).toEqual([0, 1]);
  expect(await both.work("first", body)).toEqual({ by: "whole" });
});

test("a question that waits for the whole module makes way for a newer one", async () => {
  const both = engine();
  const newest = latestWins((job: Job, newer) => both.work("first", { job }, newer));
  early.answers = elsewhere;
  const held = expect(newest({} as Job)).rejects.toBeInstanceOf(Overtaken);
  await soon();
  early.answers = undefined;
  expect(await newest({} as Job)).toEqual({ by: "small" });
  await held;
  expect([fetched.length, whole.asked]).toEqual([1, []]);
});

test("after a job that it sent elsewhere the small module begins anew", async () => {
  const both = engine();
  early.answers = elsewhere;
  const asked = both.work("first", body);
  const failed = expect(asked).rejects.toBeInstanceOf(RestAway);
  await soon();
  expect([early.renewed, early.warmed]).toEqual([1, 0]);
  fetched[0]!.failed(new Error("no network"));
  await failed;
  expect([early.renewed, early.warmed]).toEqual([1, 1]);
});

test("where the small module lets wait the whole one is fetched, and answers if it is sooner", async () => {
  vi.useFakeTimers();
  const both = engine();
  early.slow = true;
  const asked = both.work("first", body);
  await vi.advanceTimersByTimeAsync(PATIENCE_MS - 1);
  expect(fetched.length).toBe(0);
  await vi.advanceTimersByTimeAsync(1);
  fetched[0]!.done();
  expect(await asked).toEqual({ by: "whole" });
  expect([early.cleared, early.retired, held]).toEqual([1, 1, [true, false]]);
  expect(await both.work("first", body)).toEqual({ by: "whole" });
});

test("if it is not, the small one's answer counts and it goes on", async () => {
  vi.useFakeTimers();
  const both = engine();
  early.slow = true;
  const asked = both.work("first", body);
  await vi.advanceTimersByTimeAsync(PATIENCE_MS);
  early.ends[0]!(JSON.stringify({ by: "small" }));
  expect(await asked).toEqual({ by: "small" });
  fetched[0]!.done();
  await vi.advanceTimersByTimeAsync(1);
  expect([whole.asked, early.cleared, early.retired, held]).toEqual([[], 0, 0, [true, false]]);
});

test("nor is it given up where the whole one cannot be had", async () => {
  vi.useFakeTimers();
  const both = engine();
  early.slow = true;
  const asked = both.work("first", body);
  await vi.advanceTimersByTimeAsync(PATIENCE_MS);
  fetched[0]!.failed(new Error("no network"));
  await vi.advanceTimersByTimeAsync(1);
  early.ends[0]!(JSON.stringify({ by: "small" }));
  expect(await asked).toEqual({ by: "small" });
});

test("a whole module of another build is not used, and the page can say so", async () => {
  const both = engine();
  await both.work("first", body);
  whole.about = "2";
  const asked = expect(both.work("ask", body)).rejects.toBeInstanceOf(RestAway);
  fetched[0]!.done();
  await asked;
  expect([others, told, whole.asked]).toEqual([1, ["coming", "away"], []]);
  expect(await both.work("first", body)).toEqual({ by: "small" });
});

test("a small module that never comes holds up neither a newer question nor the whole one", async () => {
  vi.useFakeTimers();
  const both = engine();
  const newest = latestWins((job: Job, newer) => both.work("first", { job }, newer));
  early.slow = true;
  const one = expect(newest({} as Job)).rejects.toBeInstanceOf(Overtaken);
  await vi.advanceTimersByTimeAsync(PATIENCE_MS);
  fetched[0]!.failed(new Error("no network"));
  await vi.advanceTimersByTimeAsync(1);
  const two = newest({} as Job);
  await one;
  expect(early.cleared).toBe(1);
  await vi.advanceTimersByTimeAsync(PATIENCE_MS);
  fetched[1]!.failed(new Error("no network"));
  await vi.advanceTimersByTimeAsync(1);
  void both.fetchRest();
  fetched[2]!.done();
  expect(await two).toEqual({ by: "whole" });
  expect([early.cleared, early.retired]).toEqual([2, 1]);
});

test("where it says after a while that it cannot, the page learns what it lacks", async () => {
  vi.useFakeTimers();
  const both = engine();
  early.slow = true;
  const asked = expect(both.work("first", body)).rejects.toBeInstanceOf(RestAway);
  await vi.advanceTimersByTimeAsync(PATIENCE_MS);
  early.ends[0]!(elsewhere);
  fetched[0]!.failed(new Error("no network"));
  await asked;
});

test("one that breaks off at everything is told as what it is, not as another build", async () => {
  const both = engine();
  await both.work("first", body);
  early.answers = new Error("unreachable");
  whole.answers = new Error("unreachable");
  const asked = expect(both.work("first", body)).rejects.toThrow("unreachable");
  await soon();
  fetched[0]!.done();
  await asked;
  expect([others, told]).toEqual([0, ["coming", "here"]]);
});
