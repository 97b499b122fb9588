import { useSignal, useSignalEffect } from "@preact/signals";
import { useRef } from "preact/hooks";
import {
  about, archiveJob, author, blankJob, demoJob, job, jobId, listJobs, newJob, openJob, serverThere,
} from "../bench";
import type { JobLine } from "../contract";
import { server } from "../keep/server";
import { when } from "../shell/format";
import { goTo } from "../shell/route";
import { say } from "../words";
import { Devices } from "./Devices";
import { BadFile, fileName, readFile, saveFile } from "./files";
import "./jobs.css";
import "./words";

interface LineProps { line: JobLine; done: (task: () => Promise<void>) => void }

function Line({ line, done }: LineProps) {
  const title = line.title || say("jobs.untitled");
  const time = when(line.changed_at);
  const open = (event: Event) => {
    event.preventDefault();
    done(async () => {
      if (await openJob(line.id)) goTo("survey");
    });
  };
  const flip = () => done(() => archiveJob(line.id, !line.archived));
  return (
    <li class="job-line">
      <a href="#/survey" onClick={open} aria-current={line.id === jobId.value ? "true" : undefined}>
        <span class="job-title">{title}</span>
        <span class="job-when">
          {line.changed_by
            ? say("jobs.changed_by", { when: time, who: line.changed_by })
            : say("jobs.changed", { when: time })}
          {line.id === jobId.value && ` · ${say("jobs.open_now")}`}
          {line.revision === 0 && ` · ${say("jobs.device_only")}`}
        </span>
      </a>
      <button type="button" class="quiet" onClick={flip}
        aria-label={say(line.archived ? "jobs.bring_back_of" : "jobs.put_away_of", { title })}>
        {say(line.archived ? "jobs.bring_back" : "jobs.put_away")}
      </button>
    </li>
  );
}

function Whose() {
  const known = about.value;
  const words = known && serverThere.value === true
    ? say("jobs.server_about", { version: known.version, edition: known.edition })
    : say(serverThere.value === "never" ? "jobs.no_server_ever" : "jobs.no_server");
  return (
    <div class="form jobs-whose">
      <label>{say("jobs.name")}
        <input type="text" autocomplete="name" value={author.value}
          onInput={(event) => { author.value = event.currentTarget.value; }} />
      </label>
      <p class="small">{words}</p>
    </div>
  );
}

export function Jobs() {
  const find = useSignal("");
  const archived = useSignal(false);
  const lines = useSignal<JobLine[] | null>(null);
  const said = useSignal("");
  const again = useSignal(0);
  const picker = useRef<HTMLInputElement>(null);

  useSignalEffect(() => {
    void [again.value, serverThere.value];
    const [text, away] = [find.value, archived.value];
    const timer = setTimeout(() => void listJobs(text, away).then((found) => {
      if (find.peek() === text && archived.peek() === away) lines.value = found;
    }), text ? 150 : 0);
    return () => clearTimeout(timer);
  });

  const done = (task: () => Promise<unknown>): void => {
    said.value = "";
    task().catch((error: Error) => {
      said.value = say(error instanceof BadFile ? "jobs.bad_file" : "jobs.failed",
        { says: error.message });
    }).finally(() => { again.value += 1; });
  };
  const begin = () => done(async () => {
    await newJob(blankJob(say("shell.new_job")));
    goTo("survey");
  });
  const demo = () => done(async () => {
    await newJob(await demoJob());
    goTo("survey");
  });
  const picked = (event: Event) => {
    const input = event.currentTarget as HTMLInputElement;
    const file = input.files?.[0];
    if (!file) return;
    done(async () => {
      const read = await readFile(file);
      input.value = "";
      if ("job" in read) {
        await newJob(read.job);
        goTo("survey");
      } else if (serverThere.value === true) {
        await server.imported(read.store, author.value);
        said.value = say("jobs.imported");
      } else {
        said.value = say("jobs.need_server");
      }
    });
  };

  return (
    <section class="sheet jobs" aria-labelledby="jobs-title">
      <h1 id="jobs-title">{say("jobs.title")}</h1>
      <p class="actions">
        <button type="button" class="main" onClick={begin}>{say("shell.begin")}</button>
        <button type="button" onClick={() => picker.current?.click()}>{say("jobs.open_file")}</button>
        <button type="button" disabled={!job.value}
          onClick={() => job.value && saveFile(fileName(job.value), job.value)}>
          {say("jobs.save_file")}
        </button>
        <button type="button" onClick={demo}>{say("jobs.begin_demo")}</button>
        {serverThere.value === true && (
          <button type="button"
            onClick={() => done(async () => saveFile("toft-jobs.json", await server.exported(null)))}>
            {say("jobs.export")}
          </button>
        )}
        <input ref={picker} class="unseen" type="file" accept=".json,application/json"
          tabIndex={-1} aria-hidden="true" onChange={picked} />
      </p>
      <p role="status">{said.value}</p>
      <label class="find">{say("jobs.find")}
        <input type="search" value={find.value}
          onInput={(event) => { find.value = event.currentTarget.value; }} />
      </label>
      <ul class="job-list">
        {lines.value?.map((line) => <Line key={line.id} line={line} done={done} />)}
      </ul>
      {lines.value?.length === 0 && <p>{say("jobs.none")}</p>}
      <label class="tick">
        <input type="checkbox" checked={archived.value}
          onChange={() => { archived.value = !archived.value; }} />
        {say("jobs.archived")}
      </label>
      <Devices />
      <Whose />
    </section>
  );
}
