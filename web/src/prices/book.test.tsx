// @vitest-environment happy-dom
import { render } from "preact";
import { beforeEach, expect, it, vi } from "vitest";

const asked: Array<{ prices?: string }> = [];
let away = true;
vi.mock("../engine", async () => {
  const faults = await import("../engine/faults");
  return {
    ...faults, clearSlow: () => {}, workFirst: () => new Promise(() => {}), fetchRest: async () => {},
    work: async (_: string, body: { prices?: string }) => {
      asked.push(body);
      if (away) throw new faults.RestAway("toft.wasm: 404");
      return { book: "", items: [] };
    },
  };
});
vi.mock("../keep/cabinet", () => ({
  cabinet: async () => ({ update: async () => undefined, read: async () => undefined }),
}));

const { ownPrices, rest } = await import("../bench");
const { draft, dropDraft, keepBook, take } = await import("./book");
const { Import, Prices } = await import(".");
const book = (net: string) => `item,unit,net_gbp,low_gbp,high_gbp,note\ngland,pair,${net},,,my own\n`;
keepBook();

beforeEach(() => {
  dropDraft();
  asked.length = 0;
  away = true;
  rest.value = "away";
  ownPrices.value = book("22.00");
});

it("keeps a price typed without the whole engine, says so, and uses it when that is here", async () => {
  const place = document.body.appendChild(document.createElement("div"));
  render(<Prices />, place);
  const field = await vi.waitFor(() => place.querySelector<HTMLInputElement>(".price-field input")!);
  field.value = "25.00";
  field.dispatchEvent(new FocusEvent("blur"));
  await vi.waitFor(() => expect(place.textContent).toContain("is not used yet"));
  expect(field.value).toBe("25.00");
  expect(ownPrices.value).toBe(book("22.00"));
  away = false;
  rest.value = "here";
  await vi.waitFor(() => expect(ownPrices.value).toBe(book("25.00")));
  expect(draft.value).toBeNull();
  render(null, place);
});

it("takes of several changes the last, and none that was dropped", async () => {
  void take(book("23.00"));
  void take(book("24.00"));
  await vi.waitFor(() => expect(asked.length).toBe(2));
  away = false;
  rest.value = "here";
  await vi.waitFor(() => expect(ownPrices.value).toBe(book("24.00")));
  const dropped = take(book("25.00"));
  dropDraft();
  expect(await dropped).toBe(false);
  expect(ownPrices.value).toBe(book("24.00"));
});

it("reads a book from a file and can read the same again", async () => {
  const place = document.body.appendChild(document.createElement("div"));
  render(<Import />, place);
  const input = place.querySelector("input")!;
  const file = { name: "mine.csv", text: async () => book("30.00") };
  let set = "mine.csv";
  Object.defineProperty(input, "files", { value: [file] });
  Object.defineProperty(input, "value", { get: () => set, set: (to: string) => { set = to; } });
  input.dispatchEvent(new Event("change"));
  await vi.waitFor(() => expect(set).toBe(""));
  await vi.waitFor(() => expect(draft.value?.csv).toBe(book("30.00")));
  render(null, place);
});
