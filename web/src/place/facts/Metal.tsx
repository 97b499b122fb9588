import { Choice } from "../../fact/Choice";
import { Field } from "../../fact/Field";
import { say } from "../../words";
import { giveMetal } from "../edits";
import type { Part } from "../outline";
import { edit, shown } from "../state";
import { More } from "./More";

const few = ["material", "comes_from", "insulating_section", "bonded_at_house"];

export function MetalFacts({ part }: { part: Part }) {
  const others = shown.value!.spots.filter((spot) => spot.kind === "building");
  return (
    <>
      <Field pointer={`${part.pointer}/what`} />
      {others.length > 1 && (
        <Choice
          legend={say("place.metal_to")} value={part.building}
          options={others.map((spot) => ({ value: spot.pointer, text: spot.name }))}
          onChoose={(building) => edit(say("place.did.give"), (job) => giveMetal(job, part.pointer, building))}
        />
      )}
      {few.map((key) => <Field key={key} pointer={`${part.pointer}/${key}`} />)}
      <More
        title={say("place.more_metal")}
        facts={["resistance_to_met_kohm", "distance_m"].map((key) => `${part.pointer}/${key}`)}
      />
    </>
  );
}
