import { get } from "../../bench";
import { Field } from "../../fact/Field";
import { say } from "../../words";
import { plain } from "../figure";
import { drawnLength } from "../geometry";
import type { Rod } from "../outline";
import { More } from "./More";

const shapes: Record<string, string[]> = {
  rods: ["rods", "length_m", "diameter_mm"],
  "buried wire": ["length_m", "diameter_mm", "depth_m"],
  ring: ["length_m", "diameter_mm", "depth_m"],
  plate: ["length_m", "width_m", "depth_m"],
  mesh: ["length_m", "width_m", "depth_m", "meshes_along", "meshes_across"],
  foundation: ["length_m", "width_m", "membrane"],
};

export function RodFacts({ rod }: { rod: Rod }) {
  const kind = get<string | null>(`${rod.pointer}/kind`) ?? "rods";
  const drawn = plain(drawnLength([[0, 0], rod.at]));
  const keys = ["resistance_ohm", "from_house_earth_m", ...(shapes[kind] ?? [])];
  return (
    <>
      <p class="tell">{say("place.rod_far", { drawn })}</p>
      {keys.map((key) => <Field key={key} pointer={`${rod.pointer}/${key}`} />)}
      <More
        title={say("place.more_rod")}
        facts={["kind", ...(kind === "rods" ? ["arrangement", "spacing_m"] : [])].map((key) => `${rod.pointer}/${key}`)}
      />
    </>
  );
}
