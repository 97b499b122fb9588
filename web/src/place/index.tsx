import { useEffect } from "preact/hooks";
import { say } from "../words";
import "../fact/fact.css";
import { later } from "../shell/later";
import { keepFocus, panelThere } from "./focus";
import { List } from "./List";
import { nextStep } from "./next";
import { Plan } from "./Plan";
import "./place.css";
import { rest } from "./hand";
import { chosenThing, hand, section, surveyed } from "./state";
import { nameOf } from "./job";

const Section = later(async () => (await import("./Section")).Section);
const Facts = later(async () => (await import("./Facts")).Facts, true);

/** To the first field of what is chosen or put down. */
const openFacts = () => void Facts.fetch().then(panelThere);

export { choose as chooseThing, chosen as chosenThing } from "./state";

function hintNow(): string {
  const job = surveyed.value;
  if (!job) return "";
  const now = hand.value;
  const name = (id: string | null) => {
    const building = job.buildings.find((b) => b.id === id);
    return building ? nameOf(building) : say("place.the_building");
  };
  switch (now.does) {
    case "ask": return say("place.hint.ask");
    case "route":
      if (!now.from) return say("place.hint.begin");
      return say(now.drawn.length > 0 ? "place.hint.on" : "place.hint.corners", { to: name(now.to), from: name(now.from) });
    case "metal":
      if (!now.what) return say("place.hint.metal_what");
      return say(now.path.length > 0 ? "place.hint.metal_on" : "place.hint.metal");
    case "rod": return say("place.hint.rod");
    case "rest": return restHint();
  }
}

function restHint(): string {
  if (section.value) return say("place.hint.section");
  const job = surveyed.value!;
  const next = nextStep(job);
  const name = "building" in next ? nameOf(job.buildings[Number(next.building.split("/")[2])]!) : "";
  return say(`place.hint.${next.step}`, { name });
}

function PutDown() {
  const many = (surveyed.value?.buildings.length ?? 0) > 1;
  const button = (what: "route" | "metal" | "rod", start: () => void) => (
    <button type="button" class="plainly" onClick={start}>{say(`place.put.${what}`)}</button>
  );
  if (hand.value.does !== "rest" || !many) return null;
  return (
    <div class="acts put" role="group" aria-label={say("place.put")}>
      <span aria-hidden="true">{say("place.put")}</span>
      {button("route", () => { hand.value = { does: "route", from: null, to: null, method: "buried direct", drawn: [], again: null }; })}
      {button("metal", () => { hand.value = { does: "metal", what: null, path: [] }; })}
      {button("rod", () => { hand.value = { does: "rod", building: null }; })}
    </div>
  );
}

/** Plan and section: the same place, seen from above and from the side. */
function Views() {
  const one = (name: "plan_view" | "section", on: boolean) => (
    <button
      type="button" class="plainly" aria-pressed={section.value === on}
      onClick={() => { section.value = on; hand.value = rest; }}
    >{say(`place.${name}`)}</button>
  );
  if (hand.value.does !== "rest") return null;
  return <div class="views" role="group" aria-label={say("place.views")}>{one("plan_view", false)}{one("section", true)}</div>;
}

/** The survey: a picture of the place, and the facts of what is touched on it. */
export function Place() {
  useEffect(keepFocus, []);
  const aside = section.value && hand.value.does === "rest";
  return (
    <section class="place" aria-labelledby="place-title">
      <div class="picture">
        <h2 id="place-title">{say("place.title")}</h2>
        <p class="hint" id="place-hint" role="status">{hintNow()}</p>
        <Views />
        {aside ? <Section /> : <Plan openFacts={openFacts} />}
        {!aside && <PutDown />}
      </div>
      <div class="beside">
        {(chosenThing.value || hand.value.does !== "rest") && <Facts />}
        <List openFacts={openFacts} />
      </div>
    </section>
  );
}
