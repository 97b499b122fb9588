// Where the schemes stand on the plot of price against headroom, and where their labels go.
// Geometry of the picture only: prices and headroom are the engine's.

export interface PlotPoint {
  key: string;
  rank: number;
  price: number;
  headroom: number;
}

export interface Box {
  x: number;
  y: number;
  width: number;
  height: number;
}

export interface Mark {
  /** Schemes drawn here, best first: so near one another that one mark serves. */
  points: PlotPoint[];
  x: number;
  y: number;
}

export interface Label {
  text: string;
  box: Box;
  anchor: "start" | "end" | "middle";
  mark: Mark;
  /** So far from its mark that a line must lead there. */
  led: boolean;
}

export interface Tick {
  at: number;
  value: number;
}

export interface Layout {
  frame: Box;
  xTicks: Tick[];
  yTicks: Tick[];
  marks: Mark[];
  labels: Label[];
}

export interface Wanted {
  width: number;
  height: number;
  recommended: string;
  looked: string;
}

const MERGE_PX = 13;
const MARK_PX = 7;
const RING_PX = 12;
const TEXT_HEIGHT = 16;
const LETTER_PX = 7.4;

/** Round steps over a range: 1, 2, 2.5 or 5 times a power of ten, at most `most` of them. */
export function ticks(low: number, high: number, most: number): number[] {
  const span = high - low || 1;
  const raw = span / Math.max(1, most);
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = [1, 2, 2.5, 5, 10].map((m) => m * power).find((s) => s >= raw - 1e-12)!;
  const out: number[] = [];
  for (let i = Math.ceil(low / step - 1e-9); i * step <= high + step * 1e-9; ++i) {
    out.push(Number((i * step).toPrecision(12)));
  }
  return out;
}

export function overlap(a: Box, b: Box): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

const inside = (box: Box, frame: Box): boolean =>
  box.x >= frame.x &&
  box.y >= frame.y &&
  box.x + box.width <= frame.x + frame.width &&
  box.y + box.height <= frame.y + frame.height;

/** "1–4, 9": ranks of one mark. */
export function ranks(points: PlotPoint[]): string {
  const all = points.map((p) => p.rank).sort((a, b) => a - b);
  const parts: string[] = [];
  for (let i = 0; i < all.length;) {
    let j = i;
    while (j + 1 < all.length && all[j + 1] === all[j]! + 1) ++j;
    parts.push(
      j === i ? `${all[i]}` : j === i + 1 ? `${all[i]}, ${all[j]}` : `${all[i]}–${all[j]}`,
    );
    i = j + 1;
  }
  return parts.join(", ");
}

function merged(points: Array<{ point: PlotPoint; x: number; y: number }>): Mark[] {
  const marks: Mark[] = [];
  for (const { point, x, y } of [...points].sort((a, b) => a.point.rank - b.point.rank)) {
    const near = marks.find((m) => Math.hypot(m.x - x, m.y - y) < MERGE_PX);
    if (near) near.points.push(point);
    else marks.push({ points: [point], x, y });
  }
  return marks;
}

const markBox = (mark: Mark): Box => ({
  x: mark.x - MARK_PX,
  y: mark.y - MARK_PX,
  width: 2 * MARK_PX,
  height: 2 * MARK_PX,
});

type Place = Pick<Label, "box" | "anchor">;

/** Places around a mark where its label may stand, `gap` away, the best first. */
function places(mark: Mark, text: string, gap: number): Place[] {
  const width = text.length * LETTER_PX;
  const at = (x: number, y: number): Box => ({ x, y, width, height: TEXT_HEIGHT });
  const middle = mark.y - TEXT_HEIGHT / 2;
  return [
    { box: at(mark.x + gap, middle), anchor: "start" },
    { box: at(mark.x - gap - width, middle), anchor: "end" },
    { box: at(mark.x - width / 2, mark.y - gap - TEXT_HEIGHT), anchor: "middle" },
    { box: at(mark.x - width / 2, mark.y + gap), anchor: "middle" },
    { box: at(mark.x + gap - 4, mark.y - gap - TEXT_HEIGHT + 4), anchor: "start" },
    { box: at(mark.x + gap - 4, mark.y + gap - 4), anchor: "start" },
    { box: at(mark.x - gap - width + 4, mark.y - gap - TEXT_HEIGHT + 4), anchor: "end" },
    { box: at(mark.x - gap - width + 4, mark.y + gap - 4), anchor: "end" },
  ];
}

/** Labels in order of worth; one that finds no free place is left out: the list below names all. */
function placed(marks: Mark[], frame: Box, wanted: Wanted): Label[] {
  const has = (mark: Mark, key: string) => mark.points.some((p) => p.key === key);
  const worth = (mark: Mark): number =>
    has(mark, wanted.looked) ? 0 : has(mark, wanted.recommended) ? 1 : 1 + mark.points[0]!.rank;
  const labels: Label[] = [];
  for (const mark of [...marks].sort((a, b) => worth(a) - worth(b))) {
    const text = ranks(mark.points);
    const taken = [...marks.filter((m) => m !== mark).map(markBox), ...labels.map((l) => l.box)];
    const gap = (has(mark, wanted.looked) ? RING_PX : MARK_PX) + 4;
    const steps = worth(mark) <= 1 ? [0, 14, 28, 44] : [0];
    for (const step of steps) {
      const free = places(mark, text, gap + step).find(
        ({ box }) => inside(box, frame) && !taken.some((other) => overlap(box, other)),
      );
      if (!free) continue;
      labels.push({ text, mark, led: step > 0, ...free });
      break;
    }
  }
  return labels;
}

export function layoutPlot(points: PlotPoint[], wanted: Wanted): Layout {
  const frame: Box = { x: 44, y: 10, width: wanted.width - 60, height: wanted.height - 54 };
  const prices = points.map((p) => p.price);
  const low = Math.min(...prices);
  const high = Math.max(...prices);
  const pad = (high - low || Math.max(high * 0.1, 1)) * 0.07;
  const x0 = low - pad;
  const x1 = high + pad;
  const yTop = Math.max(0.1, ...points.map((p) => p.headroom)) * 1.12;
  const yLow = Math.min(0, ...points.map((p) => p.headroom)) - yTop * 0.06;
  const x = (price: number) => frame.x + ((price - x0) / (x1 - x0)) * frame.width;
  const y = (room: number) =>
    frame.y + frame.height - ((room - yLow) / (yTop - yLow)) * frame.height;
  const marks = merged(points.map((point) => ({ point, x: x(point.price), y: y(point.headroom) })));
  return {
    frame,
    xTicks: ticks(x0, x1, Math.max(2, Math.floor(frame.width / 68))).map((value) => ({
      value,
      at: x(value),
    })),
    yTicks: ticks(Math.max(0, yLow), yTop, 4).map((value) => ({ value, at: y(value) })),
    marks,
    labels: placed(marks, frame, wanted),
  };
}

/** The mark nearest to where the picture was touched, if it is near at all. */
export function nearest(marks: Mark[], x: number, y: number, reach = 32): Mark | undefined {
  let best: Mark | undefined;
  let least = reach;
  for (const mark of marks) {
    const far = Math.hypot(mark.x - x, mark.y - y);
    if (far <= least) [best, least] = [mark, far];
  }
  return best;
}

/** What touching a mark looks at: its first scheme, or the next when one of it is looked at. */
export function touched(mark: Mark, looked: string): PlotPoint {
  const at = mark.points.findIndex((p) => p.key === looked);
  return mark.points[(at + 1) % mark.points.length]!;
}
