// While the hand puts something down: what it is, how it lies, and the ways out.

import { useState } from "preact/hooks";
import { Choice, type Option } from "../../fact/Choice";
import { rowOf } from "../../fact/rows";
import { wordSaid } from "../../fact/words";
import { say } from "../../words";
import {
  dropBuilding, endMetal, enter, layAs, mayFeed, rest, startRoute, takeBack, tapBuilding, tapGround, type Hand,
} from "../hand";
import { nameOf } from "../job";
import { edit, hand, keepInView, shown, surveyed, take } from "../state";

const uses = ["shed", "garage", "studio", "office", "workshop", "greenhouse"];
const ways = ["buried direct", "buried in duct", "clipped", "overhead"];
const pipes = ["water pipe", "gas pipe", "oil pipe", "structural steel", "frame", "fence"];

/** A few words at first, all of them on asking. */
function Few({ legend, fact, first, value, onChoose, also = [] }: {
  legend: string; fact: string; first: string[]; value: string | null; onChoose: (word: string) => void;
  /** Words of the page beside those of the format. */
  also?: Option[];
}) {
  const [all, setAll] = useState(false);
  const words = all ? [...first, ...rowOf(fact)!.words!.filter((w) => !first.includes(w))] : first;
  const options = [...words.map((word) => ({ value: word, text: wordSaid(fact, word) })), ...also];
  const more = "…";
  return (
    <Choice
      legend={legend} value={value}
      options={all ? options : [...options, { value: more, text: say("place.all_words") }]}
      onChoose={(word) => { if (word === more) setAll(true); else onChoose(word); }}
    />
  );
}

function Leave() {
  return (
    <button type="button" class="plainly" onClick={() => { hand.value = rest; }}>{say("place.leave")}</button>
  );
}

function Asking({ now }: { now: Extract<Hand, { does: "ask" }> }) {
  const first = surveyed.value!.buildings.length < 2;
  const drop = (use: string) => {
    const made = edit(say("place.did.building"), dropBuilding(now.at, use));
    const id = surveyed.peek()!.buildings.at(-1)!.id;
    keepInView(now.at);
    hand.value = made ? startRoute(mayFeed(surveyed.peek()!, id)[0] ?? null, id) : rest;
  };
  return (
    <>
      <Few legend={say("place.what_stands")} also={[{ value: "container", text: say("place.container") }]} fact="/buildings/0/use" first={uses} value={null} onChoose={drop} />
      <div class="acts">
        {!first && (
          <>
            <button type="button" class="plainly" onClick={() => { hand.value = { does: "metal", what: null, path: [now.at] }; }}>
              {say("place.or_metal")}
            </button>
            <button type="button" class="plainly" onClick={() => {
              take(tapGround({ does: "rod", building: null }, now.at, surveyed.value!), say("place.did.rod"));
            }}>{say("place.or_rod")}</button>
          </>
        )}
        <Leave />
      </div>
    </>
  );
}

function Drawing({ now }: { now: Extract<Hand, { does: "route" }> }) {
  const job = surveyed.value!;
  const spots = shown.value!.spots;
  const to = spots.find((spot) => spot.id === now.to);
  const begins = now.to ? mayFeed(job, now.to) : [];
  const any = now.drawn.length > 0;
  return (
    <>
      {begins.length > 1 && !any && (
        <Choice
          legend={say("place.begins_at")} value={now.from}
          options={begins.map((id) => ({ value: id, text: nameOf(job.buildings.find((b) => b.id === id)!) }))}
          onChoose={(from) => { hand.value = { ...now, from }; }}
        />
      )}
      <Few
        legend={say("place.lies_here")} fact="/runs/0/legs/0/method" first={ways} value={now.method}
        onChoose={(method) => { hand.value = layAs(now, method); }}
      />
      <div class="acts">
        {to && now.from && (
          <button type="button" class="press" onClick={() => take(tapBuilding(now, to), say("place.did.route"))}>
            {say(any ? "place.end_at" : "place.straight", { name: to.name })}
          </button>
        )}
        {any && <button type="button" class="plainly" onClick={() => { hand.value = takeBack(now); }}>{say("place.take_back")}</button>}
        <Leave />
      </div>
    </>
  );
}

function Piping({ now }: { now: Extract<Hand, { does: "metal" }> }) {
  const others = shown.value!.spots.filter((spot) => spot.kind === "building");
  return (
    <>
      <Few
        legend={say("place.what_metal")} fact="/buildings/0/metalwork/0/what" first={pipes} value={now.what}
        onChoose={(what) => { hand.value = { ...now, what }; }}
      />
      <div class="acts">
        {now.what && others.map((spot) => (
          <button key={spot.pointer} type="button" class="press" onClick={() => take(enter(now, spot), say("place.did.metal"))}>
            {say("place.enters", { name: spot.name })}
          </button>
        ))}
        {now.what && now.path.length > 1 && (
          <button type="button" class="plainly" onClick={() => take(endMetal(now, surveyed.value!), say("place.did.metal"))}>
            {say("place.ends_here")}
          </button>
        )}
        {now.path.length > 0 && (
          <button type="button" class="plainly" onClick={() => { hand.value = takeBack(now); }}>{say("place.take_back")}</button>
        )}
        <Leave />
      </div>
    </>
  );
}

export function Putting() {
  const now = hand.value;
  if (now.does === "rest" || !shown.value) return null;
  return (
    <div class="putting">
      {now.does === "ask" && <Asking now={now} />}
      {now.does === "route" && <Drawing now={now} />}
      {now.does === "metal" && <Piping now={now} />}
      {now.does === "rod" && <Leave />}
    </div>
  );
}
