import { Photos } from "../fact/Photos";
import { say } from "../words";
import "../words/facts";
import { remove } from "./edits";
import { BuildingFacts } from "./facts/Building";
import { HouseFacts } from "./facts/House";
import { LegFacts } from "./facts/Leg";
import { MetalFacts } from "./facts/Metal";
import { Putting } from "./facts/Putting";
import { RodFacts } from "./facts/Rod";
import type { Thing } from "./outline";
import { choose, chosenThing, edit, hand, surveyed } from "./state";
import { buildingSaid, metalSaid, runSaid } from "./telling";

function titleOf(thing: Thing): string {
  const job = surveyed.value!;
  switch (thing.kind) {
    case "house": return say("place.title.house");
    case "building": return thing.name;
    case "leg": return say("place.title.leg", { n: Number(thing.pointer.split("/")[4]) + 1, run: runSaid(job, thing.run) });
    case "metal": return metalSaid(job, thing);
    case "rod": return say("place.title.rod", { building: buildingSaid(job, thing.building) });
  }
}

function Of({ thing }: { thing: Thing }) {
  switch (thing.kind) {
    case "house": return <HouseFacts />;
    case "building": return <BuildingFacts spot={thing} />;
    case "leg": return <LegFacts leg={thing} />;
    case "metal": return <MetalFacts part={thing} />;
    case "rod": return <RodFacts rod={thing} />;
  }
}

/** What is known of the thing that was touched, or what is being put down. */
export function Facts() {
  const thing = chosenThing.value;
  if (hand.value.does !== "rest") return <Putting />;
  if (!thing) return null;
  const title = titleOf(thing);
  return (
    <section class="facts" aria-labelledby="facts-title" key={thing.pointer}>
      <header>
        <h3 id="facts-title" tabIndex={-1}>{title}</h3>
        <button type="button" class="plainly" onClick={() => choose(null)}>{say("place.close")}</button>
      </header>
      <Of thing={thing} />
      <Photos fact={thing.kind === "house" ? "/intake" : thing.pointer} what={title} />
      {thing.kind !== "house" && (
        <button
          type="button" class="plainly"
          onClick={() => {
            edit(say("place.did.remove"), (job) => remove(job, thing.pointer));
            choose(null);
          }}
        >{say("place.remove", { what: title })}</button>
      )}
    </section>
  );
}
