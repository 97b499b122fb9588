import type { Crossing } from "../touching";
import type { Part, Rod } from "../outline";
import { partLabels } from "../labels";
import { shown, size, surveyed, view } from "../state";
import { metalSaid, tellOf } from "../telling";
import { toPixels } from "../view";
import { polyline, ticks } from "./ink";
import { Reachable } from "./Spots";

/** What each is, written where it lies on nothing else. */
export function PartsNamed() {
  const labels = partLabels(shown.value!, view.value, size.value, (part) => metalSaid(surveyed.value!, part));
  return (
    <>
      {labels.map(({ at, anchor, said }, i) => (
        <text key={i} aria-hidden="true" class="note" x={at[0]} y={at[1]} text-anchor={anchor}>{said}</text>
      ))}
    </>
  );
}

export function PartDrawn({ part }: { part: Part }) {
  const path = part.path.map((p) => toPixels(view.value, size.value, p));
  const end = path.at(-1)!;
  return (
    <Reachable pointer={part.pointer} name={tellOf(part)} kind={part.drawn ? "metal" : "metal unsure"}>
      <path class="touch" d={polyline(path)} />
      <path class="pipe" d={polyline(path)} />
      <path class="ink thin" d={ticks(path, 26, 3)} />
      <circle class="dot" cx={end[0]} cy={end[1]} r={4} />
    </Reachable>
  );
}

/** The sign of earth (IEC 60617), drawn: a stem and three shorter and shorter strokes. */
export function RodDrawn({ rod }: { rod: Rod }) {
  const [x, y] = toPixels(view.value, size.value, rod.at);
  return (
    <Reachable pointer={rod.pointer} name={tellOf(rod)} kind={rod.drawn ? "rod" : "rod unsure"}>
      <rect class="touch" x={x - 22} y={y - 22} width={44} height={44} />
      <path class="ink" d={`M${x} ${y - 12}V${y}M${x - 10} ${y}H${x + 10}M${x - 6.5} ${y + 5}H${x + 6.5}M${x - 3} ${y + 10}H${x + 3}`} />
    </Reachable>
  );
}

/** A ring where a route crosses metal. */
export function CrossingDrawn({ crossing }: { crossing: Crossing }) {
  const [x, y] = toPixels(view.value, size.value, crossing.at);
  return <circle class="crossing" cx={x} cy={y} r={9} aria-hidden="true" />;
}
