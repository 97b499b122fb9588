// Before there can be an answer: what is missing, one thing at a time, and a way to give it.

import { faultSays } from "../answer/speak";
import { faults, ofProgram } from "../bench";
import { addBuilding, addStraightRun, freeSpot } from "../place/edits";
import { EarthingField } from "../place/facts/Earthing";
import { Loads } from "../place/facts/Loads";
import { mayFeed, rest, startRoute, usualMethod } from "../place/hand";
import { isHouse, nameOf, type Job } from "../place/job";
import { nextStep, type Step } from "../place/next";
import { thingOfFact } from "../place/outline";
import { choose, chosen, edit, hand, shown, surveyed } from "../place/state";
import { say } from "../words";
import "../words/facts";

function AddBuilding() {
  return (
    <button
      type="button" class="press second"
      onClick={() => edit(say("place.did.building"), (job) => addBuilding(job, freeSpot(job), null))}
    >{say("place.list_building")}</button>
  );
}

function Route({ id, job }: { id: string; job: Job }) {
  const name = nameOf(job.buildings.find((b) => b.id === id)!);
  const from = mayFeed(job, id)[0] ?? null;
  return (
    <div class="acts">
      <button type="button" class="press" onClick={() => { hand.value = startRoute(from, id); }}>
        {say("place.route_to", { name })}
      </button>
      {from && (
        <button type="button" class="press second" onClick={() => {
          hand.value = rest;
          edit(say("place.did.route"), (copy) => { addStraightRun(copy, from, id, usualMethod); });
        }}>{say("questions.straight")}</button>
      )}
    </div>
  );
}

function Give({ step, job }: { step: Step; job: Job }) {
  switch (step.step) {
    case "building": return <AddBuilding />;
    case "route": return <Route id={step.id} job={job} />;
    case "load": return <Loads key={step.building} building={step.building} />;
    case "earthing": return <EarthingField big />;
    default: return null;
  }
}

/** Faults that the next step does not mend, each with the way to what it speaks of. */
function Faulty() {
  return (
    <ul class="things-list">
      {faults.value.map((fault) => {
        const thing = shown.value ? thingOfFact(shown.value, fault.pointer) : undefined;
        return (
          <li key={`${fault.code} ${fault.pointer}`}>
            <p>{faultSays(fault)}{fault.nearest ? ` ${say("questions.nearest", { word: fault.nearest })}` : ""}</p>
            {thing && (
              <button type="button" class="plainly" onClick={() => choose(thing.pointer)}>{say("questions.show")}</button>
            )}
          </li>
        );
      })}
    </ul>
  );
}

export function Guide() {
  const job = surveyed.value;
  if (!job || faults.value.every(ofProgram)) return null;
  if (hand.value.does !== "rest") return null;
  const step = nextStep(job);
  const lacking = step.step !== "done" && step.step !== "length";
  const house = `/buildings/${job.buildings.findIndex(isHouse)}`;
  const asked = step.step === "earthing" ? house : "building" in step ? step.building : null;
  const shownAlready = chosen.value !== null && chosen.value === asked;
  const name = "building" in step ? nameOf(job.buildings[Number(step.building.split("/")[2])]!) : "";
  return (
    <article class="question" aria-labelledby="question-title">
      <h3 id="question-title">{say(lacking ? `questions.first.${step.step}` : "questions.first.fault", { name })}</h3>
      {lacking && <p>{say(`questions.because.${step.step}`, { name })}</p>}
      {shownAlready ? null : lacking ? <Give step={step} job={job} /> : <Faulty />}
    </article>
  );
}
