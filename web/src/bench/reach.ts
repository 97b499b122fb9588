// Whether the server can be reached: found out by asking it, not by what the browser believes.

import { effect, signal } from "@preact/signals";
import type { About } from "../contract";
import { NotThere, Refused, server } from "../keep/server";

/** "never": the page is a file of its own, or stands where no server is. */
export const serverThere = signal<boolean | "never">(
  typeof location !== "undefined" && location.protocol === "file:" ? "never" : false);
export const about = signal<About | null>(null);
/** True when the server asks for the pairing code first. */
export const mustPair = signal(false);

const FIRST_WAIT_MS = 2000;
const LONGEST_WAIT_MS = 30000;
let wait = FIRST_WAIT_MS;
let timer: ReturnType<typeof setTimeout> | undefined;

export function heard(): void {
  wait = FIRST_WAIT_MS;
  clearTimeout(timer);
  if (serverThere.peek() !== true) serverThere.value = true;
}

export function unheard(): void {
  if (serverThere.peek() === "never") return;
  serverThere.value = false;
  clearTimeout(timer);
  timer = setTimeout(() => void tryServer(), wait);
  wait = Math.min(LONGEST_WAIT_MS, wait * 2);
}

/** Asks the server who it is. */
export async function tryServer(): Promise<boolean> {
  if (serverThere.peek() === "never") return false;
  try {
    about.value = await server.about();
    mustPair.value = about.value.lan && !about.value.paired;
    heard();
    return true;
  } catch (error) {
    if (error instanceof Refused && (error.status === 401 || error.status === 403)) {
      mustPair.value = true;
      heard();
      return true;
    }
    if (!(error instanceof NotThere)) console.warn(error);
    unheard();
    return false;
  }
}

/** Runs `task` each time the server comes back. */
export function whenBack(task: () => void): void {
  effect(() => {
    if (serverThere.value === true) queueMicrotask(task);
  });
}

export function tryAtSigns(): void {
  const now = () => { wait = FIRST_WAIT_MS; void tryServer(); };
  addEventListener("online", now);
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible" && serverThere.peek() === false) now();
  });
}
