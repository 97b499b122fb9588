// Where the page is: #/survey, #/papers and so on; #/jobs for the list.

import { signal } from "@preact/signals";

export const places = ["survey", "readings", "papers", "prices", "history", "jobs"] as const;
export type PlaceName = (typeof places)[number] | "pair" | "clash";

function read(): PlaceName {
  const word = location.hash.replace(/^#\/?/, "").split("/")[0] ?? "";
  if (word === "pair" || location.pathname.endsWith("/pair")) return "pair";
  if (word === "clash") return "clash";
  return (places as readonly string[]).includes(word) ? (word as PlaceName) : "survey";
}

export const place = signal<PlaceName>(read());

export function goTo(name: PlaceName): void {
  location.hash = `#/${name}`;
}

export function followHash(): void {
  addEventListener("hashchange", () => { place.value = read(); });
}
