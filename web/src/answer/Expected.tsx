// Figures a meter should show, and the circuits behind the board.

import type { Scheme } from "../contract";
import { say } from "../words";
import { beside, figure } from "./figure";
import { Fold } from "./Fold";
import { RunChoice } from "./Bars";
import { run, runAsked, runs } from "./look";
import { numberAt, type BuildingScheme, type Circuit, type RunScheme, type Use } from "./shapes";
import { Sign } from "./Sign";
import { buildingWords } from "./speak";
import { Live } from "./Was";
import { Opens } from "./Opens";
import { read } from "./read";

/** Figures shown, with the unit their name in the answer ends with. */
const shown = [
  ["design_current_a", "A"],
  ["rating_a", "A"],
  ["voltage_drop_percent", "%"],
  ["voltage_drop_total_percent", "%"],
  ["loop_impedance_far_ohm", "Ω"],
  ["loop_impedance_limit_ohm", "Ω"],
  ["loop_impedance_test_limit_ohm", "Ω"],
  ["r1_plus_r2_20c_ohm", "Ω"],
  ["fault_current_near_ka", "kA"],
  ["fault_current_far_ka", "kA"],
  ["earth_fault_current_far_a", "A"],
  ["disconnection_s", "s"],
  ["touch.outbuilding_v", "V"],
  ["touch.house_v", "V"],
  ["length_m", "m"],
] as const;

function isSaidAlready(name: string, figures: unknown): boolean {
  return (
    name === "voltage_drop_total_percent" &&
    numberAt(figures, name) === numberAt(figures, "voltage_drop_percent")
  );
}

export function Expected({ scheme }: { scheme: Scheme }) {
  const figures = (scheme.runs[run.value] as unknown as RunScheme | undefined)?.figures;
  if (!figures) return null;
  return (
    <section class="expected" aria-labelledby="expected-title">
      <h3 id="expected-title">{say("answer.expected")}</h3>
      <RunChoice />
      <p class="quiet hint">{say("answer.expected_note")}</p>
      <ul class="figure-list">
        {shown.map(([name, unit]) => {
          const value = numberAt(figures, name);
          const silent = value === null && name !== "disconnection_s";
          if (silent || isSaidAlready(name, figures)) return null;
          return (
            <li key={`${run.value} ${name}`}>
              <Opens figure={name} keyOf={scheme.key} class="figure-opens" {...runAsked.value}>
                <span>
                  {say(`answer.figure ${name}`)} <Sign of={say(`answer.sign ${name}`)} />
                </span>
                <Live>{value === null ? say("answer.does_not_operate") : figure(value, unit)}</Live>
              </Opens>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

interface CircuitFigure {
  name: string;
  figure: string;
  unit: string;
  value: number;
  limit?: number;
}

const used = (name: string, part: string, unit: string, use: Use | null): CircuitFigure[] =>
  use ? [{ name, figure: part, unit, value: use.value, limit: use.limit }] : [];

const plain = (name: string, part: string, unit: string, value: number | null): CircuitFigure[] =>
  value === null ? [] : [{ name, figure: part, unit, value }];

function figuresOf(circuit: Circuit): CircuitFigure[] {
  return [
    ...plain("load", "load", "A", circuit.design_current_a),
    ...plain("rating", "rating", "A", circuit.rating_a),
    ...used("drop", "drop", "%", circuit.drop_percent),
    ...used("loop", "loop", "Ω", circuit.loop_ohm),
    ...used("dip", "dip", "%", circuit.starting_dip_percent),
    ...plain("r1_plus_r2_20c_ohm", "r1_plus_r2_20c_ohm", "Ω", circuit.r1_plus_r2_20c_ohm),
  ];
}

function against({ value, limit, unit }: CircuitFigure): string {
  if (limit === undefined) return figure(value, unit);
  const [a, b] = beside(value, limit);
  const space = unit === "%" ? "\u202f" : "\u00a0";
  return say("answer.value_most", { value: a + space + unit, limit: b + space + unit });
}

function CircuitRow({ circuit, scheme }: { circuit: Circuit; scheme: Scheme }) {
  const { device, cable } = circuit;
  const line = say("answer.circuit_line", {
    device: `${device.rating_a}\u00a0A ${device.curve ? `type ${device.curve} ` : ""}${device.kind}`,
    cable: `${cable.live_mm2}/${cable.cpc_mm2}\u00a0mm² ${cable.family}`,
    length: figure(cable.length_m, "m"),
  });
  return (
    <li>
      <Fold
        summary={
          <span>
            <strong>
              {circuit.number} {circuit.name}
            </strong>{" "}
            <span class="quiet">
              {line}
              {circuit.rcd &&
                `, ${say("answer.circuit_rcd", {
                  sensitivity: figure(circuit.rcd.sensitivity_ma, "mA"),
                  type: circuit.rcd.type,
                })}`}
            </span>
          </span>
        }
      >
        <ul class="figure-list">
          {figuresOf(circuit).map((f) => (
            <li key={f.name}>
              <Opens
                figure={`circuits.${circuit.number}.${f.figure}`}
                keyOf={scheme.key}
                class="figure-opens"
                {...runAsked.value}
              >
                <span>{say(`answer.circuit ${f.name}` as "answer.circuit load")}</span>
                <Live>{against(f)}</Live>
              </Opens>
            </li>
          ))}
        </ul>
      </Fold>
    </li>
  );
}

/** The building that the looked-at run feeds. */
export function buildingOfRun(): string | undefined {
  return read.value.runs.find((r) => r.id === run.value)?.to;
}

export function Circuits({ scheme }: { scheme: Scheme }) {
  const building = buildingOfRun();
  const circuits = building
    ? ((scheme.buildings[building] as unknown as BuildingScheme | undefined)?.circuits ?? [])
    : [];
  if (circuits.length === 0) return null;
  return (
    <section class="circuits" aria-labelledby="circuits-title">
      <h3 id="circuits-title">
        {say("answer.circuits")}
        {runs.value.length > 1 && `: ${buildingWords(building!)}`}
      </h3>
      <ul class="opened-list">
        {circuits.map((c) => (
          <CircuitRow key={c.number} circuit={c} scheme={scheme} />
        ))}
      </ul>
    </section>
  );
}
