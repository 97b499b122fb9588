import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import { Answer } from "../answer";
import {
  blankJob, clash, faults, hasJob, mustPair, newJob, NOT_LOADED, NOT_WHOLE, ofProgram, refused, revision,
  title, working,
} from "../bench";
import { outdated, renew } from "../offline";
import { Place } from "../place";
import { Questions } from "../questions";
import { say } from "../words";
import { exampleTitle } from "./example";
import { Head, Settings } from "./head";
import { helpOpen } from "./keys";
import { later } from "./later";
import { RestNotice } from "./rest";
import { place } from "./route";
import { Spoken, Strip } from "./strip";

const Readings = later(async () => (await import("../readings")).Readings);
const Papers = later(async () => (await import("../papers")).Papers);
const Prices = later(async () => (await import("../prices")).Prices);
const History = later(async () => (await import("../history")).History);
const Jobs = later(async () => (await import("../jobs")).Jobs);
const ClashView = later(async () => (await import("../clash")).ClashView);
const Pair = later(async () => (await import("./pair")).Pair);
const Keys = later(async () => (await import("./help")).Keys, true);

/** What a printed survey must say of itself: which state of which job, and when. */
function OnPaper() {
  const [day, setDay] = useState(() => new Date());
  useEffect(() => {
    const now = () => setDay(new Date());
    addEventListener("beforeprint", now);
    return () => removeEventListener("beforeprint", now);
  }, []);
  const date = useMemo(() =>
    day.toLocaleDateString("en-GB", { day: "numeric", month: "long", year: "numeric" }), [day]);
  const state = say(revision.value > 0 ? "shell.paper_state" : "shell.paper_unsent", { number: revision.value });
  return (
    <p class="on-paper">
      {say("shell.on_paper", { title: title.value || say("shell.job_title_missing"), date, state })}
      {faults.value.length > 0 && ` ${say("shell.paper_faulty")}`}
    </p>
  );
}

/** The job that comes with the page is an example, and the way to one of one's own stands by it. */
function Example() {
  if (title.value !== exampleTitle) return null;
  const begin = () => void newJob(blankJob(say("shell.new_job"))).then(() => scrollTo(0, 0));
  return (
    <p class="example">
      <span>{say("shell.example")}</span>{" "}
      <button type="button" class="main" onClick={begin}>{say("shell.begin")}</button>
    </p>
  );
}

function Survey() {
  return (
    <div class="survey">
      <h1 class="unseen">{title.value || say("shell.survey")}</h1>
      <OnPaper />
      <Example />
      <div class="survey-place"><Place /></div>
      <div class="survey-questions"><Questions /></div>
      <div class="survey-answer" id="answer" aria-busy={working.value}><Answer /></div>
      <Strip />
    </div>
  );
}

function Room() {
  const name = place.value;
  if (name === "pair") return <Pair />;
  if (name === "jobs") return <Jobs />;
  if (!hasJob.value) return <p class="sheet" role="status">{say("shell.loading")}</p>;
  switch (name) {
    case "readings": return <Readings />;
    case "papers": return <Papers />;
    case "prices": return <Prices />;
    case "history": return <History />;
    case "clash": return <ClashView />;
    default: return <Survey />;
  }
}

/** What has to be said before anything else. */
function Notices() {
  const program = faults.value.find((fault) => ofProgram(fault) && fault.code !== NOT_WHOLE);
  return (
    <div class="notices">
      {clash.value && place.value !== "clash" && (
        <p class="notice" role="alert">
          {say("shell.clash_banner")} <a href="#/clash">{say("shell.clash_look")}</a>
        </p>
      )}
      {mustPair.value && place.value !== "pair" && (
        <p class="notice" role="alert">
          {say("shell.pair_banner")} <a href="#/pair">{say("shell.pair_go")}</a>
        </p>
      )}
      {refused.value && (
        <p class="notice" role="alert">
          {say("shell.refused", { says: refused.value.detail || refused.value.title })}
        </p>
      )}
      {program && (
        <p class="notice" role="alert">
          {say(program.code === NOT_LOADED ? "shell.engine_missing" : "shell.engine_broke")}
        </p>
      )}
      <RestNotice />
      {outdated.value && (
        <p class="notice" role="alert">
          {say("shell.outdated")}{" "}
          <button type="button" onClick={() => void renew()}>{say("shell.renew")}</button>
        </p>
      )}
    </div>
  );
}

/** Going to another place is like opening another page: its head is where reading goes on. */
function useArrival(): void {
  const before = useRef(place.value);
  useEffect(() => {
    document.title = [say(`shell.${place.value}`), title.value, say("shell.program")]
      .filter(Boolean).join(" – ");
    if (before.current === place.value) return;
    before.current = place.value;
    scrollTo(0, 0);
    document.getElementById("work")?.focus({ preventScroll: true });
  });
}

export function Shell() {
  useArrival();
  return (
    <>
      <a class="skip" href="#work" onClick={(event) => {
        event.preventDefault();
        document.getElementById("work")?.focus();
      }}>{say("shell.skip")}</a>
      <Head />
      <main id="work" tabIndex={-1}>
        <Notices />
        <Room />
      </main>
      <footer class="foot">
        <p class="caution">{say("shell.caution")}</p>
        <Settings />
        <Spoken />
      </footer>
      {helpOpen.value && <Keys />}
    </>
  );
}
