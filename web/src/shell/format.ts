// How the shell writes figures, times and facts.

const money = new Map<string, Intl.NumberFormat>();

export function price(amount: number, currency: string): string {
  let format = money.get(currency);
  if (!format) {
    format = new Intl.NumberFormat("en-GB", {
      style: "currency", currency, maximumFractionDigits: 0,
    });
    money.set(currency, format);
  }
  return format.format(amount);
}

export function when(iso: string, now = new Date()): string {
  const time = new Date(iso);
  if (Number.isNaN(time.getTime())) return iso;
  const clock = time.toLocaleTimeString("en-GB", { hour: "2-digit", minute: "2-digit" });
  if (time.toDateString() === now.toDateString()) return clock;
  const day = time.toLocaleDateString("en-GB", {
    day: "numeric", month: "short",
    ...(time.getFullYear() === now.getFullYear() ? {} : { year: "numeric" }),
  });
  return `${day}, ${clock}`;
}

/** A place in a job as words: /intake/board/spare_ways → intake, board, spare ways. */
export function placeWords(pointer: string): string {
  return pointer.split("/").slice(1)
    .map((part) => (/^\d+$/.test(part) ? String(Number(part) + 1) : part.replace(/_/g, " ")))
    .join(", ");
}

/** A value of a job in short; undefined where nothing is known. */
export function valueWords(value: unknown): string | undefined {
  if (value === undefined || value === null) return undefined;
  if (typeof value !== "object") return String(value);
  if (Array.isArray(value)) return value.map((entry) => valueWords(entry) ?? "–").join(", ") || "[ ]";
  return Object.entries(value)
    .map(([key, entry]) => `${key.replace(/_/g, " ")} ${valueWords(entry) ?? "–"}`).join(", ");
}
