// One paper as its sheets, on screen and for the browser's printer.

import { useEffect, useState } from "preact/hooks";
import { Sheet } from "../answer/Sheet";
import { faultWords } from "../answer/speak";
import { useWork } from "../answer/fetch";
import { chosenKey, job, ownPrices, serverThere } from "../bench";
import { awaited } from "../shell/rest";
import { say } from "../words";
import type { Kind } from "./kinds";
import { handOver, pdf } from "./office";

interface Shown {
  kind: Kind;
  date: string;
}

function Sheets({ title, sheets, busy }: { title: string; sheets: string[]; busy: boolean }) {
  useEffect(() => {
    document.documentElement.classList.add("has-sheets");
    return () => document.documentElement.classList.remove("has-sheets");
  }, []);
  return (
    <ol class="sheets" aria-busy={busy}>
      {sheets.map((svg, i) => (
        <li key={i}>
          <Sheet
            svg={svg}
            class="page-sheet"
            alt={say("papers.sheet_alt", { title, number: i + 1, count: sheets.length })}
          />
          <p class="small on-screen">
            {say("papers.page_of", { number: i + 1, count: sheets.length })}
          </p>
        </li>
      ))}
    </ol>
  );
}

/** The server prints with its own book; a book that only this device has is not in its PDFs. */
function Download({ kind, date }: Shown) {
  const [state, setState] = useState<"" | "making" | "failed">("");
  const [why, setWhy] = useState("");
  const fetchIt = async (): Promise<void> => {
    setState("making");
    try {
      const key = chosenKey.peek();
      handOver(await pdf({ job: job.peek()!, kind, date, ...(key ? { key } : {}) }), `${kind}.pdf`);
      setState("");
    } catch (error) {
      setWhy(faultWords(error));
      setState("failed");
    }
  };
  return (
    <>
      <button type="button" disabled={state === "making"} onClick={() => void fetchIt()}>
        {say(state === "making" ? "papers.making" : "papers.download")}
      </button>
      {state === "failed" && <p role="alert">{say("papers.failed", { why })}</p>}
    </>
  );
}

export function Preview({ kind, date }: Shown) {
  const key = chosenKey.value;
  const asked = useWork("paper", { kind, date, ...(key ? { key } : {}) });
  const paper = asked.answer;
  const at = serverThere.value === true;
  return (
    <div class="preview" id={`preview-${kind}`}>
      <div class="actions on-screen">
        {at && <Download kind={kind} date={date} />}
        {paper && (
          <button type="button" class={at ? "quiet" : ""} onClick={() => print()}>
            {say("papers.print")}
          </button>
        )}
      </div>
      {!paper && !asked.failed && (
        <p class="small" role="status">
          {awaited("papers.laying_out")}
        </p>
      )}
      {asked.failed !== null && (
        <p role="alert">
          {say(at ? "papers.no_sheets_server" : "papers.no_sheets", {
            why: faultWords(asked.failed),
          })}
        </p>
      )}
      {ownPrices.value && at && <p class="small">{say("papers.own_prices")}</p>}
      {paper && <Sheets title={paper.title} sheets={paper.sheets} busy={asked.waiting} />}
    </div>
  );
}
