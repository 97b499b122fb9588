// The parts of a job that the survey draws and edits. Every key but the few required ones may be
// missing: a job is surveyed piece by piece, and what is missing is not known.

export type Basis = "measured" | "declared" | "assumed";

/** Metres east and north of the house. */
export type Point = [number, number];

export interface Known {
  value?: number | null;
  low?: number | null;
  high?: number | null;
  basis?: Basis | null;
  spread?: "even" | "bell" | null;
}

/** A bare number was measured. */
export type Figure = number | Known | null;

interface Open {
  [key: string]: unknown;
}

export interface Leg extends Open {
  method: string;
  length_m?: Figure;
  through_m?: Point[] | null;
}

export interface Run extends Open {
  id: string;
  from: string;
  to: string;
  legs: Leg[];
}

export interface Metal extends Open {
  what: string;
  comes_from?: string | null;
  through_m?: Point[] | null;
}

export interface Electrode extends Open {
  at_m?: Point | null;
}

export interface Circuit extends Open {
  name: string;
  kind: string;
  load_w?: Figure;
}

export interface Building extends Open {
  id: string;
  name?: string | null;
  at?: "origin" | null;
  at_m?: Point | null;
  use?: string | null;
  metalwork?: Metal[] | null;
  electrode?: Electrode | null;
  circuits?: Circuit[] | null;
}

export interface Job extends Open {
  intake?: { earthing?: string | null; [key: string]: unknown };
  buildings: Building[];
  runs: Run[];
}

export function isHouse(building: Building): boolean {
  return building.at === "origin";
}

export function nameOf(building: Building): string {
  return building.name || building.id;
}
