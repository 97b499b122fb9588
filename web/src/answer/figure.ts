// How a figure is written: so many digits that it says what a meter shows, and never without its
// unit. The engine's value is only rounded here, never reckoned with.

const THIN = "\u202f";

/** Units that are written against the figure rather than after a thin space. */
const tight = new Set(["%"]);

/** Units of the engine as people write them. */
const written: Record<string, string> = {
  ohm: "Ω",
  "ohm m": "Ωm",
  mm2: "mm²",
  kohm: "kΩ",
  percent: "%",
  "V²·A^-2": "Ω²",
  "V·A^-1": "Ω",
  a: "A",
  v: "V",
  s: "s",
  m: "m",
};

export function unitWords(unit: string): string {
  return written[unit] ?? raised(unit);
}

const high: Record<string, string> = {
  "-": "⁻", "0": "⁰", "1": "¹", "2": "²", "3": "³", "4": "⁴", "5": "⁵", "6": "⁶", "7": "⁷", "8": "⁸", "9": "⁹",
};

/** A power of a unit as print shows it: "A^-2" is A⁻². */
const raised = (unit: string): string =>
  unit.replace(/\^(-?\d+)/g, (_, power: string) => [...power].map((sign) => high[sign]).join(""));

/** A number to so many significant digits, without ending noughts after the point. */
export function digits(value: number, significant = 3): string {
  if (!Number.isFinite(value)) return "∞";
  if (value === 0) return "0";
  const size = Math.floor(Math.log10(Math.abs(value)));
  const places = Math.max(0, significant - 1 - size);
  const fixed = value.toFixed(Math.min(places, 12));
  const bare = fixed.includes(".") ? fixed.replace(/0+$/, "").replace(/\.$/, "") : fixed;
  return bare.replace("-", "−");
}

/** A figure with its unit. A figure without one is a number of times or a share: say of what. */
export function figure(value: number, unit: string, significant = 3): string {
  const says = unitWords(unit);
  const number = digits(value, significant);
  if (says === "") return number;
  return tight.has(says) ? `${number}${THIN}${says}` : `${number}\u00a0${says}`;
}

/**
 * A value and its limit so written that they differ on paper when they differ: a value that is
 * over its limit by a hair is not rounded down to it.
 */
export function beside(value: number, limit: number): [string, string] {
  for (let significant = 3; significant <= 9; ++significant) {
    const pair: [string, string] = [digits(value, significant), digits(limit, significant)];
    if (value === limit || pair[0] !== pair[1]) return pair;
  }
  return [String(value), String(limit)];
}

/** A share of one as a whole per cent; what is not nothing is not shown as nothing. */
export function percent(share: number): string {
  const whole = Math.round(share * 100);
  if (whole === 0 && share > 0) return `<${THIN}1${THIN}%`;
  if (whole === 100 && share > 1) return `>${THIN}100${THIN}%`;
  if (whole === 100 && share < 1) return `99${THIN}%`;
  return `${digits(whole, 6)}${THIN}%`;
}

/** Headroom; a scheme that has none, or is over a limit at a worse end, has "none" of it. */
export function headroomShare(headroom: number | null, none: string): string {
  return headroom === null || headroom < 0 ? none : percent(headroom);
}

/** The engine's words with each figure kept beside its unit when lines break. */
export function unbroken(words: string): string {
  return words.replace(/(\d) (mm²|kA|mA|kVA|kW|A|V|Ω|m|%)(?![\w²])/g, "$1\u00a0$2");
}

/** A sum of money: whole units unless pennies are asked for. */
export function money(sum: number, currency = "GBP", pennies = false): string {
  const key = `${currency} ${pennies}`;
  let format = formats.get(key);
  if (!format) {
    const places = pennies ? 2 : 0;
    format = new Intl.NumberFormat("en-GB", {
      style: "currency",
      currency,
      minimumFractionDigits: places,
      maximumFractionDigits: places,
    });
    formats.set(key, format);
  }
  return format.format(sum);
}

/** To make one takes as long as to write fifty sums. */
const formats = new Map<string, Intl.NumberFormat>();
const whole = new Intl.NumberFormat("en-GB");

/** A count with its thousands apart. */
export function count(n: number): string {
  return whole.format(n);
}
