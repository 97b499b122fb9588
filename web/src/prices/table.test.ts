import { describe, expect, it } from "vitest";
import {
  bookToBeginWith,
  cut,
  faultsByLine,
  grouped,
  isInvented,
  join,
  rowsOf,
  withPrice,
} from "./table";

const book = `item,unit,net_gbp,low_gbp,high_gbp,note
cable 2x1.5,m,1.30,1.17,1.50,"invented, replace; cable of the run"
"gland, ""large""",pair,22.00,,,my own
VAT percent,%,20.00,,,"invented, replace; tax"
`;

describe("a price book as text", () => {
  it("is cut into cells and put together again without loss", () => {
    expect(join(cut(book))).toBe(book);
    expect(rowsOf(cut(book))[1]).toEqual({
      line: 3,
      item: 'gland, "large"',
      unit: "pair",
      net: "22.00",
      low: "",
      high: "",
      note: "my own",
    });
  });

  it("takes line ends of any system and the mark of spreadsheets", () => {
    const other = `\ufeff${book.replace(/\n/g, "\r\n")}`;
    expect(cut(other).rows).toEqual(cut(book).rows);
    expect(cut(other).lines).toEqual([2, 3, 4]);
  });

  it("counts lines through cells that span several", () => {
    expect(cut('item,note\na,"x\ny"\nb,z\n').lines).toEqual([2, 4]);
  });
});

it("gives an item another price, and no longer calls it invented or its range known", () => {
  const after = rowsOf(cut(withPrice(book, "cable 2x1.5", " 1.45 ")));
  expect(after[0]).toMatchObject({ net: "1.45", low: "", high: "", note: "cable of the run" });
  expect(isInvented(after[0]!)).toBe(false);
  expect(after.slice(1)).toEqual(rowsOf(cut(book)).slice(1));
});

it("begins a book with the engine's own prices, all marked invented", () => {
  const text = bookToBeginWith([
    { item: "rod", unit: "each", net: 14.5, low: 13.05, high: 17.4, use: "one piece of a rod" },
    { item: "VAT percent", unit: "%", net: 20, low: 20, high: 20, use: "tax" },
  ]);
  expect(text).toBe(
    "item,unit,net_gbp,low_gbp,high_gbp,note\n" +
      'rod,each,14.50,13.05,17.40,"invented, replace; one piece of a rod"\n' +
      'VAT percent,%,20.00,,,"invented, replace; tax"\n',
  );
  expect(rowsOf(cut(text)).every(isInvented)).toBe(true);
});

it("puts each fault at its line", () => {
  const found = faultsByLine([
    { says: "my book, line 3: cable 2x2.5: “£1.75” is not a price" },
    { says: "my book, line 3: the unit is m" },
    { says: "there is no row for labour hour" },
  ]);
  expect(found.get(3)).toEqual(["cable 2x2.5: “£1.75” is not a price", "the unit is m"]);
  expect(found.get(0)).toEqual(["there is no row for labour hour"]);
});

it("groups what shares a first word, and leaves the rest together at the end", () => {
  const rows = ["cable 2x4", "cable 3x4", "rod", "cable 2x6", "cable 2x10", "duct"].map((item) => ({
    item,
  }));
  expect(grouped(rows).map(([name, all]) => [name, all.length])).toEqual([
    ["cable", 4],
    ["", 2],
  ]);
});
