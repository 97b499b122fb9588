// The working of a figure, opened in place.

import { awaited } from "../shell/rest";
import { say } from "../words";
import { figure, percent } from "./figure";
import { useWork } from "./fetch";
import type { Explained } from "./Opens";
import { Sign } from "./Sign";
import { faultWords } from "./speak";
import "./words";
import { ending, figuresPutIn, origin, pieces, type Working as Told } from "./working";

function Formula({ told, index }: { told: Told; index: number }) {
  const known = new Set(told.lines.map((l) => l.symbol));
  return (
    <>
      {pieces(told.lines[index]!.formula!, known).map((piece, i) =>
        "text" in piece ? piece.text : <Sign key={i} of={piece.symbol} />,
      )}
    </>
  );
}

function Line({ told, index }: { told: Told; index: number }) {
  const line = told.lines[index]!;
  const from = origin(line);
  return (
    <li class="line">
      <p class="line-head">
        <Sign of={line.symbol} /> = <strong>{figure(line.value, line.unit, 4)}</strong>{" "}
        <span class="quiet">{line.meaning}</span>
      </p>
      {line.formula && (
        <p class="line-sum">
          = <Formula told={told} index={index} />
        </p>
      )}
      {line.formula && figuresPutIn(told.lines, index) !== line.formula && (
        <p class="line-sum">= {figuresPutIn(told.lines, index)}</p>
      )}
      {from && <p class="line-from">{from}</p>}
    </li>
  );
}

function Lines({ told }: { told: Told }) {
  const last = ending(told.lines);
  return (
    <>
      <ol class="lines">
        {last.map((i) => (
          <Line key={i} told={told} index={i} />
        ))}
      </ol>
      {told.lines.length > last.length && (
        <details class="all-lines">
          <summary>{say("answer.all_lines", { count: told.lines.length })}</summary>
          <ol class="lines">
            {told.lines.map((_, i) => (
              <Line key={i} told={told} index={i} />
            ))}
          </ol>
        </details>
      )}
    </>
  );
}

export function Working({ figure: name, keyOf, run }: Explained) {
  const asked = useWork("explain", {
    figure: name,
    ...(keyOf ? { key: keyOf } : {}),
    ...(run ? { run } : {}),
  });
  if (asked.failed) {
    return <p class="quiet">{say("answer.unexplained", { why: faultWords(asked.failed) })}</p>;
  }
  const told = asked.answer as unknown as Told | null;
  if (!told) return <p class="quiet">{awaited("answer.explaining")}</p>;
  const share = told.value !== null && told.unit === "of the limit";
  return (
    <div class="working" aria-busy={asked.waiting}>
      <p class="working-title">
        {told.title}
        {share && `: ${say("answer.result", { value: percent(told.value!) })}`}
      </p>
      <Lines told={told} />
    </div>
  );
}
