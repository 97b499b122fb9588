// What keys do, everywhere on the page.

import { signal } from "@preact/signals";
import { redo, undo } from "../bench";
import { goTo, places } from "./route";
import { singleKeys } from "./settings";

export const helpOpen = signal(false);

const writes = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement
  && (target.isContentEditable || /^(INPUT|TEXTAREA|SELECT)$/.test(target.tagName));

/** What is typed beside the picture is an answer that missed its field, never a way out of it. */
const answering = (target: EventTarget | null): boolean =>
  target instanceof Element && target.closest(".beside, .question") !== null;

/** A field that has an undo of its own while something is written in it. */
const textField = (target: EventTarget | null): boolean =>
  target instanceof HTMLTextAreaElement || (target instanceof HTMLInputElement
    && /^(text|search|number|tel|url|email|password)$/.test(target.type));

function step(event: KeyboardEvent): boolean {
  if (!(event.ctrlKey || event.metaKey) || event.altKey || textField(event.target)) return false;
  const key = event.key.toLowerCase();
  if (key === "z") void (event.shiftKey ? redo() : undo());
  else if (key === "y" && !event.shiftKey) void redo();
  else return false;
  return true;
}

function single(event: KeyboardEvent): boolean {
  if (singleKeys.value === "off" || event.ctrlKey || event.metaKey || event.altKey) return false;
  if (writes(event.target) || answering(event.target) || document.querySelector("dialog[open]")) return false;
  if (event.key === "?") {
    helpOpen.value = true;
    return true;
  }
  const name = places[Number(event.key) - 1];
  if (!name) return false;
  goTo(name);
  return true;
}

export function followKeys(): void {
  window.addEventListener("keydown", (event) => {
    if (step(event) || single(event)) event.preventDefault();
  });
}
