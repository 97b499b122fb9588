import { get, set } from "../../bench";
import { Choice } from "../../fact/Choice";
import { Field } from "../../fact/Field";
import { did } from "../../fact/did";
import { say } from "../../words";
import { hand, choose, shown, surveyed } from "../state";
import { startRoute, mayFeed } from "../hand";
import { thingAt, type Spot } from "../outline";
import { panelThere } from "../focus";
import { tellOf } from "../telling";
import { touching } from "../touching";
import { Loads } from "./Loads";
import { More } from "./More";

const more = [
  "name", "use", "reach_of_house_earth_m", "livestock", "wet_floor", "barefoot", "vehicle_outdoors", "spread_of_fire_risk",
  "spare_ways", "future_load_a",
];

/** Whether metal comes in: none, not known, or what stands in the list. */
function MetalField({ building }: { building: string }) {
  const fact = `${building}/metalwork`;
  const list = get<unknown[] | null>(fact);
  const value = list == null ? "?" : list.length > 0 ? "some" : "none";
  return (
    <Choice
      legend={say("place.metal_enters")} tell={say("place.metal_tell")} value={value}
      options={[
        { value: "some", text: say("place.metal_some") },
        { value: "none", text: say("place.metal_none") },
        { value: "?", text: say("fact.not_known") },
      ]}
      onChoose={(chosen) => {
        if (chosen === "some") hand.value = { does: "metal", what: null, path: [] };
        else if (value !== "some") set(fact, chosen === "none" ? [] : undefined, did(fact, chosen === "none" ? [] : undefined));
      }}
    />
  );
}

/** What touches the building on the drawing, each a way to its own facts. */
function Touching({ building }: { building: string }) {
  const of = shown.value!;
  const things = touching(of, building).flatMap((pointer) => thingAt(of, pointer) ?? []);
  if (things.length === 0) return null;
  return (
    <section aria-label={say("place.touches")}>
      <h4>{say("place.touches")}</h4>
      <ul class="things-list">
        {things.map((thing) => (
          <li key={thing.pointer}>
            <button type="button" class="thing-line" onClick={() => { choose(thing.pointer); panelThere(); }}>{tellOf(thing)}</button>
          </li>
        ))}
      </ul>
    </section>
  );
}

export function BuildingFacts({ spot }: { spot: Spot }) {
  const job = surveyed.value!;
  const fed = job.runs.some((run) => run.to === spot.id);
  const from = mayFeed(job, spot.id)[0] ?? null;
  return (
    <>
      {!fed && (
        <p><button type="button" class="press" onClick={() => { hand.value = startRoute(from, spot.id); }}>
          {say("place.route_to", { name: spot.name })}
        </button></p>
      )}
      <Loads key={spot.pointer} building={spot.pointer} />
      <MetalField building={spot.pointer} />
      <Field pointer={`${spot.pointer}/construction`} />
      <Field pointer={`${spot.pointer}/stands_in_ground`} />
      <More title={say("place.more_building")} facts={more.map((key) => `${spot.pointer}/${key}`)} />
      <Touching building={spot.pointer} />
    </>
  );
}
