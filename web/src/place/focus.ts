// Where the eye and the keyboard go when something is chosen or what they were at is gone.

import { effect } from "@preact/signals";
import { faults, first, job } from "../bench";
import { session } from "../questions/state";
import { rest } from "./hand";
import { chosen, hand } from "./state";

const fields = 'input:not(.hidden-file):not([type="checkbox"]), select, button.press, summary';

/** What is written is typed at once with a keyboard; a finger would only raise the screen's own. */
const byFinger = (): boolean => matchMedia("(pointer: coarse)").matches;

function focusIn(room: Element | null): void {
  if (!room) return;
  const title = room.querySelector<HTMLElement>("#facts-title, #question-title");
  const field = room.querySelector<HTMLElement>(fields);
  const to = (byFinger() ? title : field) ?? title ?? field;
  to?.focus({ preventScroll: true });
  if (to instanceof HTMLInputElement && to.type === "text") to.select();
}

const panel = (): Element | null =>
  document.querySelector(".beside .putting") ?? document.querySelector(".beside .facts");

/** Scrolls so far that the head of the panel and something of what is in it can be seen. */
export function showPanel(): void {
  requestAnimationFrame(() => {
    const box = panel()?.getBoundingClientRect();
    if (!box || (box.top > 60 && box.top < innerHeight * 0.55)) return;
    scrollBy({ top: box.top - innerHeight * 0.42 });
  });
}

/** Brings the picture back, to be pointed at. */
export function showPlan(): void {
  requestAnimationFrame(() => {
    const top = document.querySelector(".place .picture")?.getBoundingClientRect().top ?? 0;
    if (top < 0 || top > innerHeight * 0.4) scrollBy({ top: top - 8 });
  });
}

/** To the first field of the panel, which is there with the next frame. */
export function panelThere(): void {
  requestAnimationFrame(() => {
    focusIn(panel());
    showPanel();
  });
}

const rooms = ".place, .questions";
let last: Element | null = null;
let lastRoom: "place" | "questions" = "place";

function remember(event: FocusEvent): void {
  const target = event.target as Element;
  last = target.closest(rooms) ? target : null;
  if (last) lastRoom = target.closest(".questions") ? "questions" : "place";
}

/** What had the keyboard went away with a change: its place is taken by what came instead. */
function recover(): void {
  if (document.activeElement !== document.body || !last || last.isConnected) return;
  const asked = document.querySelector(".questions .question");
  const opened = panel();
  focusIn(lastRoom === "questions" && hand.peek() === rest ? asked ?? opened : opened ?? asked);
  if (document.activeElement === document.body) {
    document.querySelector<HTMLElement>(".plan")?.focus({ preventScroll: true });
  }
}

/** Follows the survey as long as it is shown. */
export function keepFocus(): () => void {
  document.addEventListener("focusin", remember);
  let was = hand.peek().does;
  const stopPlan = effect(() => {
    const { does } = hand.value;
    if (does !== was && (does === "route" || does === "metal" || does === "rod")) showPlan();
    was = does;
  });
  let timer: ReturnType<typeof setTimeout> | undefined;
  const stop = effect(() => {
    void [chosen.value, hand.value, session.value, faults.value, first.value, job.value];
    clearTimeout(timer);
    timer = setTimeout(recover, 50);
  });
  return () => {
    stop();
    stopPlan();
    clearTimeout(timer);
    document.removeEventListener("focusin", remember);
  };
}
