// Days as papers bear them, and as people read them.

const two = (n: number): string => String(n).padStart(2, "0");

/** The day of a moment where the page is, as 2026-11-29. */
export function dayOf(moment: Date): string {
  return `${moment.getFullYear()}-${two(moment.getMonth() + 1)}-${two(moment.getDate())}`;
}

/** Whether what was typed is a day that exists. */
export function isDay(text: string): boolean {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (!parts) return false;
  const [year, month, day] = [Number(parts[1]), Number(parts[2]), Number(parts[3])];
  const made = new Date(Date.UTC(year, month - 1, day));
  return (
    made.getUTCFullYear() === year && made.getUTCMonth() === month - 1 && made.getUTCDate() === day
  );
}

/** A moment told in full: who keeps papers wants the year. */
export function momentWords(iso: string): string {
  const moment = new Date(iso);
  if (Number.isNaN(moment.getTime())) return iso;
  return moment.toLocaleString("en-GB", {
    day: "numeric",
    month: "long",
    year: "numeric",
    hour: "2-digit",
    minute: "2-digit",
  });
}

/** A size of a file. */
export function sizeWords(bytes: number): string {
  if (bytes < 1000) return `${bytes}\u00a0bytes`;
  if (bytes < 999_500) return `${Math.round(bytes / 1000)}\u00a0kB`;
  return `${(bytes / 1e6).toFixed(1)}\u00a0MB`;
}
