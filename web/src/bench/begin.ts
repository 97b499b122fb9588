import { effect } from "@preact/signals";
import { warmEngine } from "../engine";
import { openFirst, serverBack } from "./open";
import { tryAtSigns, whenBack } from "./reach";
import { keepTryingRest } from "./rest";
import { noteUnwritten, save } from "./save";
import { author, faults, first } from "./state";

const NAME = "toft/author";

/** Starts the bench: engine, keeper, the first job. */
export async function begin(): Promise<void> {
  void warmEngine().catch(() => {});  // told with the first call
  try {
    author.value = localStorage.getItem(NAME) ?? "";
    author.subscribe((name) => localStorage.setItem(NAME, name));
  } catch {
    // nowhere to remember the name
  }
  const leave = () => {
    noteUnwritten();
    void save();
  };
  addEventListener("pagehide", leave);
  addEventListener("beforeunload", (event) => {
    if (!noteUnwritten()) event.preventDefault();  // the browser asks first
  });
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden") leave();
  });
  await openFirst();
  tryAtSigns();
  keepTryingRest();
  whenBack(() => void serverBack());
}

/** Runs `task` once, when the first answer (or what is at fault) is on screen and the page idles. */
export function whenAnswered(task: () => void): void {
  let done = false;
  effect(() => {
    if (done || (!first.value && faults.value.length === 0)) return;
    done = true;
    idle(task);
  });
}

const idle = (task: () => void): void => {
  if (typeof requestIdleCallback === "undefined") setTimeout(task, 300);  // Safari
  else requestIdleCallback(task, { timeout: 3000 });
};
