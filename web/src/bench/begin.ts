import { warmEngine } from "../engine";
import { openFirst, serverBack } from "./open";
import { tryAtSigns, whenBack } from "./reach";
import { noteUnwritten, save } from "./save";
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
  whenBack(() => void serverBack());
}
