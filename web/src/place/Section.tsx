// The place cut along a run, as the engine draws it: the same run, seen from the side.

import { useEffect, useRef, useState } from "preact/hooks";
import { useWork } from "../answer/fetch";
import { lookedKey } from "../answer/look";
import { Sheet } from "../answer/Sheet";
import { first, faults } from "../bench";
import { awaited } from "../shell/rest";
import { say } from "../words";
import { chosenThing, surveyed } from "./state";

/** The run that is looked at: of the leg or building that is chosen, else the first of the house. */
function runShown(): string | undefined {
  const job = surveyed.value;
  const thing = chosenThing.value;
  if (!job || job.runs.length < 2) return undefined;
  if (thing?.kind === "leg") return job.runs[Number(thing.run.split("/")[2])]?.id;
  if (thing?.kind === "building") return job.runs.find((run) => run.to === thing.id)?.id;
  return job.runs[0]?.id;
}

function Drawn({ width }: { width: number }) {
  const key = lookedKey.value;
  const run = runShown();
  const asked = useWork("picture", { picture: "place", width, ...(key ? { key } : {}), ...(run ? { run } : {}) });
  if (asked.failed) return <p>{say("place.section_none")}</p>;
  if (!asked.answer) return <p class="small">{awaited("place.section_waiting")}</p>;
  return <Sheet class="is-line" svg={asked.answer.svg} alt={say("place.section")} busy={asked.waiting} />;
}

export function Section() {
  const room = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(0);
  useEffect(() => setWidth(Math.round(Math.min(1100, Math.max(320, room.current?.clientWidth ?? 0)))), []);
  const sound = first.value?.chosen && faults.value.length === 0;
  return (
    <div class="section" ref={room}>
      {!sound && <p>{say("place.section_early")}</p>}
      {sound && width > 0 && <Drawn width={width} />}
    </div>
  );
}
