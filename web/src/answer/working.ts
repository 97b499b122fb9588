// A working as the engine tells it (toft-working/1), read for the page: each line with its formula,
// the figures put into it, and where it comes from.

import { figure } from "./figure";

export interface WorkingLine {
  symbol: string;
  meaning: string;
  value: number;
  unit: string;
  from?: string;
  formula?: string;
  source?: string;
  locator?: string;
  basis?: string;
}

export interface Working {
  scheme?: string;
  name: string;
  title: string;
  value: number | null;
  unit: string;
  lines: WorkingLine[];
}

export type Piece = { text: string } | { symbol: string };

/** A formula cut into symbols that stand in the working, and what stands between them. */
export function pieces(formula: string, known: ReadonlySet<string>): Piece[] {
  const out: Piece[] = [];
  let text = "";
  const words = /[A-Za-z][A-Za-z0-9]*(?:\.[A-Za-z0-9]+)*/g;
  let from = 0;
  for (const match of formula.matchAll(words)) {
    if (!known.has(match[0])) continue;
    text = formula.slice(from, match.index);
    if (text) out.push({ text });
    out.push({ symbol: match[0] });
    from = match.index + match[0].length;
  }
  if (from < formula.length) out.push({ text: formula.slice(from) });
  return out;
}

/** The line that gave a symbol its value when `index` was worked out: the nearest before it. */
function lineOf(lines: WorkingLine[], symbol: string, index: number): WorkingLine | undefined {
  for (let i = index - 1; i >= 0; --i) if (lines[i]!.symbol === symbol) return lines[i];
  return undefined;
}

/** A formula with the figures put in, each with its unit. */
export function figuresPutIn(lines: WorkingLine[], index: number): string {
  const line = lines[index]!;
  if (!line.formula) return "";
  const known = new Set(lines.slice(0, index).map((l) => l.symbol));
  const cut = pieces(line.formula, known);
  return cut
    .map((piece, i) => {
      if ("text" in piece) return piece.text;
      const from = lineOf(lines, piece.symbol, index)!;
      const said = figure(from.value, from.unit, 4);
      const next = cut[i + 1];
      const raised = next && "text" in next && /^[²³^]/.test(next.text) && from.unit !== "";
      return from.value < 0 || raised ? `(${said})` : said;
    })
    .join("");
}

/** Where a line comes from, in words: source, place and basis, a clause, or who said it. */
export function origin(line: WorkingLine): string {
  const parts: string[] = [];
  if (line.source) parts.push(line.locator ? `${line.source}, ${line.locator}` : line.source);
  if (line.basis) parts.push(line.basis);
  if (line.from) parts.push(line.from);
  return parts.join(" · ");
}

/** Lines with which the working ends: those that the last ones are made of, newest first. */
export function ending(lines: WorkingLine[], most = 6): number[] {
  const wanted: number[] = [];
  const queue = [lines.length - 1];
  while (queue.length > 0 && wanted.length < most) {
    const index = queue.shift()!;
    if (index < 0 || wanted.includes(index)) continue;
    wanted.push(index);
    const formula = lines[index]!.formula;
    if (!formula) continue;
    const known = new Set(lines.slice(0, index).map((l) => l.symbol));
    for (const piece of pieces(formula, known)) {
      if ("symbol" in piece) queue.push(lines.indexOf(lineOf(lines, piece.symbol, index)!));
    }
  }
  return wanted.sort((a, b) => a - b);
}
