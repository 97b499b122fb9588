// What will be measured when it is built, and a place to write down what was.

import { useEffect, useId, useState } from "preact/hooks";
import { figure, unbroken } from "../answer/figure";
import { useWork } from "../answer/fetch";
import { faultWords, runWords, schemeWords } from "../answer/speak";
import { author, chosenKey, faults, first, job, jobId, serverThere } from "../bench";
import { momentWords } from "../papers/day";
import { say } from "../words";
import { factOf, steps, valueOf, type StepOf, type Test } from "./expected";
import { keep, readings, recall, type Kept } from "./keep";
import "./readings.css";

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

function KeptRow({ one }: { one: Kept }) {
  return (
    <li>
      <strong>{figure(one.value, one.unit, 6)}</strong>{" "}
      <span class="small">
        {[one.instrument, one.note, one.by, momentWords(one.at)].filter(Boolean).join(", ")}
        {one.held && ` – ${say("readings.held")}`}
      </span>
    </li>
  );
}

/** The instrument written last for a kind of test stands ready for the next. */
const lastInstrument = new Map<string, string>();

function Write({ test, done }: { test: Test; done: () => void }) {
  const [value, setValue] = useState("");
  const [instrument, setInstrument] = useState(lastInstrument.get(test.instrument) ?? "");
  const [note, setNote] = useState("");
  const [wrong, setWrong] = useState("");
  const id = useId();
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    const number = valueOf(value);
    const nameless = !author.peek();
    setWrong(
      number === null ? say("readings.no_number") : nameless ? say("readings.name_first") : "",
    );
    if (number === null || nameless) return;
    lastInstrument.set(test.instrument, instrument.trim());
    const offScale = /^\s*[>≥]/.test(value) ? say("readings.off_scale") : "";
    await keep(
      {
        fact: factOf(test),
        value: number,
        unit: test.unit,
        instrument: instrument.trim(),
        note: [offScale, note.trim()].filter(Boolean).join("; "),
      },
      author.peek(),
    );
    done();
  };
  return (
    <form class="write" onSubmit={(e) => void submit(e)}>
      <label class="write-value">
        <span>{say("readings.value", { unit: test.unit })}</span>
        <input
          type="text"
          inputMode="decimal"
          autocomplete="off"
          value={value}
          autoFocus
          aria-invalid={wrong !== ""}
          aria-describedby={wrong ? `${id}-wrong` : undefined}
          onInput={(e) => setValue(e.currentTarget.value)}
        />
      </label>
      <label>
        <span>{say("readings.instrument")}</span>
        <input
          type="text"
          value={instrument}
          placeholder={test.instrument}
          onInput={(e) => setInstrument(e.currentTarget.value)}
        />
      </label>
      <label>
        <span>{say("readings.note")}</span>
        <input type="text" value={note} onInput={(e) => setNote(e.currentTarget.value)} />
      </label>
      <div class="actions">
        <button type="submit" class="main">
          {say("readings.keep")}
        </button>
        <button type="button" class="quiet" onClick={done}>
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
  const [writing, setWriting] = useState(false);
  const kept = readings.value.filter((r) => r.fact === factOf(test));
  return (
    <li class="test">
      <div class="test-head">
        <p>
          <strong>{whereWords(test.where)}</strong>
          <span class="expects">{unbroken(test.says)}</span>
        </p>
        {test.unit && !writing && (
          <button
            type="button"
            class="quiet"
            onClick={() => setWriting(true)}
            aria-label={say("readings.write_of", { where: test.where })}
          >
            {say("readings.write")}
          </button>
        )}
      </div>
      {kept.length > 0 && (
        <ul class="kept">
          {kept.map((one) => (
            <KeptRow key={one.at} one={one} />
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
          <li key={one.at + one.fact}>
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
      <label class="tester">
        <span>{say("readings.author")}</span>
        <input
          type="text"
          autocomplete="name"
          value={author.value}
          onInput={(e) => {
            author.value = e.currentTarget.value;
          }}
          onBlur={() => {
            author.value = author.peek().trim();
          }}
        />
      </label>
      {asked.failed !== null && (
        <p role="alert">{say("readings.failed", { why: faultWords(asked.failed) })}</p>
      )}
      {!asked.answer && !asked.failed && <p role="status">{say("readings.waiting")}</p>}
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
