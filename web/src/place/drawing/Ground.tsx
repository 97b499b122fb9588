import { say } from "../../words";
import { roundLength } from "../geometry";
import { size, view } from "../state";
import { toMetres, toPixels } from "../view";
import { polyline } from "./ink";

/** Squared paper: each line stands for the same round number of metres. */
function lines(step: number): string {
  const [west, north] = toMetres(view.value, size.value, [0, 0]);
  const [east, south] = toMetres(view.value, size.value, [size.value.width, size.value.height]);
  let out = "";
  for (let x = Math.ceil(west / step) * step; x <= east; x += step) {
    const [px] = toPixels(view.value, size.value, [x, 0]);
    out += polyline([[px, 0], [px, size.value.height]]);
  }
  for (let y = Math.ceil(south / step) * step; y <= north; y += step) {
    const [, py] = toPixels(view.value, size.value, [0, y]);
    out += polyline([[0, py], [size.value.width, py]]);
  }
  return out;
}

export function Squares() {
  const fine = roundLength(view.value.scale, 40);
  return (
    <g aria-hidden="true">
      <path class="square" d={lines(fine)} />
      <path class="square strong" d={lines(fine * 5)} />
    </g>
  );
}

export function ScaleBar() {
  const metres = roundLength(view.value.scale, 110);
  const long = metres * view.value.scale;
  const y = size.value.height - 16;
  return (
    <g class="bar" aria-hidden="true">
      <path d={`M14 ${y - 5}V${y}H${14 + long}V${y - 5}M${14 + long / 2} ${y - 3}V${y}`} />
      <text x={14 + long + 6} y={y}>{say("place.metres", { n: metres })}</text>
    </g>
  );
}

export function North() {
  const x = size.value.width - 22;
  return (
    <g class="north" aria-hidden="true">
      <path d={`M${x} 46V14M${x - 5} 24L${x} 14L${x + 5} 24M${x - 4} 46H${x + 4}`} />
      <text x={x} y={60} text-anchor="middle">{say("place.north")}</text>
    </g>
  );
}
