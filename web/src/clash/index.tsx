import { useSignal } from "@preact/signals";
import { clash, job } from "../bench";
import { resolve } from "../bench/save";
import type { Clash } from "../contract";
import { fileName, saveFile } from "../jobs/files";
import { placeWords, valueWords, when } from "../shell/format";
import { goTo } from "../shell/route";
import { say } from "../words";
import { decided, undecided, type Choices, type Side } from "./choices";
import "./clash.css";
import "./words";

interface OneProps { one: Clash; chosen: Side | undefined; choose: (side: Side) => void }

function One({ one, chosen, choose }: OneProps) {
  const words = (value: unknown) => valueWords(value) ?? say("clash.not_known");
  return (
    <fieldset class="clash">
      <legend>{one.says.split(":")[0] || placeWords(one.pointer)}</legend>
      <p class="clash-was">{say("clash.was")}: <b>{words(one.was)}</b></p>
      {(["yours", "theirs"] as const).map((side) => (
        <label key={side} class="tick">
          <input type="radio" name={one.pointer} checked={chosen === side}
            onChange={() => choose(side)} />
          <span>{say(`clash.${side}`)}: <b>{words(one[side])}</b></span>
        </label>
      ))}
    </fieldset>
  );
}

export function ClashView() {
  const choices = useSignal<Choices>(new Map());
  const problem = clash.value;
  if (!problem) {
    return (
      <section class="sheet" aria-labelledby="clash-title">
        <h1 id="clash-title">{say("clash.title")}</h1>
        <p>{say("clash.none")} <a href="#/survey">{say("clash.back")}</a></p>
      </section>
    );
  }
  const { clashes, current } = problem;
  const left = undecided(clashes, choices.value);
  const choose = (pointer: string, side: Side) => {
    choices.value = new Map(choices.value).set(pointer, side);
  };
  const everywhere = (side: Side) => {
    choices.value = new Map(clashes.map(({ pointer }) => [pointer, side]));
  };
  const keep = async () => {
    await resolve(decided(problem, choices.value));
    goTo("survey");
  };
  const time = when(current.changed_at);
  return (
    <section class="sheet" aria-labelledby="clash-title">
      <h1 id="clash-title">{say("clash.title")}</h1>
      <p>{say("clash.intro")} {current.changed_by
        ? say("clash.who", { who: current.changed_by, when: time })
        : say("clash.who_unnamed", { when: time })}</p>
      <p class="actions">
        <button type="button" onClick={() => everywhere("yours")}>{say("clash.all_yours")}</button>
        <button type="button" onClick={() => everywhere("theirs")}>{say("clash.all_theirs")}</button>
        <button type="button" class="quiet"
          onClick={() => job.value && saveFile(fileName(job.value), job.value)}>
          {say("clash.save_mine")}
        </button>
      </p>
      {clashes.map((one) => (
        <One key={one.pointer} one={one} chosen={choices.value.get(one.pointer)}
          choose={(side) => choose(one.pointer, side)} />
      ))}
      <p class="actions">
        <button type="button" class="main" disabled={left > 0} onClick={() => void keep()}>
          {say("clash.keep")}
        </button>
        {left > 0 && <span role="status">{say("clash.left", { n: left })}</span>}
      </p>
    </section>
  );
}
