import { beforeEach, describe, expect, it, vi } from "vitest";

const sent: string[] = [];
let reachable = true;
vi.mock("../keep/server", () => {
  class NotThere extends Error {}
  class Refused extends Error {}
  return {
    NotThere, Refused, LONG_MS: 1000,
    call: async (path: string, how?: { method?: string }) => {
      if (!reachable) throw new NotThere();
      if (how?.method === "POST") {
        await new Promise((done) => setTimeout(done, 5));
        sent.push(new URL(path, "http://page").searchParams.get("fact")!);
        return { photo: sent.length };
      }
      return { photos: sent.map((fact, i) => ({ photo: i + 1, fact, note: "" })) };
    },
  };
});
vi.mock("../keep/cabinet", async (original) => {
  const { inMemory } = await original<typeof import("../keep/cabinet")>();
  const one = inMemory();
  return { inMemory, cabinet: async () => one };
});
vi.mock("./shrink", () => ({
  shrunk: async (file: Blob) => file,
  asText: async () => "data:image/jpeg;base64,AAAA",
  asBlob: () => new Blob(["x"]),
}));

const { jobId, revision, serverThere } = await import("../bench");
const { cabinet } = await import("../keep/cabinet");
const { addPhoto, photos, sendPhotos } = await import("./photos");

beforeEach(async () => {
  const things = await cabinet();
  for (const key of await things.keys("")) await things.update(key, () => undefined);
  sent.length = 0;
  reachable = true;
  jobId.value = `job-${Math.random()}`;
  revision.value = 1;
  serverThere.value = false;
  photos.value = [];
});

describe("a photo", () => {
  it("is kept by the device while no server is there", async () => {
    await addPhoto("/intake", new Blob(["x"]));
    expect(photos.value).toMatchObject([{ fact: "/intake", sent: false }]);
    expect(sent).toEqual([]);
  });

  it("is sent once the server is there, once only, and then the device lets go of it", async () => {
    await addPhoto("/intake", new Blob(["x"]));
    await addPhoto("/buildings/1", new Blob(["x"]));
    serverThere.value = true;
    await Promise.all([sendPhotos(), sendPhotos(), sendPhotos()]);
    expect([...sent].sort()).toEqual(["/buildings/1", "/intake"]);
    expect(photos.value.map((p) => p.sent)).toEqual([true, true]);
  });

  it("of one job is never shown at a fact of another", async () => {
    await addPhoto("/intake", new Blob(["x"]));
    serverThere.value = true;
    await sendPhotos();
    expect(photos.value).toMatchObject([{ fact: "/intake", sent: true }]);
    reachable = false;
    jobId.value = "another";
    await sendPhotos();
    expect(photos.value).toEqual([]);
  });

  it("stays where sending fails", async () => {
    await addPhoto("/intake", new Blob(["x"]));
    serverThere.value = true;
    reachable = false;
    await sendPhotos();
    expect(photos.value).toMatchObject([{ fact: "/intake", sent: false }]);
  });
});
