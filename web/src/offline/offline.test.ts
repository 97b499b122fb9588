import { expect, it, vi } from "vitest";

vi.mock("../engine", () => ({
  clearSlow: () => {}, workFirst: () => new Promise(() => {}), work: async () => own,
}));
const own = { program: "toft", version: "1.0", edition: "2018+A2", data_version: "7" };

const { about } = await import("../bench");
const { keepPage, outdated, sameEdition } = await import(".");

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
