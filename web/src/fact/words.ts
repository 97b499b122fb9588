// Words for facts: what a fact is called, its symbol, what it means, what its values are called.

import { hasWords, say } from "../words";
import { wordKey } from "./kinds";

function worded(key: string): string {
  return hasWords(key) ? say(key) : "";
}

export function called(pointer: string): string {
  const key = wordKey(pointer);
  return worded(`fact.${key}`) || key.slice(key.lastIndexOf(".") + 1).replaceAll("_", " ");
}

export const symbolOf = (pointer: string): string => worded(`fact.${wordKey(pointer)}.symbol`);
export const toldOf = (pointer: string): string => worded(`fact.${wordKey(pointer)}.tell`);

/** A word of the format as people say it; most are plain already. */
export function wordSaid(pointer: string, word: string): string {
  return worded(`fact.${wordKey(pointer)}=${word}`) || word;
}

export function wordTold(pointer: string, word: string): string {
  return worded(`fact.${wordKey(pointer)}=${word}.tell`);
}
