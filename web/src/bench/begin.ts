import { warmEngine } from "../engine";
import { openFirst, serverBack } from "./open";
import { tryAtSigns, whenBack } from "./reach";
import { save } from "./save";
import { author } from "./state";

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
  addEventListener("pagehide", () => void save());
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden") void save();
  });
  await openFirst();
  tryAtSigns();
  whenBack(() => void serverBack());
}
