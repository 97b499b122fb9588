import { beforeEach, expect, it, vi } from "vitest";

const issued: unknown[] = [];
let refuse = 0;
vi.mock("./office", async () => {
  const { Refused } = await import("../keep/server");
  return {
    issues: async () => [],
    issue: async (id: string, wish: unknown) => {
      if (refuse) throw new Refused(refuse, { type: "", title: "another revision", status: refuse, detail: "" });
      issued.push([id, wish]);
    },
  };
});

const { author, faults, jobId, revision, sync } = await import("../bench");
const { issueShown, NotAsShown, standing } = await import("./Issued");

beforeEach(() => {
  issued.length = 0;
  refuse = 0;
  author.value = "A";
  jobId.value = "a";
  revision.value = 4;
  faults.value = [];
  sync.value = "saved";
});

it("tells that the job changed since papers were issued, also before the change is saved", () => {
  expect(standing({ revision: 4 }, { revision: 4, pending: false })).toBe("current");
  expect(standing({ revision: 4 }, { revision: 6, pending: false })).toBe("behind");
  expect(standing({ revision: 4 }, { revision: 4, pending: true })).toBe("behind");
});

it("issues the revision on screen and names it", async () => {
  await issueShown("2026-11-29");
  expect(issued).toEqual([["a", { date: "2026-11-29", revision: 4 }]]);
});

it("issues nothing that the server does not have as it is on screen", async () => {
  for (const word of ["clash", "offline", "saving", "unkept"] as const) {
    sync.value = word;
    await expect(issueShown("2026-11-29")).rejects.toBeInstanceOf(NotAsShown);
  }
  sync.value = "saved";
  faults.value = [{ code: "range", pointer: "", says: "", nearest: null, allowed: [] }];
  await expect(issueShown("2026-11-29")).rejects.toBeInstanceOf(NotAsShown);
  expect(issued).toEqual([]);
});

it("says so when the server has another revision by then", async () => {
  refuse = 409;
  await expect(issueShown("2026-11-29")).rejects.toThrow(/changed elsewhere/);
});
