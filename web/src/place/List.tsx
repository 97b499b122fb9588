import { say } from "../words";
import { addBuilding, freeSpot } from "./edits";
import { mayFeed, startRoute } from "./hand";
import { thingsOf } from "./outline";
import { choose, chosen, edit, hand, keepInView, shown, surveyed } from "./state";
import { tellOf } from "./telling";

/** Everything on the place as a list: the picture's equal for who does not see or point. */
export function List({ openFacts }: { openFacts: () => void }) {
  const of = shown.value;
  if (!of) return null;
  const things = thingsOf(of);
  const building = () => {
    const made = edit(say("place.did.building"), (job) => addBuilding(job, freeSpot(job), null));
    const id = surveyed.peek()!.buildings.at(-1)!.id;
    keepInView(shown.peek()!.spots.at(-1)!.at);
    if (made) hand.value = startRoute(mayFeed(surveyed.peek()!, id)[0] ?? null, id);
  };
  return (
    <details class="more list">
      <summary>{say("place.list", { n: things.length })}</summary>
      <ul class="things-list">
        {things.map((thing) => (
          <li key={thing.pointer}>
            <button
              type="button" class="thing-line" aria-pressed={chosen.value === thing.pointer}
              onClick={() => { choose(thing.pointer); openFacts(); }}
            >{tellOf(thing)}</button>
          </li>
        ))}
      </ul>
      <div class="acts">
        <button type="button" class="plainly" onClick={building}>{say("place.list_building")}</button>
      </div>
    </details>
  );
}
