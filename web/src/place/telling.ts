// Things on the place in words: for the list, for readers, for what is written on the plan.

import { say } from "../words";
import { wordSaid } from "../fact/words";
import { plain, readFigure, spoken } from "./figure";
import { distance, drawnLength } from "./geometry";
import { nameOf, type Figure, type Job } from "./job";
import { isLoose, isProposed, type Part, type Stretch, type Thing } from "./outline";
import { surveyed } from "./state";

const index = (pointer: string, step: number) => Number(pointer.split("/")[step]);

/** "21 m" as stated, "≈ 21 m" where it is only drawn, "? m" where nobody knows. */
export function lengthSaid(leg: Stretch): string {
  const reading = readFigure(leg.length);
  if (!reading.known) return say("place.length_open");
  const metres = spoken(reading, "–");
  return say(isLoose(leg.length) ? "place.length_drawn" : "place.length", { metres });
}

export function metalSaid(job: Job, part: Part): string {
  const metal = job.buildings[index(part.pointer, 2)]?.metalwork?.[index(part.pointer, 4)];
  const material = metal?.["material"];
  return typeof material === "string" ? `${part.what}, ${material}` : part.what;
}

export function buildingSaid(job: Job, pointer: string): string {
  const building = job.buildings[index(pointer, 2)];
  return building ? nameOf(building) : "";
}

export function runSaid(job: Job, pointer: string): string {
  const run = job.runs[index(pointer, 2)];
  const named = (id: string | undefined) => {
    const building = job.buildings.find((b) => b.id === id);
    return building ? nameOf(building) : "";
  };
  return say("place.run", { from: named(run?.from), to: named(run?.to) });
}

function legTold(job: Job, leg: Stretch): string {
  const method = wordSaid(`${leg.pointer}/method`, leg.method);
  const metres = readFigure(leg.length).known
    ? spoken(readFigure(leg.length), say("fact.to")) : say("fact.unknown");
  const words = {
    run: runSaid(job, leg.run), n: index(leg.pointer, 4) + 1, method, metres,
  };
  if (!isLoose(leg.length)) return say("place.tell.leg", words);
  return say(isProposed(leg.length, leg.path) ? "place.tell.leg_drawn" : "place.tell.leg_guessed", words);
}

export function tellOf(thing: Thing): string {
  const job = surveyed.value!;
  switch (thing.kind) {
    case "house":
      return say("place.tell.house", { name: thing.name, earthing: job.intake?.earthing ?? say("place.earthing_open") });
    case "building":
      return say("place.tell.building", { name: thing.name, metres: plain(drawnLength([[0, 0], thing.at])) });
    case "leg": return legTold(job, thing);
    case "metal":
      return say("place.tell.metal", { what: metalSaid(job, thing), building: buildingSaid(job, thing.building) });
    case "rod":
      return say("place.tell.rod", {
        building: buildingSaid(job, thing.building),
        metres: plain(Math.round(distance([0, 0], thing.at) * 10) / 10),
      });
  }
}

/** A figure in words with its unit, or that it is not known. */
export function figureSaid(figure: Figure | undefined, unit: string, per = 1): string {
  const reading = readFigure(figure);
  return reading.known ? `${spoken(reading, say("fact.to"), per)} ${unit}` : say("fact.unknown");
}
