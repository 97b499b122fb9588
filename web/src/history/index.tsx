import { useSignal, useSignalEffect } from "@preact/signals";
import { change, job, jobId, revision, serverThere } from "../bench";
import { device } from "../bench/save";
import type { Job, Revision } from "../contract";
import { server } from "../keep/server";
import { placeWords, valueWords, when } from "../shell/format";
import { say } from "../words";
import { differences } from "./differences";
import "./history.css";
import "./words";

const atServer = (): boolean => serverThere.value === true && revision.value > 0;

async function load(id: string, there: boolean): Promise<Revision[]> {
  const found = there ? await server.revisions(id) : await (await device()).revisions(id);
  return found.sort((a, b) => b.revision - a.revision);
}

async function loadOne(id: string, number: number, there: boolean): Promise<Job | undefined> {
  const state = there
    ? await server.revision(id, number) : await (await device()).revision(id, number);
  return state?.job;
}

function Compared({ then, now }: { then: Job; now: Job }) {
  const found = differences(then, now);
  if (found.length === 0) return <p>{say("history.same")}</p>;
  const words = (value: unknown) => valueWords(value) ?? say("history.not_known");
  return (
    <div class="scroll" tabIndex={0} role="region" aria-label={say("history.differences")}>
      <table class="plain">
        <thead><tr>
          <th scope="col">{say("history.fact")}</th>
          <th scope="col">{say("history.then")}</th>
          <th scope="col">{say("history.today")}</th>
        </tr></thead>
        <tbody>
          {found.map(({ pointer, a, b }) => (
            <tr key={pointer}>
              <th scope="row">{placeWords(pointer)}</th><td>{words(a)}</td><td>{words(b)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Entry({ entry, there }: { entry: Revision; there: boolean }) {
  const then = useSignal<Job | null>(null);
  const number = entry.revision;
  const look = async () => {
    then.value = then.value ? null : await loadOne(jobId.value!, number, there) ?? null;
  };
  const back = async () => {
    const state = await loadOne(jobId.value!, number, there);
    if (state) change(say("history.back_words", { number }), () => state);
  };
  const time = when(entry.at);
  return (
    <li class={entry.undone ? "entry entry-undone" : "entry"}>
      <div class="entry-line">
        <p>
          <span class="entry-what">{entry.what || say(number === 1 ? "history.begun" : "history.no_words")}</span>
          {entry.undone && <em> {say("history.undone")}</em>}
          <span class="entry-when">
            {say("history.revision", { number })} · {entry.by
              ? say("history.by", { when: time, who: entry.by }) : say("history.when", { when: time })}
          </span>
        </p>
        <button type="button" class="quiet" aria-expanded={then.value !== null}
          aria-label={say(then.value ? "history.hide_of" : "history.look_of", { number })} onClick={() => void look()}>
          {say(then.value ? "history.hide" : "history.look")}
        </button>
      </div>
      {then.value && job.value && (
        <div class="entry-then">
          <Compared then={then.value} now={job.value} />
          <p class="actions">
            <button type="button" onClick={() => void back()}>{say("history.back")}</button>
          </p>
        </div>
      )}
    </li>
  );
}

export function History() {
  const entries = useSignal<Revision[] | null>(null);
  const failed = useSignal("");
  useSignalEffect(() => {
    const id = jobId.value;
    const there = atServer();
    void job.value;
    if (!id) return;
    const timer = setTimeout(() => load(id, there).then((found) => {
      entries.value = found;
      failed.value = "";
    }, (error: Error) => { failed.value = error.message; }), entries.peek() ? 700 : 0);
    return () => clearTimeout(timer);
  });
  const there = atServer();
  return (
    <section class="sheet" aria-labelledby="history-title">
      <h1 id="history-title">{say("history.title")}</h1>
      <p>{say(there ? "history.intro" : "history.device")}</p>
      {failed.value && <p role="alert">{say("history.failed", { says: failed.value })}</p>}
      {entries.value?.length === 0 && <p>{say("history.empty")}</p>}
      <ol class="entries">
        {entries.value?.map((entry) => <Entry key={entry.revision} entry={entry} there={there} />)}
      </ol>
    </section>
  );
}
