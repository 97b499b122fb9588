// How each building should be earthed, argued step by step.

import { useState } from "preact/hooks";
import { awaited } from "../shell/rest";
import { say } from "../words";
import { useWork } from "./fetch";
import type { Choice, Step, Walk } from "./shapes";
import { buildingWords, faultWords, sayOr } from "./speak";

function ChoiceRow({ choice }: { choice: Choice }) {
  return (
    <li>
      <p>
        <strong>{sayOr(`answer.shape ${choice.choice}`, choice.choice)}</strong>:{" "}
        {sayOr(`answer.choice ${choice.standing}`, choice.standing)}
      </p>
      <p class="quiet">{say("answer.risk", { risk: choice.residual_risk })}</p>
      {choice.would_change.length > 0 && (
        <p class="quiet">{say("answer.would_change", { what: choice.would_change.join("; ") })}</p>
      )}
    </li>
  );
}

function StepRow({ step }: { step: Step }) {
  const said = step.consequences.filter((c) => c.bearing !== "neutral");
  const told = said.length > 0 ? said : step.consequences.slice(0, 1);
  const { clause, source, locator, basis } = step.basis;
  return (
    <li>
      <p class="step-asks">{step.asks}</p>
      <p>
        {say("answer.step_found", { found: step.found })}
        {step.known && <span class="quiet"> ({step.known})</span>}
      </p>
      {told.map((c) => (
        <p key={c.choice}>
          {c.bearing === "neutral" ? "" : `${c.choice}, ${c.bearing}: `}
          {c.why}
        </p>
      ))}
      <p class="line-from">
        {[clause, source && `${source}, ${locator}`, basis].filter(Boolean).join(" · ")}
      </p>
    </li>
  );
}

function WalkOf({ walk, alone }: { walk: Walk; alone: boolean }) {
  return (
    <div class="walk">
      {!alone && <h4>{buildingWords(walk.building)}</h4>}
      <p>{walk.conclusion}</p>
      <ul class="choice-list">
        {walk.choices.map((c) => (
          <ChoiceRow key={c.choice} choice={c} />
        ))}
      </ul>
      <details class="steps">
        <summary>{say("answer.steps")}</summary>
        <ol>
          {walk.steps.map((s) => (
            <StepRow key={s.key} step={s} />
          ))}
        </ol>
      </details>
    </div>
  );
}

function Walks() {
  const asked = useWork("why", {});
  if (asked.failed) return <p>{say("answer.unexplained", { why: faultWords(asked.failed) })}</p>;
  const walks = (asked.answer as { walks?: Walk[] } | null)?.walks;
  if (!walks) return <p class="quiet">{awaited("answer.waiting")}</p>;
  return (
    <div aria-busy={asked.waiting}>
      {walks.map((w) => (
        <WalkOf key={w.building} walk={w} alone={walks.length === 1} />
      ))}
    </div>
  );
}

export function Earth() {
  const [open, setOpen] = useState(false);
  return (
    <details class="part" onToggle={(e) => setOpen((e.currentTarget as HTMLDetailsElement).open)}>
      <summary>
        <h3>{say("answer.earth")}</h3>
      </summary>
      {open && <Walks />}
    </details>
  );
}
