// @vitest-environment happy-dom
import { render } from "preact";
import { afterEach, beforeAll, beforeEach, expect, it, vi } from "vitest";
import caravan from "../../../examples/caravan-no-scheme.answer.json";
import demo from "../../../examples/demo.answer.json";
import demoJob from "../../../examples/demo.json";
import { faults, first, job, jobId } from "../bench";
import type { First, Job } from "../contract";
import { fetchParts } from "../shell/later";
import { Answer } from ".";
import { faultSays } from "./speak";

vi.mock("../engine", () => ({
  work: () => new Promise(() => {}),
  workFirst: () => new Promise(() => {}),
  clearSlow: () => {},
  EngineFaults: class extends Error {},
  Overtaken: class extends Error {},
}));

/** What the engine's quick answer says of a whole one that is stored beside its example. */
function quick(stored: { answer: unknown }): First {
  const whole = stored.answer as First & { schemes: First["chosen"][] };
  const chosen = whole.schemes[0] ?? null;
  return {
    ...whole,
    format: "toft-first/1",
    chosen,
    chosen_key: chosen?.key ?? null,
    proved: true,
    stopped: false,
    schemes: whole.schemes.map((s) => ({ ...s!, earthing: "supply earth" })),
  } as First;
}

beforeAll(fetchParts);

let place: HTMLElement;
beforeEach(() => {
  place = document.body.appendChild(document.createElement("div"));
  jobId.value = "demo";
  job.value = demoJob as unknown as Job;
  first.value = quick(demo);
  faults.value = [];
  render(<Answer />, place);
});
afterEach(() => {
  render(null, place);
  place.remove();
});

const settled = () => new Promise((done) => setTimeout(done, 200));
const text = () => place.textContent!.replace(/\s+/g, " ");

it("says the scheme first, as a sentence, then its price and that it is invented", () => {
  const sentence = text().indexOf("Feed it with 3-core 10 mm²");
  const price = text().indexOf("about £2,276");
  expect(sentence).toBeGreaterThan(0);
  expect(price).toBeGreaterThan(sentence);
  expect(text()).toContain("£1,791 to £3,189");
  expect(text()).toContain("Prices are invented");
});

it("says of an answer that a fault has overtaken that it is not known, and never that it meets", async () => {
  expect(text()).toMatch(/Meets every rule judged here/);
  faults.value = [{ code: "program-broke-off", pointer: "", says: "unreachable", nearest: null, allowed: [] }];
  await settled();
  expect(text()).not.toMatch(/Meets every rule/);
  const past = place.querySelector<HTMLDetailsElement>("details.is-past")!;
  expect(past.open).toBe(false);
  past.open = true;
  past.dispatchEvent(new Event("toggle"));
  await settled();
  expect(text()).not.toMatch(/Meets every rule/);
  expect(place.querySelector(".headline .status")!.className).toContain("is-not-known");
  expect(text()).toContain("Not known: this answers the job as it was before");
  expect(place.querySelectorAll(".bar-row .verdict").length).toBeGreaterThan(0);
  expect(place.querySelectorAll(".bar-row .verdict.is-meets").length).toBe(0);
});

it("says that nothing can be laid only where the search was run to its end", async () => {
  first.value = quick(caravan);
  await settled();
  expect(text()).toContain("Nothing that can be bought and laid meets every rule");
  first.value = { ...quick(caravan), stopped: true };
  await settled();
  expect(text()).not.toContain("Nothing that can be bought and laid");
  expect(text()).toContain("Nothing was found before the search stopped");
  expect(place.querySelector(".headline .status")!.className).toContain("is-not-known");
});

it("shows no figure without its unit", () => {
  const figures = [...place.querySelectorAll(".now")].map((e) => e.textContent!);
  expect(figures.length).toBeGreaterThan(25);
  for (const said of figures) {
    const rest = said
      .replace(/£[\d,]+/g, "")
      .replace(/[−<>]?\s?\d[\d.,]*\s?(%|Ω|mm²|kA|mA|ms|A|V|m|s|times)(?![a-z²])/g, "");
    expect(rest, said).not.toMatch(/\d/);
    expect(said).not.toMatch(/undefined|NaN|null/);
  }
});

it("draws bars longest first", () => {
  const shares = [...place.querySelectorAll(".bar-share")].map((e) =>
    Number(e.textContent!.replace(/[^\d]/g, "")),
  );
  expect(shares.length).toBeGreaterThan(4);
  expect(shares).toEqual([...shares].sort((a, b) => b - a));
});

it("gives every verdict a word beside its shape", () => {
  for (const verdict of place.querySelectorAll(".verdict")) {
    expect(verdict.querySelector("svg")).not.toBeNull();
    expect(verdict.textContent).toMatch(/meets|fails|caution|not known/);
  }
  expect(text()).not.toMatch(/\bOK\b/);
});

it("frames what a scheme hangs on, before the sentence, as not yet known to be safe", async () => {
  const answer = quick(demo);
  first.value = {
    ...answer,
    sound: false,
    chosen: { ...answer.chosen!, conditional_on: ["/runs/0/legs/1/length_m"] },
  };
  await settled();
  const frame = place.querySelector(".conditions")!;
  expect(frame.textContent).toContain("Not yet known to be safe");
  expect(frame.textContent).toContain("leg 2, length");
  expect(frame.compareDocumentPosition(place.querySelector(".sentence")!)).toBe(
    Node.DOCUMENT_POSITION_FOLLOWING,
  );
  expect(place.querySelector(".status.is-meets, .status.is-caution")).toBeNull();
});

it("never calls meeting what has a rule that fails or is not known", async () => {
  const answer = quick(demo);
  const with_ = (verdict: string): First => ({
    ...answer,
    chosen: {
      ...answer.chosen!,
      findings: answer.chosen!.findings.map((f, i) => (i === 6 ? { ...f, verdict } : f)),
    },
  });
  first.value = with_("not known");
  await settled();
  expect(place.querySelector(".conditions")!.textContent).toContain("Voltage lost along the run");
  first.value = with_("fails");
  await settled();
  expect(place.querySelector(".status")!.textContent).toContain("It is not sound");
  expect(place.querySelector(".status.is-meets, .status.is-caution")).toBeNull();
});

it("says that nothing is sound, and what fell", async () => {
  first.value = quick(caravan);
  await settled();
  expect(text()).toContain("Nothing sound");
  expect(text()).toContain("the supply's combined earth may not serve a caravan");
  expect(place.querySelector(".sentence")).toBeNull();
});

it("keeps the old figure beside one that changed", async () => {
  const answer = quick(demo);
  first.value = {
    ...answer,
    chosen: { ...answer.chosen!, price: { ...answer.chosen!.price, total: 2300 } },
  };
  await settled();
  expect(place.querySelector(".price-line")!.textContent).toContain(
    "about £2,300 was about £2,276",
  );
  const others = [...place.querySelectorAll(".figure-list .was")];
  expect(others).toHaveLength(0);
});

it("puts the old answer away when the job cannot be worked out, and says so", async () => {
  faults.value = [
    { code: "x", pointer: "/runs", says: "a run needs a leg", nearest: null, allowed: [] },
  ];
  await settled();
  expect(place.querySelector("[role=alert]")!.textContent).toContain("a run needs a leg");
  expect(text()).not.toContain("Feed it with 3-core");
  const before = place.querySelector<HTMLDetailsElement>("details.is-past")!;
  before.open = true;
  before.dispatchEvent(new Event("toggle"));
  await settled();
  expect(text()).toContain("Feed it with 3-core");
  expect(text()).toContain("Build nothing from it");
});

it("shows no answer at all while nobody knows how the supply is earthed", async () => {
  faults.value = [
    { code: "missing", pointer: "/intake/earthing", says: "earthing is missing", nearest: null, allowed: [] },
  ];
  await settled();
  expect(text()).toContain("no scheme can be called safe");
  expect(text()).not.toContain("Feed it with");
  expect(place.querySelector("details.is-past")).toBeNull();
  expect(place.querySelector(".price, .bar-row")).toBeNull();
});

const lengthless = (): Job => {
  const copy = structuredClone(demoJob) as unknown as {
    buildings: Array<{ circuits?: Array<{ length_m?: unknown }> }>;
  };
  for (const b of copy.buildings) for (const c of b.circuits ?? []) delete c.length_m;
  return copy as unknown as Job;
};

it("never calls idle or met what it cannot judge for want of a circuit's length", async () => {
  const answer = quick(demo);
  const findings = answer.chosen!.findings.map((f) =>
    /^(circuit-|motor-start)/.test(f.rule)
      ? { ...f, value: null, limit: null, use: null, verdict: "meets", says: "no circuit is judged by it" }
      : f,
  );
  first.value = { ...answer, chosen: { ...answer.chosen!, findings } };
  job.value = lengthless();
  await settled();
  const open = place.querySelector(".unjudged")!.textContent!;
  for (const name of ["Sockets", "Panel heater", "Lights", "Potter's wheel"]) {
    expect(open).toContain(name);
  }
  expect(open).toContain("Earth fault loop at the last point");
  expect(open).toContain("Dip while a motor starts");
  const status = place.querySelector(".status")!;
  expect(status.classList.contains("is-not-known")).toBe(true);
  expect(status.textContent).toContain("6 rules are not judged");
  expect(text()).not.toMatch(/Nothing here to judge: [^.]*last point/);
});

it("counts the cautions that it lists", () => {
  const { cautions } = first.value!.chosen!;
  expect(place.querySelector(".status")!.textContent).toContain(
    cautions.length === 1 ? "one caution" : `${cautions.length} cautions`,
  );
});

it("draws no bar of what nobody stated, and of what is not known", async () => {
  const answer = quick(demo);
  const findings = answer.chosen!.findings.map((f) => {
    if (f.rule === "house-earthing") return { ...f, value: 0, use: null, verdict: "caution", says: "may be too small" };
    return f.rule === "intake-capacity" ? { ...f, verdict: "not known", says: "measure it" } : f;
  });
  const copy = structuredClone(demoJob) as unknown as { intake: Record<string, unknown> };
  delete copy.intake["main_bonding_mm2"];
  job.value = copy as unknown as Job;
  first.value = { ...answer, chosen: { ...answer.chosen!, findings } };
  await settled();
  const bars = [...place.querySelectorAll(".bar-name")].map((e) => e.textContent!);
  expect(bars.some((name) => /own earthing and bonding|against the intake/.test(name))).toBe(false);
  expect(text()).not.toContain("none yet");
  expect(place.querySelector(".told-list")!.textContent).toContain("may be too small");
});

it("says faults in words of people, not of the file", () => {
  const fault = (code: string, pointer: string, says: string) =>
    faultSays({ code, pointer, says, nearest: null, allowed: [] });
  expect(fault("no-load", "/buildings/1", "say load_a in amperes, load_w in watts")).toMatch(/in kW or A/);
  expect(fault("no-load", "/buildings/1/circuits/3", "circuit needs load_w")).toContain("Potter's wheel");
  expect(fault("out-of-range", "/runs/0/legs/1/depth_m/value", "50 is outside 0.05 to 3")).toBe(
    "Potter's studio, leg 2, depth: 50 is outside 0.05 to 3.",
  );
});
