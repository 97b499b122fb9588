// Those parts of a scheme and of the answer that this room reads, as schema/answer.json says them.

export interface Money {
  net: number;
  total: number;
}

export interface Price {
  net: number;
  vat: number;
  total: number;
  low: Money;
  high: Money;
  currency: string;
  basis: string;
  parts?: Record<string, number>;
}

export interface OverYears {
  years: number;
  energy_lost_kwh_a_year: number;
  energy_lost: number;
  total: number;
  least: boolean;
}

export interface Use {
  value: number;
  limit: number;
  use: number;
}

export interface Device {
  standard: string;
  curve: string | null;
  kind: string;
  rating_a: number;
  breaking_capacity_ka: number;
}

export interface Circuit {
  number: number;
  name: string;
  kind: string;
  cable: { family: string; live_mm2: number; cpc_mm2: number; length_m: number };
  device: Device;
  rcd: { sensitivity_ma: number; type: string } | null;
  design_current_a: number | null;
  rating_a: number | null;
  r1_plus_r2_20c_ohm: number | null;
  drop_percent: Use | null;
  loop_ohm: Use | null;
  heat: Use | null;
  starting_dip_percent: Use | null;
}

export interface BuildingScheme {
  earthing: string;
  circuits?: Circuit[];
}

export interface RunScheme {
  figures: Record<string, unknown>;
}

export interface Amount {
  total_a: number;
}

export interface Demand {
  scenario: string;
  run_a: number | null;
  buildings: Record<string, Record<string, unknown>>;
  limits: Array<{ part: string; carries_a: number; known: boolean }>;
  house: Array<{
    way: string;
    demand_a: number;
    left: Array<{ part: string; left_a: number }>;
  }>;
  operator?: { do: string; reasons: Array<{ when: string; why: string }> };
}

export interface Choice {
  choice: string;
  standing: string;
  reasons: string[];
  residual_risk: string;
  would_change: string[];
}

export interface Step {
  key: string;
  asks: string;
  found: string;
  known: string;
  consequences: Array<{ choice: string; bearing: string; why: string }>;
  basis: { kind?: string; clause?: string; source?: string; locator?: string; basis?: string };
  would_change: string[];
}

export interface Walk {
  building: string;
  conclusion: string;
  choices: Choice[];
  steps: Step[];
}

export interface Nearest {
  key: string;
  use: number;
}

/** A value by its dotted path, where it is a number. */
export function numberAt(whole: unknown, path: string): number | null {
  let value = whole;
  for (const part of path.split(".")) {
    if (typeof value !== "object" || value === null) return null;
    value = (value as Record<string, unknown>)[part];
  }
  return typeof value === "number" ? value : null;
}
