import { Field } from "../../fact/Field";
import { FigureField } from "../../fact/FigureField";
import { say } from "../../words";
import { plain } from "../figure";
import { addCorner, splitLeg } from "../edits";
import { drawnLength } from "../geometry";
import { startRoute } from "../hand";
import { isProposed, offScale, thingAt, type Stretch } from "../outline";
import { edit, hand, lengthTouched, shown, surveyed } from "../state";
import { metalSaid } from "../telling";
import { crossed } from "../touching";
import { More } from "./More";

const inGround = ["buried direct", "buried in duct"];

function factsOf(method: string): { few: string[]; more: string[] } {
  const air = ["ambient_c", "other_loaded_circuits", "indoors", "concealed", "insulation_length_m", "family"];
  if (inGround.includes(method)) {
    return { few: ["surface", "depth_m"], more: ["other_loaded_circuits", "trench", "family"] };
  }
  if (method === "overhead") return { few: ["height_m"], more: ["ambient_c", "other_loaded_circuits", "family"] };
  return { few: [], more: air };
}

function Crossed({ leg }: { leg: Stretch }) {
  const of = shown.value!;
  const found = crossed(of).filter((crossing) => crossing.leg === leg.pointer);
  return (
    <>
      {found.map(({ metal }) => {
        const part = thingAt(of, metal);
        if (part?.kind !== "metal") return null;
        return <p key={metal} class="note">{say("place.crosses", { what: metalSaid(surveyed.value!, part) })}</p>;
      })}
    </>
  );
}

/** Where the run as a whole goes, and how to draw it anew. */
function RunActs({ leg }: { leg: Stretch }) {
  const run = surveyed.value!.runs[Number(leg.run.split("/")[2])];
  if (!run) return null;
  return (
    <div class="acts">
      <button type="button" class="plainly" onClick={() => edit(say("place.did.split"), (job) => splitLeg(job, leg.pointer))}>
        {say("place.split")}
      </button>
      <button type="button" class="plainly" onClick={() => { edit(say("place.did.corner"), (job) => addCorner(job, leg.pointer)); }}>
        {say("place.corner")}
      </button>
      <button type="button" class="plainly" onClick={() => { hand.value = startRoute(run.from, run.to, leg.run); }}>
        {say("place.redraw")}
      </button>
    </div>
  );
}

export function LegFacts({ leg }: { leg: Stretch }) {
  const { few, more } = factsOf(leg.method);
  const drawn = plain(drawnLength(leg.path));
  const proposed = isProposed(leg.length, leg.path);
  const tell = proposed
    ? say("place.length_proposed", { drawn })
    : offScale(leg.length, leg.path) ? say("place.off_scale", { drawn }) : "";
  return (
    <>
      <FigureField
        key={leg.pointer} pointer={`${leg.pointer}/length_m`} tell={tell} focus={lengthTouched.value}
      />
      <Field pointer={`${leg.pointer}/method`} />
      {few.map((key) => <Field key={key} pointer={`${leg.pointer}/${key}`} />)}
      <Crossed leg={leg} />
      <More
        title={say("place.more_leg")}
        facts={[...more.map((key) => `${leg.pointer}/${key}`), `${leg.run}/fed_from`, `${leg.run}/also_carries`]}
      />
      <RunActs leg={leg} />
    </>
  );
}
