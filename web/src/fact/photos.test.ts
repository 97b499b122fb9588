import { beforeEach, describe, expect, it, vi } from "vitest";

const sent: string[] = [];
let reachable = true;
vi.mock("../keep/server", () => {
  class NotThere extends Error {}
  return {
    NotThere,
    call: async (path: string, how?: { method?: string }) => {
      if (!reachable) throw new NotThere();
      if (how?.method === "POST") {
        await new Promise((done) => setTimeout(done, 5));
        sent.push(decodeURIComponent(path.split("fact=")[1]!));
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
const { addPhoto, photos, sendPhotos } = await import("./photos");

beforeEach(() => {
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

  it("stays where sending fails", async () => {
    await addPhoto("/intake", new Blob(["x"]));
    serverThere.value = true;
    reachable = false;
    await sendPhotos();
    expect(photos.value).toMatchObject([{ fact: "/intake", sent: false }]);
  });
});
