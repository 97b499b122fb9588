// Every word of the page stands in en/<room>.json; say("room.key", {name: value}) puts it together.
// What a first visit shows brings its words along; the others come with what says them (learn), from
// files of their own: a room's, or <room>.later.json.

import answer from "./en/answer.json";
import fact from "./en/fact.json";
import place from "./en/place.json";
import questions from "./en/questions.json";
import shell from "./en/shell.json";
import type answerLater from "./en/answer.later.json";
import type factLater from "./en/fact.later.json";
import type placeLater from "./en/place.later.json";
import type questionsLater from "./en/questions.later.json";
import type shellLater from "./en/shell.later.json";
import type clash from "./en/clash.json";
import type devices from "./en/devices.json";
import type history from "./en/history.json";
import type jobs from "./en/jobs.json";
import type papers from "./en/papers.json";
import type prices from "./en/prices.json";
import type readings from "./en/readings.json";

const begun = { answer, fact, place, questions, shell };

interface Later {
  answer: typeof answerLater;
  fact: typeof factLater;
  place: typeof placeLater;
  questions: typeof questionsLater;
  shell: typeof shellLater;
  clash: typeof clash;
  devices: typeof devices;
  history: typeof history;
  jobs: typeof jobs;
  papers: typeof papers;
  prices: typeof prices;
  readings: typeof readings;
}

type Words = typeof begun & Later;
type RoomKey<R extends keyof Words> = `${R}.${keyof Words[R] & string}`;
export type WordKey = { [R in keyof Words]: RoomKey<R> }[keyof Words];

const flat = new Map<string, string>();

/** Takes up the words of a room. */
export function learn<R extends keyof Words>(room: R, words: Partial<Words[R]>): void {
  for (const [key, text] of Object.entries(words)) flat.set(`${room}.${key}`, text as string);
}

for (const [room, words] of Object.entries(begun)) learn(room as "answer", words as typeof answer);

/** The words of a key, with each {name} replaced by what `parts` says for it. */
export function say(key: WordKey, parts: Record<string, string | number> = {}): string {
  const text = flat.get(key) ?? key;
  return text.replace(/\{(\w+)\}/g, (whole, name: string) =>
    name in parts ? String(parts[name]) : whole);
}

/** Whether a key made at run time has words. */
export function hasWords(key: string): key is WordKey {
  return flat.has(key);
}
