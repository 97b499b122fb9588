// Every word of the page stands in en/<room>.json; say("room.key", {name: value}) puts it together.

import answer from "./en/answer.json";
import clash from "./en/clash.json";
import devices from "./en/devices.json";
import fact from "./en/fact.json";
import history from "./en/history.json";
import jobs from "./en/jobs.json";
import papers from "./en/papers.json";
import place from "./en/place.json";
import prices from "./en/prices.json";
import questions from "./en/questions.json";
import readings from "./en/readings.json";
import shell from "./en/shell.json";

const words = {
  answer, clash, devices, fact, history, jobs, papers, place, prices, questions, readings, shell,
};

type Words = typeof words;
type RoomKey<R extends keyof Words> = `${R}.${keyof Words[R] & string}`;
export type WordKey = { [R in keyof Words]: RoomKey<R> }[keyof Words];

const flat = new Map<string, string>();
for (const [room, entries] of Object.entries(words)) {
  for (const [key, text] of Object.entries(entries)) flat.set(`${room}.${key}`, text as string);
}

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
