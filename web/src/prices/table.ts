// A price book as text: rows of comma-separated cells (RFC 4180), changed cell by cell so that what
// is not touched stays as it was written.

export interface Row {
  /** Its line in the text, the head being line 1. */
  line: number;
  item: string;
  unit: string;
  net: string;
  low: string;
  high: string;
  note: string;
}

export interface Table {
  columns: string[];
  rows: string[][];
  /** The line each row begins on. */
  lines: number[];
}

/** Cuts the text into cells; quoted cells may hold commas, quotes and line ends. */
export function cut(text: string): Table {
  const body = text.replace(/^\ufeff/, "");
  const all: string[][] = [];
  const lines: number[] = [];
  let row: string[] = [];
  let cell = "";
  let quoted = false;
  let line = 1;
  let began = 1;
  const endRow = (): void => {
    row.push(cell);
    if (row.length > 1 || row[0] !== "") {
      all.push(row);
      lines.push(began);
    }
    [row, cell] = [[], ""];
  };
  for (let i = 0; i < body.length; ++i) {
    const c = body[i]!;
    if (c === "\n" || (c === "\r" && body[i + 1] !== "\n")) ++line;
    if (quoted) {
      if (c === '"' && body[i + 1] === '"') {
        cell += c;
        ++i;
      } else if (c === '"') quoted = false;
      else cell += c;
    } else if (c === '"' && cell === "") quoted = true;
    else if (c === ",") {
      row.push(cell);
      cell = "";
    } else if (c === "\n" || c === "\r") {
      if (c === "\r" && body[i + 1] === "\n") continue;
      endRow();
      began = line;
    } else cell += c;
  }
  if (cell !== "" || row.length > 0) endRow();
  return {
    columns: (all[0] ?? []).map((name) => name.trim()),
    rows: all.slice(1),
    lines: lines.slice(1),
  };
}

const written = (cell: string): string =>
  /[",\r\n]/.test(cell) ? `"${cell.replace(/"/g, '""')}"` : cell;

export function join({ columns, rows }: Pick<Table, "columns" | "rows">): string {
  return [columns, ...rows].map((row) => row.map(written).join(",")).join("\n") + "\n";
}

export function rowsOf(table: Table): Row[] {
  const at = (name: string): number => table.columns.indexOf(name);
  const [item, unit, net, low, high, note] = [
    "item",
    "unit",
    "net_gbp",
    "low_gbp",
    "high_gbp",
    "note",
  ].map(at) as [number, number, number, number, number, number];
  return table.rows.map((row, i) => ({
    line: table.lines[i]!,
    item: row[item] ?? "",
    unit: row[unit] ?? "",
    net: row[net] ?? "",
    low: row[low] ?? "",
    high: row[high] ?? "",
    note: row[note] ?? "",
  }));
}

/** Whether a row's price is still the invented one. */
export const isInvented = (row: Row): boolean => /^invented/.test(row.note);

/**
 * The book with another price for an item: the low and high ends go with the price they were ends
 * of, and a note that calls the row invented goes too.
 */
export function withPrice(text: string, item: string, net: string): string {
  const table = cut(text);
  const at = (name: string): number => table.columns.indexOf(name);
  for (const row of table.rows) {
    if (row[at("item")] !== item) continue;
    const put = (name: string, cell: string): void => {
      const column = at(name);
      if (column < 0) return;
      while (row.length <= column) row.push("");
      row[column] = cell;
    };
    put("net_gbp", net.trim());
    put("low_gbp", "");
    put("high_gbp", "");
    const note = row[at("note")] ?? "";
    if (/^invented/.test(note)) put("note", note.replace(/^invented[^;]*;?\s*/, ""));
  }
  return join(table);
}

export interface Item {
  item: string;
  unit: string;
  net: number | null;
  low: number | null;
  high: number | null;
  use: string;
}

/** The engine's own book as text, to begin one's own with. */
export function bookToBeginWith(items: Item[]): string {
  const sum = (amount: number | null): string => (amount === null ? "" : amount.toFixed(2));
  return join({
    columns: ["item", "unit", "net_gbp", "low_gbp", "high_gbp", "note"],
    rows: items.map(({ item, unit, net, low, high, use }) => [
      item,
      unit,
      sum(net),
      low === net && high === net ? "" : sum(low),
      low === net && high === net ? "" : sum(high),
      `invented, replace; ${use}`,
    ]),
  });
}

/** Faults of the book by the line they name; those that name none stand under 0. */
export function faultsByLine(
  faults: Array<{ says: string; nearest?: string | null }>,
): Map<number, string[]> {
  const byLine = new Map<number, string[]>();
  for (const fault of faults) {
    const named = /\bline (\d+): /.exec(fault.says);
    const line = named ? Number(named[1]) : 0;
    const says = named ? fault.says.slice(named.index + named[0].length) : fault.says;
    byLine.set(line, [...(byLine.get(line) ?? []), says]);
  }
  return byLine;
}

/** Groups rows by the first word of their item where several share it. */
export function grouped<T extends { item: string }>(rows: T[], least = 4): Array<[string, T[]]> {
  const word = (row: T): string => row.item.split(" ")[0]!;
  const sizes = new Map<string, number>();
  for (const row of rows) sizes.set(word(row), (sizes.get(word(row)) ?? 0) + 1);
  const groups = new Map<string, T[]>();
  for (const row of rows) {
    const name = sizes.get(word(row))! >= least ? word(row) : "";
    groups.set(name, [...(groups.get(name) ?? []), row]);
  }
  const rest = groups.get("");
  groups.delete("");
  return [...groups, ...(rest ? [["", rest] as [string, T[]]] : [])];
}
