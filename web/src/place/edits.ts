// What a hand does to the place, as changes of the job. Each takes a copy that it may change, and
// leaves a job of the format; what is not known is taken out, never guessed.

import { along, between, cut, distance, drawnLength, tidy } from "./geometry";
import { isProposed, outline, pathsOf } from "./outline";
import {
  isHouse, type Building, type Circuit, type Figure, type Job, type Leg, type Point, type Run,
} from "./job";

/** A stretch of route as it is drawn: the points after its beginning. */
export interface Drawn {
  method: string;
  points: Point[];
}

const steps = (pointer: string): string[] => pointer.split("/").slice(1);

export function buildingAt(job: Job, pointer: string): Building | undefined {
  const [room, index] = steps(pointer);
  return room === "buildings" ? job.buildings[Number(index)] : undefined;
}

export function runAt(job: Job, pointer: string): Run | undefined {
  const [room, index] = steps(pointer);
  return room === "runs" ? job.runs[Number(index)] : undefined;
}

/** `word`, or `word-2` and so on: whichever is not taken. */
function unused(word: string, taken: string[]): string {
  if (!taken.includes(word)) return word;
  let nth = 2;
  while (taken.includes(`${word}-${nth}`)) ++nth;
  return `${word}-${nth}`;
}

export function addBuilding(job: Job, at: Point, use: string | null): string {
  const word = use && use !== "other" ? use.replaceAll(" ", "-") : "outbuilding";
  const id = unused(word, job.buildings.map((b) => b.id));
  job.buildings.push({ id, at_m: tidy(at), ...(use ? { use } : {}) });
  return `/buildings/${job.buildings.length - 1}`;
}

function proposed(path: readonly Point[]): Figure {
  return { value: drawnLength(path), basis: "assumed" };
}

function placeOf(job: Job, id: string): Point {
  return outline(job).spots.find((spot) => spot.id === id)?.at ?? [0, 0];
}

function legsAs(drawn: Drawn[], from: Point): Leg[] {
  let start = from;
  return drawn.filter((d) => d.points.length > 0).map(({ method, points }) => {
    const through = points.map(tidy);
    const leg: Leg = { method, length_m: proposed([start, ...through]), through_m: through };
    start = through.at(-1)!;
    return leg;
  });
}

/** Adds a run along what was drawn; the last point is where the building stands. */
export function addRun(job: Job, from: string, to: string, drawn: Drawn[]): string {
  const id = unused(`${to}-feed`, job.runs.map((r) => r.id));
  job.runs.push({ id, from, to, legs: legsAs(drawn, placeOf(job, from)) });
  return `/runs/${job.runs.length - 1}`;
}

/** The same run along another way; what else is known of it stays. */
export function redrawRun(job: Job, pointer: string, from: string, drawn: Drawn[]): void {
  const run = runAt(job, pointer);
  if (!run) return;
  run.from = from;
  run.legs = legsAs(drawn, placeOf(job, from));
}

export function addStraightRun(job: Job, from: string, to: string, method: string): string {
  return addRun(job, from, to, [{ method, points: [placeOf(job, to)] }]);
}

/** A leg at the end of a run, without a place of its own on the drawing. */
export function addLeg(job: Job, run: string, method: string, length: number): string {
  const found = runAt(job, run)!;
  for (const leg of found.legs) delete leg.through_m;
  found.legs.push({ method, length_m: { value: length, basis: "assumed" } });
  return `${run}/legs/${found.legs.length - 1}`;
}

function ends(job: Job, run: Run): [Point, Point] {
  return [placeOf(job, run.from), placeOf(job, run.to)];
}

/** Writes down where the legs of a run are drawn, so that a part of it can be moved. */
function pinned(job: Job, run: Run): void {
  const [from, to] = ends(job, run);
  pathsOf(run, from, to).forEach(({ path, drawn }, i) => {
    if (!drawn) run.legs[i]!.through_m = path.slice(1).map(tidy);
  });
}

/** Does `act`, and lets lengths that are only off the drawing follow it. */
function following(job: Job, act: () => void): void {
  const of = (run: Run) => pathsOf(run, ...ends(job, run));
  const before = job.runs.map((run) => of(run).map(({ path }) => path));
  const loose = job.runs.map((run, r) =>
    run.legs.map((leg, i) => isProposed(leg.length_m, before[r]![i]!)));
  act();
  job.runs.forEach((run, r) => of(run).forEach(({ path }, i) => {
    if (loose[r]?.[i]) run.legs[i]!.length_m = proposed(path);
  }));
}

const plus = (p: Point, by: Point): Point => tidy([p[0] + by[0], p[1] + by[1]]);

/** Moves a building with its rods, the ends of its pipes and of its runs. */
export function moveBuilding(job: Job, pointer: string, to: Point): void {
  const building = buildingAt(job, pointer);
  if (!building || isHouse(building)) return;
  const was = placeOf(job, building.id);
  const now = tidy(to);
  const by: Point = [now[0] - was[0], now[1] - was[1]];
  following(job, () => {
    for (const run of job.runs) {
      const last = run.legs.at(-1)?.through_m;
      if (run.to === building.id && last?.length) last[last.length - 1] = now;
    }
    for (const metal of building.metalwork ?? []) {
      const path = metal.through_m;
      if (path?.length) path[path.length - 1] = plus(path.at(-1)!, by);
    }
    if (building.electrode?.at_m) building.electrode.at_m = plus(building.electrode.at_m, by);
    building.at_m = now;
  });
}

export function moveRod(job: Job, pointer: string, to: Point): void {
  const rod = buildingAt(job, pointer)?.electrode;
  if (rod) rod.at_m = tidy(to);
}

/** Moves the corner of a leg or of a pipe; `corner` counts from the path's beginning, 0. */
export function moveCorner(job: Job, pointer: string, corner: number, to: Point): void {
  const run = runAt(job, pointer);
  if (run) {
    const leg = run.legs[Number(steps(pointer)[3])];
    following(job, () => {
      pinned(job, run);
      const path = leg?.through_m;
      if (path && corner > 0 && corner <= path.length) path[corner - 1] = tidy(to);
    });
    return;
  }
  const metal = buildingAt(job, pointer)?.metalwork?.[Number(steps(pointer)[3])];
  const part = outline(job).parts.find((p) => p.pointer === pointer);
  if (!metal || !part) return;
  metal.through_m = part.path.map((p, i) => tidy(i === corner ? to : p));
}

/** A new corner in the middle of the longest straight of a leg. */
export function addCorner(job: Job, pointer: string): void {
  const run = runAt(job, pointer);
  if (!run) return;
  pinned(job, run);
  const path = outline(job).stretches.find((s) => s.pointer === pointer)!.path;
  let longest = 1;
  for (let i = 1; i < path.length; ++i) {
    if (distance(path[i - 1]!, path[i]!) > distance(path[longest - 1]!, path[longest]!)) longest = i;
  }
  const through = run.legs[Number(steps(pointer)[3])]!.through_m!;
  if (through.length < 100) {
    through.splice(longest - 1, 0, tidy(between(path[longest - 1]!, path[longest]!, 0.5)));
  }
}

/** Parts a leg in two of the same way of laying; both lengths are then off the drawing. */
export function splitLeg(job: Job, pointer: string, part = 0.5): string {
  const run = runAt(job, pointer);
  const index = Number(steps(pointer)[3]);
  if (!run?.legs[index]) return pointer;
  pinned(job, run);
  const path = outline(job).stretches.find((s) => s.pointer === pointer)!.path;
  const [one, other] = cut(path, part);
  const leg = run.legs[index]!;
  const half = (piece: Point[]): Leg => ({
    ...structuredClone(leg), length_m: proposed(piece.map(tidy)), through_m: piece.slice(1).map(tidy),
  });
  run.legs.splice(index, 1, half(one), half(other));
  return `/runs/${steps(pointer)[1]}/legs/${index + 1}`;
}

function removeLeg(job: Job, run: Run, index: number): void {
  following(job, () => {
    pinned(job, run);
    run.legs.splice(index, 1);
    const last = run.legs.at(-1)?.through_m;
    if (last && index === run.legs.length) last[last.length - 1] = tidy(placeOf(job, run.to));
  });
  if (run.legs.length === 0) job.runs.splice(job.runs.indexOf(run), 1);
}

export function addMetal(job: Job, building: string, what: string, path: Point[]): string {
  const found = buildingAt(job, building)!;
  const list = (found.metalwork ??= []);
  const through = path.slice(-100).map(tidy);
  list.push({ what, ...(through.length > 0 ? { through_m: through } : {}) });
  return `${building}/metalwork/${list.length - 1}`;
}

/** A list that has become empty is taken out: not known again, not "there is none". */
function takeOut<T>(list: T[] | null | undefined, index: number): T[] | undefined {
  const left = (list ?? []).filter((_, i) => i !== index);
  return left.length > 0 ? left : undefined;
}

/** Gives a pipe to another building: where it is known to enter. */
export function giveMetal(job: Job, pointer: string, building: string): string {
  const from = buildingAt(job, pointer);
  const to = buildingAt(job, building);
  const index = Number(steps(pointer)[3]);
  const metal = from?.metalwork?.[index];
  if (!from || !to || !metal || from === to) return pointer;
  setOrDrop(from, "metalwork", takeOut(from.metalwork, index));
  const list = (to.metalwork ??= []);
  const path = metal.through_m;
  if (path?.length) path[path.length - 1] = tidy(placeOf(job, to.id));
  list.push(metal);
  return `${building}/metalwork/${list.length - 1}`;
}

export function addRod(job: Job, building: string, at: Point): string {
  const found = buildingAt(job, building)!;
  found.electrode = { ...(found.electrode ?? {}), at_m: tidy(at) };
  return `${building}/electrode`;
}

/** A circuit; a load stated for the whole building gives way to what its circuits ask for. */
export function addCircuit(job: Job, building: string, circuit: Circuit): string {
  const found = buildingAt(job, building)!;
  const list = (found.circuits ??= []);
  list.push(circuit);
  delete found["load_w"];
  delete found["load_a"];
  return `${building}/circuits/${list.length - 1}`;
}

function setOrDrop(building: Building, key: "metalwork" | "circuits", list: unknown[] | undefined) {
  if (list) (building as Record<string, unknown>)[key] = list;
  else delete building[key];
}

function removeBuilding(job: Job, building: Building): void {
  if (isHouse(building)) return;
  job.runs = job.runs.filter((run) => run.from !== building.id && run.to !== building.id);
  job.buildings.splice(job.buildings.indexOf(building), 1);
}

/** Takes a thing off the place. The house stays. */
export function remove(job: Job, pointer: string): void {
  const [, , part, index] = steps(pointer);
  const run = runAt(job, pointer);
  const building = buildingAt(job, pointer);
  if (run && part === "legs") removeLeg(job, run, Number(index));
  else if (run) job.runs.splice(job.runs.indexOf(run), 1);
  else if (building && part === "metalwork") {
    setOrDrop(building, "metalwork", takeOut(building.metalwork, Number(index)));
  } else if (building && part === "circuits") {
    setOrDrop(building, "circuits", takeOut(building.circuits, Number(index)));
  } else if (building && part === "electrode") delete building.electrode;
  else if (building && !part) removeBuilding(job, building);
}

export function rename(job: Job, pointer: string, name: string): void {
  const building = buildingAt(job, pointer);
  if (!building) return;
  if (name.trim()) building.name = name.trim().slice(0, 60);
  else delete building.name;
}

/** Moves any thing a little way. */
export function nudge(job: Job, pointer: string, by: Point): void {
  const of = outline(job);
  const spot = of.spots.find((s) => s.pointer === pointer);
  const rod = of.rods.find((r) => r.pointer === pointer);
  const part = of.parts.find((p) => p.pointer === pointer);
  if (spot) moveBuilding(job, pointer, plus(spot.at, by));
  else if (rod) moveRod(job, pointer, plus(rod.at, by));
  else if (part) moveCorner(job, pointer, 0, plus(part.path[0]!, by));
  else {
    const stretch = of.stretches.find((s) => s.pointer === pointer);
    if (!stretch || isLast(job, pointer)) return;
    moveCorner(job, pointer, stretch.path.length - 1, plus(stretch.path.at(-1)!, by));
  }
}

/** The last leg of a run ends at its building: to move that end is to move the building. */
export function isLast(job: Job, pointer: string): boolean {
  const run = runAt(job, pointer);
  return run !== undefined && Number(steps(pointer)[3]) === run.legs.length - 1;
}

/** Where a new building may stand that nobody points at: east of all others. */
export function freeSpot(job: Job): Point {
  const spots = outline(job).spots;
  const east = Math.max(...spots.map((s) => s.at[0]));
  return spots.length < 2 ? [18, 6] : [east + 12, 6];
}

/** The middle of a path, where its length is written. */
export function middleOf(path: readonly Point[]): Point {
  return along(path, 0.5);
}
