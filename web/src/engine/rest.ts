import { signal } from "@preact/signals";

/**
 * Where the whole module is: not asked for yet, on its way, in use, or not to be had. "here" stays;
 * "away" is tried again.
 */
export type Rest = "later" | "coming" | "here" | "away";

export const rest = signal<Rest>("later");
/** True while a `first` waits for it. */
export const firstHeld = signal(false);
/** True once a whole module of another build came: it is not used, the page must be fetched anew. */
export const otherBuild = signal(false);
