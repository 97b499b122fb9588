import { createHash } from "node:crypto";
import { beforeEach, expect, test, vi } from "vitest";

const sum = (text: string) => createHash("sha256").update(text).digest("hex");
const of = (text: string, etag?: string) => new Response(text, etag ? { headers: { etag } } : {});
const tag = (text: string) => `"${sum(text).slice(0, 32)}"`;
let isOtherBuild: typeof import("./files").isOtherBuild;

beforeEach(async () => {
  vi.resetModules();
  const [toft, early] = [sum("whole").slice(0, 16), sum("small").slice(0, 16)];
  vi.stubGlobal("__DIGESTS__", { toft, "toft-first": early });
  ({ isOtherBuild } = await import("./files"));
});

test("a module is of the page's build where its bytes are, whatever its tag says", async () => {
  expect(await isOtherBuild("toft", of("whole"))).toBe(false);
  expect(await isOtherBuild("toft", of("whole", `"${"0".repeat(32)}"`))).toBe(false);
  expect(await isOtherBuild("toft", of("later"))).toBe(true);
});

test("where tags were seen to be digests the tag tells, also where no digests are reckoned", async () => {
  vi.stubGlobal("crypto", {});
  expect(await isOtherBuild("toft", of("later", tag("later")))).toBe(false);
  expect(await isOtherBuild("toft-first", of("small", tag("small")))).toBe(false);
  expect(await isOtherBuild("toft", of("later", tag("later")))).toBe(true);
  expect(await isOtherBuild("toft", of("whole", tag("whole")))).toBe(false);
  vi.unstubAllGlobals();
});

test("what was looked at can still be read", async () => {
  const answer = of("whole");
  await isOtherBuild("toft", answer);
  expect(await answer.text()).toBe("whole");
});
