// What stands on the place, with where it stands: read from the job, and laid out where the job
// does not say. Only geometry; nothing here is written back.

import { boxOf, cut, drawnLength, pathLength, type Box } from "./geometry";
import { isHouse, nameOf, type Building, type Figure, type Job, type Leg, type Point, type Run } from "./job";
import { readFigure } from "./figure";

export interface Spot {
  kind: "house" | "building";
  pointer: string;
  id: string;
  name: string;
  at: Point;
  /** False where the job does not say where it stands. */
  placed: boolean;
}

export interface Stretch {
  kind: "leg";
  pointer: string;
  run: string;
  method: string;
  path: Point[];
  /** False where the job does not say where it passes. */
  drawn: boolean;
  length: Figure | undefined;
}

export interface Part {
  kind: "metal";
  pointer: string;
  building: string;
  what: string;
  path: Point[];
  drawn: boolean;
}

export interface Rod {
  kind: "rod";
  pointer: string;
  building: string;
  at: Point;
  drawn: boolean;
}

export type Thing = Spot | Stretch | Part | Rod;

export interface Outline {
  spots: Spot[];
  stretches: Stretch[];
  parts: Part[];
  rods: Rod[];
}

const usual = 15;
const turns = [0.35, -0.6, 1.3, -1.5, 2.4, -2.5, 3.1];

function lengthOf(leg: Leg): number {
  const reading = readFigure(leg.length_m);
  return reading.known ? reading.high : 0;
}

/** Where a building is drawn that nobody placed: as far off as its run is long, each its own way. */
function laidOut(job: Job, building: Building, nth: number): Point {
  const run = job.runs.find((r) => r.to === building.id);
  const far = run?.legs.reduce((sum, leg) => sum + lengthOf(leg), 0) || usual;
  const turn = turns[nth % turns.length]!;
  return [far * Math.cos(turn), far * Math.sin(turn)];
}

function spotsOf(job: Job): Spot[] {
  let nth = 0;
  return job.buildings.map((building, i) => {
    const house = isHouse(building);
    const at: Point = house ? [0, 0] : (building.at_m ?? laidOut(job, building, nth++));
    return {
      kind: house ? "house" : "building",
      pointer: `/buildings/${i}`,
      id: building.id,
      name: nameOf(building),
      at,
      placed: house || Boolean(building.at_m),
    };
  });
}

/** The path cut into pieces as long as the legs say, one to another. */
function shared(path: Point[], legs: Leg[]): Point[][] {
  const pieces: Point[][] = [];
  let rest = path;
  let left = legs.reduce((sum, leg) => sum + (lengthOf(leg) || 1), 0);
  for (const leg of legs.slice(0, -1)) {
    const own = lengthOf(leg) || 1;
    const [piece, after] = cut(rest, own / left);
    pieces.push(piece);
    rest = after;
    left -= own;
  }
  return [...pieces, rest];
}

/** Paths of the legs of a run; those that are not drawn share the straight way between. */
export function pathsOf(run: Run, from: Point, to: Point): Array<{ path: Point[]; drawn: boolean }> {
  const paths: Array<{ path: Point[]; drawn: boolean }> = [];
  let start = from;
  let i = 0;
  while (i < run.legs.length) {
    const through = run.legs[i]!.through_m;
    if (through?.length) {
      paths.push({ path: [start, ...through], drawn: true });
      start = through.at(-1)!;
      ++i;
      continue;
    }
    let next = i;
    while (next < run.legs.length && !run.legs[next]!.through_m?.length) ++next;
    const end = next < run.legs.length ? run.legs[next]!.through_m![0]! : to;
    for (const path of shared([start, end], run.legs.slice(i, next))) paths.push({ path, drawn: false });
    start = end;
    i = next;
  }
  return paths;
}

function stretchesOf(job: Job, spots: Spot[]): Stretch[] {
  return job.runs.flatMap((run, r) => {
    const from = spots.find((s) => s.id === run.from);
    const to = spots.find((s) => s.id === run.to);
    if (!from || !to) return [];
    return pathsOf(run, from.at, to.at).map(({ path, drawn }, i) => ({
      kind: "leg" as const,
      pointer: `/runs/${r}/legs/${i}`,
      run: `/runs/${r}`,
      method: run.legs[i]!.method,
      path,
      drawn,
      length: run.legs[i]!.length_m,
    }));
  });
}

function partsOf(job: Job, spots: Spot[]): Part[] {
  const house = spots.find((s) => s.kind === "house")?.at ?? [0, 0];
  return job.buildings.flatMap((building, b) =>
    (building.metalwork ?? []).map((metal, i) => {
      const at = spots[b]!.at;
      const far: Point = metal.comes_from === "house" ? house : [at[0] + 7, at[1] - 4 + 2.5 * i];
      return {
        kind: "metal" as const,
        pointer: `/buildings/${b}/metalwork/${i}`,
        building: `/buildings/${b}`,
        what: metal.what,
        path: metal.through_m?.length ? metal.through_m : [far, at],
        drawn: Boolean(metal.through_m?.length),
      };
    }));
}

function rodsOf(job: Job, spots: Spot[]): Rod[] {
  return job.buildings.flatMap((building, b) => {
    if (!building.electrode) return [];
    const at = spots[b]!.at;
    return [{
      kind: "rod" as const,
      pointer: `/buildings/${b}/electrode`,
      building: `/buildings/${b}`,
      at: building.electrode.at_m ?? ([at[0] + 4, at[1] + 3.5] as Point),
      drawn: Boolean(building.electrode.at_m),
    }];
  });
}

export function outline(job: Job): Outline {
  const spots = spotsOf(job);
  return {
    spots,
    stretches: stretchesOf(job, spots),
    parts: partsOf(job, spots),
    rods: rodsOf(job, spots),
  };
}

export function thingsOf(of: Outline): Thing[] {
  return [...of.spots, ...of.stretches, ...of.parts, ...of.rods];
}

export function thingAt(of: Outline, pointer: string | null): Thing | undefined {
  return thingsOf(of).find((thing) => thing.pointer === pointer);
}

/** The thing a fact belongs to: the leg of /runs/0/legs/1/depth_m, the house of /intake/ze_ohm. */
export function thingOfFact(of: Outline, fact: string): Thing | undefined {
  if (fact.startsWith("/intake") || fact.startsWith("/ground")) {
    return of.spots.find((s) => s.kind === "house");
  }
  const own = thingsOf(of).filter((t) => fact === t.pointer || fact.startsWith(`${t.pointer}/`));
  const best = own.sort((a, b) => b.pointer.length - a.pointer.length)[0];
  return best ?? of.stretches.find((s) => fact === s.run || fact.startsWith(`${s.run}/`));
}

export function boxAround(of: Outline): Box {
  const room = of.spots.flatMap(({ at }): Point[] => [[at[0] - 5, at[1] - 5], [at[0] + 5, at[1] + 5]]);
  const lines = [...of.stretches, ...of.parts].flatMap((thing) => thing.path);
  return boxOf([[-6, -6], [6, 6], ...room, ...lines, ...of.rods.map((rod) => rod.at)]);
}

/** True when a length is only what the drawing says: assumed, and as long as it is drawn. */
export function isProposed(length: Figure | undefined, path: readonly Point[]): boolean {
  const reading = readFigure(length);
  if (!reading.known || reading.basis !== "assumed" || reading.low !== reading.high) return false;
  return Math.abs(reading.low - drawnLength(path)) < 0.16;
}

/** True when nobody measured a length, whether it is off the drawing or guessed. */
export function isLoose(length: Figure | undefined): boolean {
  const reading = readFigure(length);
  return reading.known && reading.basis === "assumed";
}

/** True when the drawing shows a leg clearly longer or shorter than it is stated to be. */
export function offScale(length: Figure | undefined, path: readonly Point[]): boolean {
  const reading = readFigure(length);
  if (!reading.known) return false;
  const drawn = pathLength(path);
  return drawn > 1.25 * reading.high + 1 || drawn < 0.75 * reading.low - 1;
}
