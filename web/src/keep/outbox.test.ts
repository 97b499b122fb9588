import { beforeEach, expect, test } from "vitest";
import { inMemory, type Cabinet } from "./cabinet";
import { Outbox, type Held, type Waiting } from "./outbox";
import { NotThere, Refused } from "./server";

interface Note extends Waiting { words: string }

let things: Cabinet;
let got: Array<Held<Note>>;
let answer: (held: Held<Note>) => void;
let outbox: Outbox<Note>;
const make = () => new Outbox<Note>("note", async () => things, async (held) => {
  await new Promise((done) => setTimeout(done, 2));
  answer(held);
  got.push(held);
});
const note = (words: string, at = "10:00"): Note => ({ words, at, by: "", revision: 3 });
const refusal = (status: number) =>
  new Refused(status, { type: "about:blank", title: "too far", status, detail: "" });

beforeEach(() => {
  things = inMemory();
  got = [];
  answer = () => {};
  outbox = make();
});

test("each is sent once, however often sending is asked for", async () => {
  await outbox.add("a", note("one", "10:00"));
  await outbox.add("a", note("two", "10:01"));
  await Promise.all([outbox.flush(), outbox.flush(), outbox.flush()]);
  expect(got.map(({ thing }) => thing.words)).toEqual(["one", "two"]);
  expect(await outbox.all()).toEqual([]);
});

test("one whose answer was lost is sent again under the same id", async () => {
  await outbox.add("a", note("one"));
  const ids: string[] = [];
  answer = ({ id }) => { ids.push(id); throw new NotThere(); };
  await outbox.flush();
  answer = ({ id }) => { ids.push(id); };
  await outbox.flush();
  expect(ids[0]).toMatch(/^[0-9a-f-]{36}$/);
  expect(ids).toEqual([ids[0], ids[0]]);
});

test("one that is refused says why, stays, and holds nothing else up", async () => {
  await outbox.add("a", note("bad", "10:00"));
  await outbox.add("a", note("good", "10:01"));
  answer = ({ thing }) => { if (thing.words === "bad") throw refusal(422); };
  await outbox.flush();
  expect(got.map(({ thing }) => thing.words)).toEqual(["good"]);
  expect((await outbox.all("a")).map(({ thing }) => [thing.words, thing.refused]))
    .toEqual([["bad", "too far"]]);
  let asked = 0;
  answer = () => { asked += 1; };
  await outbox.flush();
  expect(asked).toBe(0);
});

test("a server that has no time, or does not know the job yet, refuses nothing for good", async () => {
  await outbox.add("a", note("one"));
  for (const status of [404, 503, 401]) {
    answer = () => { throw refusal(status); };
    await outbox.flush();
  }
  answer = () => {};
  await outbox.flush();
  expect(got.map(({ thing }) => thing.words)).toEqual(["one"]);
});

test("those of jobs that are not open are sent too", async () => {
  await outbox.add("a", note("one", "10:00"));
  await outbox.add("b", note("two", "10:01"));
  await outbox.flush();
  expect(got.map(({ job }) => job)).toEqual(["a", "b"]);
});
