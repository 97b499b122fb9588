// What else would do: price against headroom, and the same as a list.

import { useEffect, useRef, useState } from "preact/hooks";
import { choose } from "../bench";
import type { SchemeLine } from "../contract";
import { say } from "../words";
import { digits, money } from "./figure";
import { Fold } from "./Fold";
import { priceOf, roomOf } from "./Headline";
import { lookedKey, recommendedKey } from "./look";
import { layoutPlot, nearest, touched, type Layout, type Mark } from "./plot";
import { sayOr, schemeWords } from "./speak";
import { shownFirst } from "./told";

/** How a scheme earths, where it does so everywhere alike. */
export function earthingOf(scheme: SchemeLine): string {
  const told = scheme.earthing as unknown;
  const all =
    typeof told === "string" ? [told] : Object.values((told ?? {}) as Record<string, string>);
  const kinds = [...new Set(all)];
  return kinds.length === 1 ? kinds[0]! : "mixed";
}

const outline: Record<string, string> = {
  "supply earth": "M0-5.5a5.5 5.5 0 1 0 0 11a5.5 5.5 0 0 0 0-11z",
  "own electrode": "M0-6.4 6.2 5H-6.2z",
  "shared electrode": "M-5-5H5V5H-5z",
  mixed: "M0-7 7 0 0 7-7 0z",
};

function Spot({ kind, hollow }: { kind: string; hollow: boolean }) {
  return (
    <path class={`spot ${hollow ? "is-hollow" : ""}`} d={outline[kind] ?? outline["mixed"]!} />
  );
}

function Axes({ layout, currency }: { layout: Layout; currency: string }) {
  const { frame } = layout;
  const foot = frame.y + frame.height;
  return (
    <g class="axes">
      {layout.yTicks.map(({ at, value }) => (
        <g key={value}>
          <line class="grid" x1={frame.x} x2={frame.x + frame.width} y1={at} y2={at} />
          <text x={frame.x - 6} y={at + 4} text-anchor="end">
            {digits(value * 100)}
            {"\u202f%"}
          </text>
        </g>
      ))}
      {layout.xTicks.map(({ at, value }) => (
        <g key={value}>
          <line class="tick" x1={at} x2={at} y1={foot} y2={foot + 5} />
          <text
            x={at}
            y={foot + 19}
            text-anchor={at > frame.x + frame.width - 26 ? "end" : "middle"}
          >
            {money(value, currency)}
          </text>
        </g>
      ))}
      <line class="axis" x1={frame.x} x2={frame.x + frame.width} y1={foot} y2={foot} />
      <text class="axis-name" x={frame.x + frame.width} y={foot + 38} text-anchor="end">
        {say("answer.axis_price")} →
      </text>
      <text class="axis-name" x={frame.x + 6} y={frame.y + 8}>
        ↑ {say("answer.axis_headroom")}
      </text>
    </g>
  );
}

function Spots({ layout, schemes }: { layout: Layout; schemes: SchemeLine[] }) {
  const looked = lookedKey.value;
  const byKey = new Map(schemes.map((s) => [s.key, s]));
  const lead = (mark: Mark) =>
    byKey.get((mark.points.find((p) => p.key === looked) ?? mark.points[0]!).key)!;
  return (
    <g>
      {layout.marks.map((mark) => {
        const scheme = lead(mark);
        return (
          <g key={scheme.key} transform={`translate(${mark.x} ${mark.y})`}>
            {mark.points.some((p) => p.key === looked) && <circle class="ring" r="11" />}
            <Spot kind={earthingOf(scheme)} hollow={scheme.conditional_on.length > 0} />
          </g>
        );
      })}
      {layout.labels
        .filter((l) => l.led)
        .map(({ text, box, mark }) => (
          <line
            key={`to ${text}`}
            class="lead"
            x1={mark.x}
            y1={mark.y}
            x2={Math.min(Math.max(mark.x, box.x), box.x + box.width)}
            y2={mark.y < box.y ? box.y + 2 : Math.min(mark.y, box.y + box.height - 2)}
          />
        ))}
      {layout.labels.map(({ text, box, anchor, mark }) => (
        <text
          key={text}
          class={`label ${lead(mark).key === looked ? "is-looked" : ""}`}
          x={
            anchor === "start"
              ? box.x
              : anchor === "end"
                ? box.x + box.width
                : box.x + box.width / 2
          }
          y={box.y + 12.5}
          text-anchor={anchor}
        >
          {text}
        </text>
      ))}
    </g>
  );
}

function useWidth(): [{ current: HTMLDivElement | null }, number] {
  const place = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(328);
  useEffect(() => {
    const box = place.current;
    if (!box || typeof ResizeObserver === "undefined") return undefined;
    const watch = new ResizeObserver(([entry]) =>
      setWidth(Math.max(280, Math.min(900, Math.round(entry!.contentRect.width)))),
    );
    watch.observe(box);
    return () => watch.disconnect();
  }, []);
  return [place, width];
}

function Picture({ schemes }: { schemes: SchemeLine[] }) {
  const [place, width] = useWidth();
  const height = Math.round(Math.min(360, Math.max(240, width * 0.62)));
  const layout = layoutPlot(
    schemes.map((s) => ({
      key: s.key,
      rank: s.rank,
      price: priceOf(s).total,
      headroom: Math.max(0, s.headroom ?? 0),
    })),
    { width, height, recommended: recommendedKey.value ?? "", looked: lookedKey.value ?? "" },
  );
  const touch = (event: MouseEvent): void => {
    const box = (event.currentTarget as Element).getBoundingClientRect();
    const scale = width / box.width;
    const mark = nearest(
      layout.marks,
      (event.clientX - box.left) * scale,
      (event.clientY - box.top) * scale,
    );
    if (mark) look(touched(mark, lookedKey.value ?? "").key);
  };
  return (
    <div ref={place} class="plot">
      <svg
        viewBox={`0 0 ${width} ${height}`}
        width="100%"
        role="img"
        onClick={touch}
        aria-label={say("answer.plot_label", { count: schemes.length })}
      >
        <g aria-hidden="true">
          <Axes layout={layout} currency={priceOf(schemes[0]!).currency} />
          <Spots layout={layout} schemes={schemes} />
        </g>
      </svg>
    </div>
  );
}

function look(key: string): void {
  choose(key === recommendedKey.value ? null : key);
}

/** The list lies far below what a choice from it changes. */
function toAnswer(): void {
  const title = document.getElementById("answer-title");
  title?.focus({ preventScroll: true });
  title?.scrollIntoView({ block: "start" });
}

function Key({ schemes }: { schemes: SchemeLine[] }) {
  const kinds = [...new Set(schemes.map(earthingOf))];
  const hollow = schemes.some((s) => s.conditional_on.length > 0);
  return (
    <p class="plot-key">
      {kinds.map((kind) => (
        <span key={kind} class="key-item">
          <svg viewBox="-8 -8 16 16" aria-hidden="true">
            <Spot kind={kind} hollow={false} />
          </svg>{" "}
          {sayOr(`answer.shape ${kind}`, kind)}
        </span>
      ))}
      {hollow && <span class="key-item">{say("answer.shape conditional")}</span>}
    </p>
  );
}

function SchemeRow({ scheme }: { scheme: SchemeLine }) {
  const price = priceOf(scheme);
  const looked = scheme.key === lookedKey.value;
  const marks = [
    ...(scheme.key === recommendedKey.value ? [say("answer.recommended")] : []),
    ...(looked ? [say("answer.looked_at")] : []),
    ...(scheme.conditional_on.length > 0 ? [say("answer.hangs")] : []),
  ];
  return (
    <li>
      <button
        type="button"
        class="scheme-row"
        aria-pressed={looked}
        onClick={() => {
          look(scheme.key);
          toAnswer();
        }}
      >
        <span class="scheme-rank">{scheme.rank}</span>
        <span class="scheme-price">{money(price.total, price.currency)}</span>
        <span class="scheme-room">{roomOf(scheme)}</span>
        <span class="scheme-words">
          {schemeWords(scheme.words)}
          {marks.length > 0 && <em class="scheme-marks"> – {marks.join(", ")}</em>}
        </span>
      </button>
    </li>
  );
}

export function Others() {
  const schemes = shownFirst.value?.schemes ?? [];
  if (schemes.length === 0) return null;
  return (
    <section class="others" aria-labelledby="others-title">
      <h3 id="others-title">{say("answer.others")}</h3>
      <p class="quiet hint">
        {schemes.length > 1 ? say("answer.others_note") : say("answer.others_alone")}
      </p>
      {schemes.length > 1 && <Picture schemes={schemes} />}
      {schemes.length > 1 && <Key schemes={schemes} />}
      <Fold class="scheme-list" open={schemes.length <= 4} summary={say("answer.list_of")}>
        <p class="scheme-head" aria-hidden="true">
          <span>{say("answer.col_rank")}</span>
          <span>{say("answer.col_price")}</span>
          <span>{say("answer.col_room")}</span>
          <span>{say("answer.col_scheme")}</span>
        </p>
        <ol>
          {schemes.map((s) => (
            <SchemeRow key={s.key} scheme={s} />
          ))}
        </ol>
      </Fold>
    </section>
  );
}
