// The papers that are handed over, by the names that the engine knows them by.

export const kinds = [
  "clients-choice",
  "design-record",
  "installers-sheet",
  "ground-sheet",
  "materials",
  "test-sheet",
  "labels",
  "users-sheet",
] as const;

export type Kind = (typeof kinds)[number];
