import { expect, it, vi } from "vitest";

vi.mock("../engine", () => ({
  clearSlow: () => {}, workFirst: () => new Promise(() => {}), work: async () => own,
}));
const own = { program: "toft", version: "1.0", edition: "2018+A2", data_version: "7" };

const { about } = await import("../bench");
const { otherBuild } = await import("../engine/rest");
const { followBuild, keepPage, outdated, sameEdition } = await import(".");

it("is of the program's edition only where version, edition and data are the program's", () => {
  expect(sameEdition(own, { ...own })).toBe(true);
  for (const key of ["version", "edition", "data_version"]) {
    expect(sameEdition(own, { ...own, [key]: "another" })).toBe(false);
  }
});

it("tells when a program of another edition is reached", async () => {
  await keepPage();
  about.value = { ...own, by: "", lan: false, paired: true };
  await new Promise((done) => setTimeout(done, 5));
  expect(outdated.value).toBe(false);
  about.value = { ...own, data_version: "8", by: "", lan: false, paired: true };
  await vi.waitFor(() => expect(outdated.value).toBe(true));
});

it("tells when the browser takes up another build, but not when it keeps its first", () => {
  outdated.value = false;
  const kept = Object.assign(new EventTarget(), { controller: null as object | null });
  followBuild(kept as unknown as ServiceWorkerContainer);
  const takesUp = (build: object) => {
    kept.controller = build;
    kept.dispatchEvent(new Event("controllerchange"));
  };
  takesUp({ build: 1 });
  expect(outdated.value).toBe(false);
  takesUp({ build: 2 });
  expect(outdated.value).toBe(true);
});

it("tells when the whole module that came is of another build", () => {
  outdated.value = false;
  otherBuild.value = true;
  expect(outdated.value).toBe(true);
});
