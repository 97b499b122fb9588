// The engine's pictures of the scheme: single-line diagram, board, conductors, curves.

import { useEffect, useRef, useState } from "preact/hooks";
import { awaited } from "../shell/rest";
import { say } from "../words";
import { useWork } from "./fetch";
import { lookedKey, runAsked } from "./look";
import { faultWords } from "./speak";
import { Sheet } from "./Sheet";

const pictures = ["single-line", "board", "conductors", "curves"] as const;
/** Drawn in lines: at night they turn with the paper, and keep the hue of what is coloured. */
const inLine: readonly string[] = ["single-line", "curves"];
type Name = (typeof pictures)[number];

function Drawn({ name, width }: { name: Name; width: number }) {
  const key = lookedKey.value;
  const asked = useWork("picture", {
    picture: name,
    width,
    ...(key ? { key } : {}),
    ...runAsked.value,
  });
  if (asked.failed) {
    return <p class="quiet">{say("answer.picture_failed", { why: faultWords(asked.failed) })}</p>;
  }
  if (!asked.answer) return <p class="quiet">{awaited("answer.picture_waiting")}</p>;
  return (
    <Sheet
      class={inLine.includes(name) ? "is-line" : ""}
      svg={asked.answer.svg}
      alt={say(`answer.picture ${name}`)}
      busy={asked.waiting}
    />
  );
}

/** How wide a picture may be laid out: what the place has, within what the engine lays out. */
const fit = (place: HTMLElement | null): number =>
  Math.round(Math.min(1100, Math.max(320, place?.clientWidth ?? 360)));

export function Pictures() {
  const [shown, setShown] = useState<Name | null>(null);
  const [width, setWidth] = useState(360);
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => setWidth(fit(place.current)), [shown]);
  return (
    <section class="pictures" aria-labelledby="pictures-title">
      <h3 id="pictures-title">{say("answer.pictures")}</h3>
      <div class="picture-names">
        {pictures.map((name) => (
          <button
            key={name}
            type="button"
            class="plain"
            aria-pressed={shown === name}
            onClick={() => setShown(shown === name ? null : name)}
          >
            {say(`answer.picture ${name}`)}
          </button>
        ))}
      </div>
      <div ref={place} class="picture-place">
        {shown && <Drawn key={shown} name={shown} width={width} />}
      </div>
    </section>
  );
}
