import type { ComponentChildren } from "preact";
import { halfSize, shortName } from "../hit";
import type { Spot } from "../outline";
import { chosen, choose, size, surveyed, view } from "../state";
import { tellOf } from "../telling";
import { say } from "../../words";
import { toPixels } from "../view";
import { polyline, sketchedBox } from "./ink";

/** Something on the plan that keyboard and readers can reach. */
export function Reachable({ pointer, name, children, kind }: {
  pointer: string; name: string; kind: string; children: ComponentChildren;
}) {
  return (
    <g
      class={`thing ${kind}${chosen.value === pointer ? " on" : ""}`}
      role="button" tabindex={0} aria-label={name} aria-pressed={chosen.value === pointer}
      data-pointer={pointer}
      onClick={(e) => { if (e.detail === 0) choose(pointer); }}
    >{children}</g>
  );
}

/** Feet of a building whose metal stands in the ground. */
function Feet({ at: [x, y], half: [w, h] }: { at: [number, number]; half: [number, number] }) {
  const foot = (fx: number, fy: number) =>
    polyline([[fx - 5, fy + 4], [fx + 5, fy + 4]]) + polyline([[fx - 3, fy + 7], [fx + 3, fy + 7]]);
  return <path class="ink thin" d={foot(x - w, y + h) + foot(x + w, y + h)} />;
}

export function SpotDrawn({ spot }: { spot: Spot }) {
  const at = toPixels(view.value, size.value, spot.at);
  const half = halfSize(spot.kind, view.value.scale);
  const [x, y] = at;
  const [w, h] = half;
  const house = spot.kind === "house";
  const building = surveyed.value?.buildings[Number(spot.pointer.split("/")[2])];
  const roof = house
    ? polyline([[x - w, y], [x + w, y]])
    : polyline([[x - w, y - h * 0.3], [x + w, y - h * 0.3]]);
  return (
    <Reachable pointer={spot.pointer} name={tellOf(spot)} kind={spot.kind}>
      <rect class="touch" x={x - w} y={y - h} width={2 * w} height={2 * h} />
      <path class={spot.placed ? "ink" : "ink unsure"} d={sketchedBox(at, half)} />
      <path class="ink thin" d={roof} />
      {building?.["stands_in_ground"] === true && <Feet at={at} half={half} />}
      {house && <path class="ink" d={`M${x - w + 4} ${y + h - 4}h9v-9h-9z`} />}
    </Reachable>
  );
}

/** Names of buildings, written beneath them. */
export function SpotNamed({ spot }: { spot: Spot }) {
  const [x, y] = toPixels(view.value, size.value, spot.at);
  const [, h] = halfSize(spot.kind, view.value.scale);
  return (
    <g aria-hidden="true">
      <text class="name" x={x} y={y + h + 20} text-anchor="middle">{shortName(spot.name)}</text>
      {spot.kind === "house" && (
        <text class="note" x={x} y={y + h + 36} text-anchor="middle">
          {surveyed.value?.intake?.earthing ?? say("place.earthing_open")}
        </text>
      )}
    </g>
  );
}
