// The price book: its rows, a price changed in place, a book of one's own in and out.

import { useEffect, useState } from "preact/hooks";
import { ownPrices, rest } from "../bench";
import { RestAway } from "../engine/faults";
import { handOver } from "../papers/office";
import { awaited } from "../shell/rest";
import { hasWords, say } from "../words";
import { backToInvented, bookKept, bookName, draft, dropDraft, listed, retake, take } from "./book";
import "./prices.css";
import "./words";
import { PriceRow } from "./PriceRow";
import {
  bookToBeginWith,
  cut,
  faultsByLine,
  grouped,
  isInvented,
  rowsOf,
  type Item,
  type Row,
} from "./table";

/** The text that is shown and edited: a draft with faults, the own book, or the engine's. */
function useBook(): { csv: string | null; uses: Map<string, string>; failed: string } {
  const [begin, setBegin] = useState<string | null>(null);
  const [uses, setUses] = useState(new Map<string, string>());
  const [failed, setFailed] = useState("");
  const own = ownPrices.value;
  useEffect(() => {
    listed().then(
      ({ items }) => {
        setUses(new Map(items.map((item: Item) => [item.item, item.use])));
        if (!own) setBegin(bookToBeginWith(items));
      },
      (error: Error) => setFailed(error instanceof RestAway ? "" : error.message),
    );
  }, [own, rest.value === "here"]);
  return { csv: draft.value?.csv ?? own ?? begin, uses, failed };
}

export function Import() {
  const [failed, setFailed] = useState(false);
  const read = async (input: HTMLInputElement): Promise<void> => {
    const file = input.files?.[0];
    if (!file) return;
    try {
      const text = await file.text();
      setFailed(false);
      void take(text, file.name);
    } catch (error) {
      console.warn(error);
      setFailed(true);
    } finally {
      input.value = "";  // the same file may be read again
    }
  };
  return (
    <>
      <label class="button">
        {say("prices.import")}
        <input
          type="file"
          class="unseen"
          accept=".csv,text/csv,text/plain"
          onChange={(e) => void read(e.currentTarget)}
        />
      </label>
      {failed && <strong role="alert">{say("prices.unreadable")}</strong>}
    </>
  );
}

function Doing({ csv }: { csv: string }) {
  const save = (): void =>
    handOver(
      new Blob([csv], { type: "text/csv" }),
      bookName
        .peek()
        .replace(/(\.csv)?$/, ".csv")
        .replace(/^\.csv$/, "my-prices.csv"),
    );
  return (
    <div class="actions">
      <Import />
      <button type="button" onClick={save}>
        {say("prices.export")}
      </button>
      {(ownPrices.value !== null || draft.value) && (
        <button type="button" class="quiet" onClick={() => void backToInvented()}>
          {say("prices.back")}
        </button>
      )}
    </div>
  );
}

function Standing({ rows }: { rows: Row[] }) {
  const invented = rows.filter(isInvented).length;
  const which =
    ownPrices.value === null
      ? say("prices.demo")
      : say("prices.own", { name: bookName.value || say("prices.own_name") });
  return (
    <>
      <p>
        <strong>{which}</strong>{" "}
        {invented === rows.length
          ? say("prices.all_invented")
          : invented > 0
            ? say("prices.some_invented", { count: invented, all: rows.length })
            : say("prices.none_invented")}
      </p>
      {!bookKept.value && <p class="small">{say("prices.not_told")}</p>}
    </>
  );
}

/** A book that waits for what looks it through. */
function Unread() {
  return (
    <div class="faulty" role="alert">
      <p>
        <strong>{say(rest.value === "here" ? "prices.unread_broke" : "prices.unread")}</strong>
      </p>
      <div class="actions">
        <button type="button" onClick={retake}>
          {say("shell.rest_try")}
        </button>
        <button type="button" onClick={dropDraft}>
          {say("prices.drop_draft")}
        </button>
      </div>
    </div>
  );
}

function Faulty({ whole }: { whole: string[] }) {
  if (!draft.value) return null;
  if (draft.value.unread) return <Unread />;
  return (
    <div class="faulty" role="alert">
      <p>
        <strong>
          {draft.value.faults.length === 1
            ? say("prices.faulty_one")
            : say("prices.faulty", { count: draft.value.faults.length })}
        </strong>
      </p>
      <ul>
        {whole.map((says) => (
          <li key={says}>{says}</li>
        ))}
      </ul>
      <button type="button" onClick={dropDraft}>
        {say("prices.drop_draft")}
      </button>
    </div>
  );
}

function Group({
  name,
  rows,
  csv,
  uses,
  faults,
  find,
}: {
  name: string;
  rows: Row[];
  csv: string;
  uses: Map<string, string>;
  faults: Map<number, string[]>;
  find: string;
}) {
  const faulty = rows.some((row) => faults.has(row.line));
  const key = `prices.group ${name}`;
  const title = name === "" ? say("prices.group_rest") : hasWords(key) ? say(key) : name;
  return (
    <details class="group" open={faulty || find !== ""}>
      <summary>
        <h2>{title}</h2> <span class="small">{say("prices.rows", { count: rows.length })}</span>
      </summary>
      <ul>
        {rows.map((row) => (
          <PriceRow
            key={`${row.line} ${row.item}`}
            row={row}
            csv={csv}
            use={uses.get(row.item) ?? ""}
            faults={faults.get(row.line) ?? []}
          />
        ))}
      </ul>
    </details>
  );
}

export function Prices() {
  const [find, setFind] = useState("");
  const { csv, uses, failed } = useBook();
  if (csv === null) {
    return (
      <p class="sheet" role="status">
        {failed || awaited("prices.loading")}
      </p>
    );
  }
  const rows = rowsOf(cut(csv));
  const faults = faultsByLine(draft.value?.faults ?? []);
  const words = find.trim().toLowerCase();
  const shown = rows.filter((row) =>
    `${row.item} ${uses.get(row.item) ?? ""} ${row.note}`.toLowerCase().includes(words),
  );
  return (
    <div class="prices sheet">
      <h1>{say("prices.title")}</h1>
      <Standing rows={rows} />
      <p class="small">{say("prices.how")}</p>
      <Doing csv={csv} />
      <Faulty whole={faults.get(0) ?? []} />
      <label class="find">
        <span>{say("prices.find")}</span>
        <input type="search" value={find} onInput={(e) => setFind(e.currentTarget.value)} />
      </label>
      <p class="small" role="status">
        {words && say("prices.found", { count: shown.length, all: rows.length })}
      </p>
      {grouped(shown).map(([name, all]) => (
        <Group
          key={name}
          name={name}
          rows={all}
          csv={csv}
          uses={uses}
          faults={faults}
          find={words}
        />
      ))}
    </div>
  );
}
