// What kinds of fact a job has, and how each is written. Which one stands where: rows.ts.

import type { Basis } from "../place/job";

export type FactKind =
  | "figure" | "number" | "word" | "words" | "yes or no" | "text" | "device" | "list" | "object";

export interface FactRow {
  kind: FactKind;
  low?: number;
  high?: number;
  whole?: boolean;
  words?: string[];
  /** Figures it usually has. */
  usual?: number[];
  needed?: boolean;
}

/** The pointer with a star for each number of an entry of a list. */
export function patternOf(pointer: string): string {
  return pointer.replace(/\/\d+(?=\/|$)/g, "/*");
}

/** Under which its words stand: "buildings.metalwork.what". */
export function wordKey(pointer: string): string {
  return patternOf(pointer).slice(1).replaceAll("/*", "").replaceAll("/", ".");
}

const units: Array<[string, string]> = [
  ["_k_m_per_w", "K·m/W"], ["_kwh_year", "kWh"], ["_ohm_m", "Ωm"], ["_megohm", "MΩ"],
  ["_kohm", "kΩ"], ["_ohm", "Ω"], ["_mm2", "mm²"], ["_mm", "mm"], ["_ka", "kA"], ["_ma", "mA"],
  ["_percent", "%"], ["_a", "A"], ["_w", "W"], ["_v", "V"], ["_c", "°C"], ["_m", "m"],
];

/** The sign of the unit that a key ends in; empty for a count or a ratio. */
export function unitOf(pointer: string): string {
  const key = pointer.slice(pointer.lastIndexOf("/") + 1);
  if (pointer.includes("voltage_drop_percent/")) return "%";
  return units.find(([end]) => key.endsWith(end))?.[1] ?? "";
}

/** Loads are typed in kilowatts. */
export function shownPer(pointer: string): { per: number; unit: string } {
  const unit = unitOf(pointer);
  return unit === "W" ? { per: 1000, unit: "kW" } : { per: 1, unit };
}

const counted = [
  "/spare_ways", "/rods", "/other_loaded_circuits", "/starts_per_hour", "/behind_rcd_ma",
  "/power_factor", "/duty_percent", "/voltage_drop_percent", "/future_load_a", "/smallest_core_mm2",
];

/** How a figure is usually known; null where it is counted or chosen and has no basis to tell. */
export function usualBasis(pointer: string): Basis | null {
  if (pointer.startsWith("/wishes") || counted.some((end) => pointer.endsWith(end))) return null;
  if (/\/(load_w|load_a|starting_multiple|max_device_a|rating_a|ze_declared_ohm)$/.test(pointer)) {
    return "declared";
  }
  return "measured";
}
