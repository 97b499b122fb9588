import { useLayoutEffect, useRef } from "preact/hooks";
import { jobId } from "../bench";
import { say } from "../words";
import { Draft, Grips, LegDrawn, LengthWritten } from "./drawing/Routes";
import { CrossingDrawn, PartDrawn, PartsNamed, RodDrawn } from "./drawing/Parts";
import { North, ScaleBar, Squares } from "./drawing/Ground";
import { SpotDrawn, SpotNamed } from "./drawing/Spots";
import { useGestures } from "./gestures";
import { onKey } from "./keys";
import { cursor, fit, hand, shown, size, view } from "./state";
import { crossed } from "./touching";
import { toPixels, zoomed } from "./view";

/** Keeps the window as large as the sheet is, and shows a job whole when it is opened. */
function useSize(sheet: { current: SVGSVGElement | null }) {
  const fittedFor = useRef<string | null>(null);
  useLayoutEffect(() => {
    const look = () => {
      const box = sheet.current?.getBoundingClientRect();
      if (!box?.width) return;
      const before = size.peek();
      if (box.width === before.width && box.height === before.height) return;
      size.value = { width: box.width, height: box.height };
      fit();
    };
    look();
    const observer = new ResizeObserver(look);
    if (sheet.current) observer.observe(sheet.current);
    return () => observer.disconnect();
  }, []);
  useLayoutEffect(() => {
    if (fittedFor.current === jobId.value || !shown.value) return;
    fittedFor.current = jobId.value;
    fit();
  }, [jobId.value, shown.value === null]);
}

function Cross() {
  if (!cursor.value) return null;
  const [x, y] = toPixels(view.value, size.value, cursor.value);
  return <path class="cross" d={`M${x - 16} ${y}H${x + 16}M${x} ${y - 16}V${y + 16}`} aria-hidden="true" />;
}

function Things() {
  const of = shown.value;
  if (!of) return null;
  const putting = hand.value.does !== "rest";
  return (
    <g class={putting ? "things behind" : "things"}>
      {of.spots.map((spot) => <SpotDrawn key={spot.pointer} spot={spot} />)}
      {of.parts.map((part) => <PartDrawn key={part.pointer} part={part} />)}
      {of.stretches.map((leg) => <LegDrawn key={leg.pointer} leg={leg} />)}
      {of.rods.map((rod) => <RodDrawn key={rod.pointer} rod={rod} />)}
      {crossed(of).map((crossing, i) => <CrossingDrawn key={i} crossing={crossing} />)}
      {of.spots.map((spot) => <SpotNamed key={spot.pointer} spot={spot} />)}
      <PartsNamed />
      {of.stretches.map((leg) => <LengthWritten key={leg.pointer} leg={leg} />)}
    </g>
  );
}

export function Plan({ openFacts }: { openFacts: () => void }) {
  const { sheet, ...gestures } = useGestures();
  useSize(sheet);
  const middle = (): [number, number] => [size.value.width / 2, size.value.height / 2];
  const nearer = (factor: number) => { view.value = zoomed(view.value, size.value, middle(), factor); };
  return (
    <div class="plan-sheet">
      <svg
        ref={sheet} class="plan" role="group" aria-label={say("place.plan")} aria-describedby="place-hint"
        tabindex={0} viewBox={`0 0 ${size.value.width} ${size.value.height}`} {...gestures}
        onKeyDown={(e) => { if (onKey(e, openFacts)) e.preventDefault(); }}
      >
        <Squares />
        <Things />
        <Draft />
        <Grips />
        <Cross />
        <ScaleBar />
        <North />
      </svg>
      <div class="window" role="group" aria-label={say("place.window")}>
        <button type="button" aria-label={say("place.nearer")} onClick={() => nearer(1.4)}>+</button>
        <button type="button" aria-label={say("place.farther")} onClick={() => nearer(1 / 1.4)}>−</button>
        <button type="button" onClick={fit}>{say("place.fit")}</button>
      </div>
    </div>
  );
}
