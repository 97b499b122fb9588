// What will be measured when it is built, and a place to write down what was.

import { useEffect, useId, useState } from "preact/hooks";
import { Shape } from "../answer/Mark";
import { figure, unbroken } from "../answer/figure";
import { useWork } from "../answer/fetch";
import { faultWords, runWords, schemeWords } from "../answer/speak";
import { author, chosenKey, faults, first, job, jobId, serverThere } from "../bench";
import { momentWords } from "../papers/day";
import { awaited } from "../shell/rest";
import { say } from "../words";
import { beyondLimit, factOf, steps, unitOf, valueOf, type StepOf, type Test } from "./expected";
import { keep, letGo, readings, recall, type Kept } from "./keep";
import "./readings.css";
import "./words";

/** The engine names runs as the job does; people name buildings. */
function whereWords(where: string): string {
  const run = (job.value?.runs as Array<{ id: string }> | undefined)?.find((r) =>
    where.includes(r.id),
  );
  const words = run
    ? where.replace(run.id, say("readings.run_to", { building: runWords(run.id) }))
    : where;
  return unbroken(words);
}

/** What was found where nothing is measured: kept as 1 or 0, and said in words. */
const foundWords = (one: Kept): string =>
  one.unit ? figure(one.value, one.unit, 6) : say(one.value === 1 ? "readings.good" : "readings.bad");

function KeptRow({ one, test }: { one: Kept; test?: Test }) {
  const beyond = test && beyondLimit(one, test);
  const limit = () => figure(test!.limit!, test!.unit, 3);
  return (
    <li>
      <strong>{foundWords(one)}</strong>{" "}
      {beyond && (
        <strong class="beyond">
          <Shape verdict="caution" /> {say(`readings.${beyond}`, { limit: limit() })}{" "}
        </strong>
      )}
      <span class="small">
        {[one.instrument, one.note, one.by, momentWords(one.at)].filter(Boolean).join(", ")}
        {one.held && !one.refused && ` – ${say("readings.held")}`}
      </span>
      {one.refused && (
        <span class="small" role="alert">
          {" "}
          {say("readings.refused", { says: one.refused })}{" "}
          <button type="button" class="quiet" onClick={() => void letGo(one)}>
            {say("readings.let_go")}
          </button>
        </span>
      )}
    </li>
  );
}

/** The instrument written last for a kind of test stands ready for the next. */
const lastInstrument = new Map<string, string>();

interface Draft {
  value: string;
  instrument: string;
  note: string;
}

/** What is half written stays while one looks at another place of the page. */
const drafts = new Map<string, Draft>();
const draftKey = (test: Test): string => `${jobId.peek()} ${factOf(test)}`;

/** Name of who reads, asked where it is wanted. */
function Reader({ focused }: { focused?: boolean }) {
  return (
    <label class="tester">
      <span>{say("readings.author")}</span>
      <input
        type="text"
        autocomplete="name"
        value={author.value}
        aria-invalid={focused}
        onInput={(e) => {
          author.value = e.currentTarget.value;
        }}
        onBlur={() => {
          author.value = author.peek().trim();
        }}
      />
    </label>
  );
}

/** Good or not, where there is nothing to measure. */
function Found({ value, choose }: { value: string; choose: (value: string) => void }) {
  const id = useId();
  return (
    <fieldset class="found">
      <legend>{say("readings.found")}</legend>
      {(["1", "0"] as const).map((word) => (
        <label key={word} class="tick">
          <input type="radio" name={id} checked={value === word} onChange={() => choose(word)} />
          {say(word === "1" ? "readings.good" : "readings.bad")}
        </label>
      ))}
    </fieldset>
  );
}

function Value({ test, draft, put, wrong, id }: {
  test: Test;
  draft: Draft;
  put: (part: Partial<Draft>) => void;
  wrong: boolean;
  id: string;
}) {
  const unit = unitOf(test);
  if (!unit) return <Found value={draft.value} choose={(value) => put({ value })} />;
  return (
    <label class="write-value">
      <span>{say("readings.value", { unit })}</span>
      <input
        type="text"
        inputMode="decimal"
        autocomplete="off"
        value={draft.value}
        autoFocus
        aria-invalid={wrong}
        aria-describedby={wrong ? `${id}-wrong` : undefined}
        onInput={(e) => put({ value: e.currentTarget.value })}
      />
    </label>
  );
}

function Write({ test, done }: { test: Test; done: () => void }) {
  const [draft, setDraft] = useState<Draft>(
    drafts.get(draftKey(test)) ?? {
      value: "",
      instrument: lastInstrument.get(test.instrument) ?? "",
      note: "",
    },
  );
  const [wrong, setWrong] = useState("");
  const [asksName] = useState(!author.peek());
  const id = useId();
  const put = (part: Partial<Draft>): void => {
    const next = { ...draft, ...part };
    drafts.set(draftKey(test), next);
    setDraft(next);
  };
  const leave = (): void => {
    drafts.delete(draftKey(test));
    done();
  };
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    const unit = unitOf(test);
    const number = valueOf(draft.value);
    const by = author.peek().trim();
    setWrong(
      number === null
        ? say(unit ? "readings.no_number" : "readings.no_finding")
        : by ? "" : say("readings.name_first"),
    );
    if (number === null || !by) return;
    const instrument = draft.instrument.trim();
    lastInstrument.set(test.instrument, instrument);
    const offScale = /^\s*[>≥]/.test(draft.value) ? say("readings.off_scale") : "";
    const note = [offScale, draft.note.trim()].filter(Boolean).join("; ");
    await keep({ fact: factOf(test), value: number, unit, instrument, note }, by);
    leave();
  };
  return (
    <form class="write" onSubmit={(e) => void submit(e)}>
      <Value test={test} draft={draft} put={put} wrong={wrong !== ""} id={id} />
      {unitOf(test) && (
        <label>
          <span>{say("readings.instrument")}</span>
          <input
            type="text"
            value={draft.instrument}
            placeholder={test.instrument}
            onInput={(e) => put({ instrument: e.currentTarget.value })}
          />
        </label>
      )}
      <label>
        <span>{say("readings.note")}</span>
        <input type="text" value={draft.note} onInput={(e) => put({ note: e.currentTarget.value })} />
      </label>
      {asksName && <Reader focused={wrong !== "" && !author.value.trim()} />}
      <div class="actions">
        <button type="submit" class="main">
          {say("readings.keep")}
        </button>
        <button type="button" class="quiet" onClick={leave}>
          {say("readings.leave")}
        </button>
      </div>
      {wrong && (
        <p id={`${id}-wrong`} role="alert">
          {wrong}
        </p>
      )}
    </form>
  );
}

function TestRow({ test }: { test: Test }) {
  const [writing, setWriting] = useState(drafts.has(draftKey(test)));
  const kept = readings.value.filter((r) => r.fact === factOf(test));
  return (
    <li class="test">
      <div class="test-head">
        <p>
          <strong>{whereWords(test.where)}</strong>
          <span class="expects">{unbroken(test.says)}</span>
        </p>
        {!writing && (
          <button
            type="button"
            class="quiet"
            onClick={() => setWriting(true)}
            aria-label={say("readings.write_of", { where: `${test.what}, ${test.where}` })}
          >
            {say("readings.write")}
          </button>
        )}
      </div>
      {kept.length > 0 && (
        <ul class="kept">
          {kept.map((one) => (
            <KeptRow key={one.key} one={one} test={test} />
          ))}
        </ul>
      )}
      {writing && <Write test={test} done={() => setWriting(false)} />}
    </li>
  );
}

function StepPart({ step }: { step: StepOf }) {
  const instrument = step.tests.find((t) => t.instrument)?.instrument;
  return (
    <section class="step" aria-label={step.what}>
      <h3>{step.what}</h3>
      <p class="small">
        {step.how}. {instrument && <>{say("readings.with", { instrument })} </>}
        <span class="clause">{step.clause}</span>
      </p>
      <ul>
        {step.tests.map((t) => (
          <TestRow key={factOf(t)} test={t} />
        ))}
      </ul>
    </section>
  );
}

function Others({ known }: { known: Set<string> }) {
  const others = readings.value.filter((r) => !known.has(r.fact));
  if (others.length === 0) return null;
  return (
    <section>
      <h2>{say("readings.others")}</h2>
      <p class="small">{say("readings.others_say")}</p>
      <ul class="kept">
        {others.map((one) => (
          <li key={one.key}>
            {one.fact}:{" "}
            <ul class="kept">
              <KeptRow one={one} />
            </ul>
          </li>
        ))}
      </ul>
    </section>
  );
}

export function Readings() {
  const key = chosenKey.value;
  const asked = useWork("readings", key ? { key } : {});
  useEffect(() => {
    void recall();
  }, [jobId.value, serverThere.value]);
  const tests = (asked.answer?.readings ?? []) as Test[];
  const parts = steps(tests);
  const dead = parts.filter((p) => p.dead);
  const live = parts.filter((p) => !p.dead);
  return (
    <div class="readings sheet">
      <h1>{say("readings.title")}</h1>
      <p class="unjudged">{say("readings.unjudged")}</p>
      {faults.value.length > 0 && <p role="alert">{say("readings.held_back")}</p>}
      {faults.value.length === 0 && first.value?.chosen && (
        <p class="small">{say("readings.of", { scheme: schemeWords(first.value.chosen.words) })}</p>
      )}
      <Reader />
      {asked.failed !== null && (
        <p role="alert">{say("readings.failed", { why: faultWords(asked.failed) })}</p>
      )}
      {!asked.answer && !asked.failed && <p role="status">{awaited("readings.waiting")}</p>}
      {asked.answer && tests.length === 0 && (
        <p class="readings-nothing">{say("readings.nothing")}</p>
      )}
      {dead.length > 0 && <h2>{say("readings.dead")}</h2>}
      {dead.map((p) => (
        <StepPart key={p.step} step={p} />
      ))}
      {live.length > 0 && <h2>{say("readings.live")}</h2>}
      {live.map((p) => (
        <StepPart key={p.step} step={p} />
      ))}
      {asked.answer && <Others known={new Set(tests.map(factOf))} />}
    </div>
  );
}
