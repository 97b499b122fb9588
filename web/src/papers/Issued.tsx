// What was issued, when, by whom and at which revision; and issuing anew.

import { useEffect, useState } from "preact/hooks";
import {
  author, catchUp, chosenKey, faults, job, jobId, revision, save, serverThere, sync,
} from "../bench";
import { faultWords } from "../answer/speak";
import type { Issue } from "../contract";
import { Refused } from "../keep/server";
import { say } from "../words";
import { momentWords, sizeWords } from "./day";
import { issue, issues } from "./office";

/** How an issue stands to the job as it is now. */
export function standing(
  issued: { revision: number },
  now: { revision: number; pending: boolean },
): "current" | "behind" {
  return issued.revision === now.revision && !now.pending ? "current" : "behind";
}

function IssueRow({ one }: { one: Issue }) {
  const stands = standing(one, { revision: revision.value, pending: sync.value !== "saved" });
  return (
    <li>
      <p>
        <strong>{momentWords(one.at)}</strong>, {one.by || say("papers.nobody")},{" "}
        {say("papers.at_revision", { revision: one.revision })}
      </p>
      <p class={stands === "behind" ? "changed-since" : "small"}>
        {stands === "behind" ? `▲ ${say("papers.changed_since")}` : say("papers.still_so")}
      </p>
      <ul class="files">
        {one.files.map((file) => (
          <li key={file.name}>
            <a href={file.url} target="_blank" rel="noopener">
              {file.title || file.name}
            </a>{" "}
            <span class="small">{sizeWords(file.bytes)}</span>
          </li>
        ))}
      </ul>
    </li>
  );
}

function useIssues(): [Issue[] | null, () => Promise<void>] {
  const [all, setAll] = useState<Issue[] | null>(null);
  const id = jobId.value;
  const there = serverThere.value === true;
  const fetchAll = async (): Promise<void> => {
    if (!id || !there) return;
    try {
      setAll(await issues(id));
    } catch {
      setAll(null);
    }
  };
  useEffect(() => {
    void fetchAll();
  }, [id, there, revision.value]);
  return [all, fetchAll];
}

/**
 * Issues what is on screen: only once the server has it, and only that revision. Throws NotAsShown
 * where server and screen are not of one mind.
 */
export class NotAsShown extends Error {}

export async function issueShown(date: string): Promise<void> {
  await save();
  if (sync.peek() !== "saved" || faults.peek().length > 0) {
    throw new NotAsShown(say("papers.not_saved"));
  }
  const key = chosenKey.peek();
  const wish = { date, revision: revision.peek(), ...(key ? { key } : {}) };
  try {
    await issue(jobId.peek()!, wish, author.peek());
  } catch (error) {
    if (!(error instanceof Refused) || error.status !== 409) throw error;
    void catchUp();
    throw new NotAsShown(say("papers.another_revision"));
  }
}

function IssueNow({ date, done }: { date: string; done: () => Promise<void> }) {
  const [state, setState] = useState<"" | "making" | "made" | "failed">("");
  const [why, setWhy] = useState("");
  const shown = sync.value === "saved" && faults.value.length === 0 && revision.value > 0;
  const issueNow = async (): Promise<void> => {
    setState("making");
    try {
      await issueShown(date);
      setState("made");
      await done();
    } catch (error) {
      setWhy(faultWords(error));
      setState("failed");
    }
  };
  return (
    <div class="issue-now">
      <label>
        <span>{say("papers.author")}</span>
        <input
          type="text"
          autocomplete="name"
          value={author.value}
          placeholder={say("papers.author_hint")}
          onInput={(e) => {
            author.value = e.currentTarget.value;
          }}
          onBlur={() => {
            author.value = author.peek().trim();
          }}
        />
      </label>
      <button
        type="button"
        class="main"
        disabled={state === "making" || !author.value || !job.value || !shown}
        onClick={() => void issueNow()}
      >
        {say(state === "making" ? "papers.issuing" : "papers.issue")}
      </button>
      <p class="small" role="status">
        {state === "made" && say("papers.issued_now")}
        {!author.value && say("papers.name_first")}
        {author.value && !shown && say("papers.not_saved")}
      </p>
      {state === "failed" && <p role="alert">{say("papers.failed", { why })}</p>}
    </div>
  );
}

export function Issued({ date }: { date: string }) {
  const [all, fetchAll] = useIssues();
  if (serverThere.value !== true) {
    return (
      <section class="issued" aria-labelledby="issued-title">
        <h2 id="issued-title">{say("papers.issued")}</h2>
        <p>{say("papers.no_server")}</p>
      </section>
    );
  }
  return (
    <section class="issued" aria-labelledby="issued-title">
      <h2 id="issued-title">{say("papers.issued")}</h2>
      <p class="small">{say("papers.issue_says")}</p>
      <IssueNow date={date} done={fetchAll} />
      {all?.length === 0 && <p class="small">{say("papers.none_issued")}</p>}
      <ol class="issue-list">
        {all?.map((one) => (
          <IssueRow key={one.issue} one={one} />
        ))}
      </ol>
    </section>
  );
}
