// What this device remembers of how the page should look and listen.

import { effect, signal, type Signal } from "@preact/signals";

export type Theme = "system" | "light" | "dark";

function kept<T extends string>(name: string, usual: T, allowed: readonly T[]): Signal<T> {
  let start = usual;
  try {
    const text = localStorage.getItem(`toft/${name}`);
    start = allowed.find((word) => word === text) ?? usual;
  } catch {
    // nowhere to remember it
  }
  const value = signal<T>(start);
  value.subscribe((now) => {
    try {
      localStorage.setItem(`toft/${name}`, now);
    } catch {
      // nowhere to remember it
    }
  });
  return value;
}

export const themes: readonly Theme[] = ["system", "light", "dark"];
export const theme = kept<Theme>("theme", "system", themes);
export const singleKeys = kept<"on" | "off">("single-keys", "on", ["on", "off"]);

export function followTheme(): void {
  effect(() => {
    const root = document.documentElement;
    if (theme.value === "system") delete root.dataset["theme"];
    else root.dataset["theme"] = theme.value;
  });
}
