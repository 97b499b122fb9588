import { isLast } from "../edits";
import { cornersOf, drawnPath, labelAt, lengthFits } from "../hit";
import type { Point } from "../job";
import { isLoose, type Stretch } from "../outline";
import { chosen, chosenThing, hand, shown, size, surveyed, view } from "../state";
import { lengthSaid, tellOf } from "../telling";
import { toPixels } from "../view";
import { polyline, ticks } from "./ink";
import { Reachable } from "./Spots";

const onScreen = (path: readonly Point[]) => path.map((p) => toPixels(view.value, size.value, p));

/** How the trade draws a way of laying: in the ground broken, overhead from pole to pole. */
export function Way({ method, path }: { method: string; path: Point[] }) {
  const d = polyline(path);
  if (method === "buried direct") return <path class="run ground" d={d} />;
  if (method === "buried in duct") {
    return <><path class="run duct" d={d} /><path class="run duct-in" d={d} /><path class="run ground" d={d} /></>;
  }
  if (method === "overhead") {
    return (
      <>
        <path class="run over" d={d} />
        {path.map(([x, y], i) => <circle key={i} class="pole" cx={x} cy={y} r={4} />)}
      </>
    );
  }
  return <><path class="run" d={d} /><path class="ink thin" d={ticks(path, 12, 4)} /></>;
}

export function LegDrawn({ leg }: { leg: Stretch }) {
  const path = drawnPath(leg.path, { of: shown.value!, view: view.value, size: size.value });
  const end = path.at(-1)!;
  return (
    <Reachable pointer={leg.pointer} name={tellOf(leg)} kind={leg.drawn ? "leg" : "leg unsure"}>
      <path class="touch" d={polyline(path)} />
      <Way method={leg.method} path={path} />
      <circle class="joint" cx={end[0]} cy={end[1]} r={3} />
    </Reachable>
  );
}

/** The length of a leg, where it can be touched and typed over. */
export function LengthWritten({ leg }: { leg: Stretch }) {
  const on = chosen.value === leg.pointer;
  const seen = { of: shown.value!, view: view.value, size: size.value };
  if (!lengthFits(leg.path, seen, on)) return null;
  const [x, y] = labelAt(leg.path, seen);
  const loose = isLoose(leg.length);
  return (
    <g class={`length${loose ? " loose" : ""}${on ? " on" : ""}`} aria-hidden="true">
      <text x={x} y={y + 5} text-anchor="middle">{lengthSaid(leg)}</text>
    </g>
  );
}

/** Grips at the corners of the chosen leg or pipe. */
export function Grips() {
  const thing = chosenThing.value;
  if (hand.value.does !== "rest" || (thing?.kind !== "leg" && thing?.kind !== "metal")) return null;
  const last = thing.kind === "leg" && isLast(surveyed.value!, thing.pointer);
  return (
    <g aria-hidden="true">
      {cornersOf(thing, last).map((i) => {
        const [x, y] = toPixels(view.value, size.value, thing.path[i]!);
        return <rect key={i} class="grip" x={x - 7} y={y - 7} width={14} height={14} />;
      })}
    </g>
  );
}

/** What is being drawn, up to the last tap. */
export function Draft() {
  const now = hand.value;
  if (now.does === "ask") {
    const [x, y] = toPixels(view.value, size.value, now.at);
    return <path class="cross" d={`M${x - 12} ${y}H${x + 12}M${x} ${y - 12}V${y + 12}`} aria-hidden="true" />;
  }
  if (now.does === "metal") {
    const path = onScreen(now.path);
    return <g class="draft" aria-hidden="true"><path class="pipe" d={polyline(path)} /><Dots path={path} /></g>;
  }
  if (now.does !== "route" || !now.from) return null;
  const begin = surveyedSpot(now.from);
  let start = begin;
  return (
    <g class="draft" aria-hidden="true">
      {now.drawn.map((stretch, i) => {
        const path = onScreen([start, ...stretch.points]);
        start = stretch.points.at(-1) ?? start;
        return <g key={i}><Way method={stretch.method} path={path} /><Dots path={path} /></g>;
      })}
      {now.drawn.length === 0 && <Dots path={onScreen([begin])} />}
    </g>
  );
}

function surveyedSpot(id: string): Point {
  const building = surveyed.value?.buildings.find((b) => b.id === id);
  return building?.at === "origin" ? [0, 0] : (building?.at_m ?? [0, 0]);
}

function Dots({ path }: { path: Point[] }) {
  return <>{path.map(([x, y], i) => <circle key={i} class="dot" cx={x} cy={y} r={4} />)}</>;
}

