import { describe, expect, it } from "vitest";
import { layoutPlot, nearest, overlap, ranks, ticks, touched, type PlotPoint } from "./plot";

const point = (rank: number, price: number, headroom: number): PlotPoint => ({
  key: `k${rank}`,
  rank,
  price,
  headroom,
});

/** A row of made-up schemes that stand as close as those of a real job, and closer. */
function crowd(count: number, seed: number): PlotPoint[] {
  let state = seed;
  const next = () => (state = (state * 48271) % 2147483647) / 2147483647;
  return Array.from({ length: count }, (_, i) =>
    point(i + 1, 1500 + Math.round(next() * next() * 3000), Math.round(next() * 80) / 100),
  );
}

const around = ({ x, y }: { x: number; y: number }) => ({
  x: x - 7,
  y: y - 7,
  width: 14,
  height: 14,
});

describe("labels of the plot", () => {
  it("never lie over one another, over another's mark, or out of the frame", () => {
    const bad: string[] = [];
    let placed = 0;
    for (const width of [328, 480, 720]) {
      for (let seed = 1; seed <= 40; ++seed) {
        const wanted = { width, height: 280, recommended: "k1", looked: "k5" };
        const { labels, marks, frame } = layoutPlot(crowd(24, seed * 7919), wanted);
        placed += labels.length;
        labels.forEach((label, i) => {
          const others = [
            ...labels.slice(i + 1).map((other) => other.box),
            ...marks.filter((mark) => mark !== label.mark).map((mark) => around(mark)),
          ];
          if (others.some((box) => overlap(label.box, box))) bad.push(`${seed}: ${label.text}`);
          const end = label.box.x + label.box.width;
          if (label.box.x < frame.x || end > frame.x + frame.width) bad.push(`${seed}: out`);
        });
      }
    }
    expect(bad).toEqual([]);
    expect(placed).toBeGreaterThan(120 * 8);
  });

  it("name the looked-at and the recommended before any other, however close it is", () => {
    for (let seed = 1; seed <= 40; ++seed) {
      const { labels, marks } = layoutPlot(crowd(24, seed * 104729), {
        width: 328,
        height: 280,
        recommended: "k1",
        looked: "k5",
      });
      const markOf = (key: string) => marks.find((m) => m.points.some((p) => p.key === key));
      expect(labels[0]!.mark).toBe(markOf("k5"));
      expect(labels.some((l) => l.mark === markOf("k1"))).toBe(true);
    }
  });

  it("gather schemes that stand on one spot", () => {
    expect(
      ranks([point(4, 1, 1), point(1, 1, 1), point(2, 1, 1), point(3, 1, 1), point(9, 1, 1)]),
    ).toBe("1–4, 9");
    expect(ranks([point(1, 1, 1), point(2, 1, 1)])).toBe("1, 2");
  });
});

it("puts every scheme on the plot, inside the frame", () => {
  const points = crowd(24, 99);
  const { marks, frame } = layoutPlot(points, {
    width: 328,
    height: 280,
    recommended: "k1",
    looked: "k1",
  });
  expect(marks.flatMap((m) => m.points)).toHaveLength(24);
  for (const mark of marks) {
    expect(mark.x).toBeGreaterThan(frame.x);
    expect(mark.x).toBeLessThan(frame.x + frame.width);
    expect(mark.y).toBeGreaterThan(frame.y);
    expect(mark.y).toBeLessThan(frame.y + frame.height);
  }
});

it("serves one scheme alone, and one with no headroom", () => {
  const { marks, labels } = layoutPlot([point(1, 2848.21, 0)], {
    width: 328,
    height: 280,
    recommended: "k1",
    looked: "k1",
  });
  expect(Number.isFinite(marks[0]!.x)).toBe(true);
  expect(labels).toHaveLength(1);
});

it("steps the axes in round numbers", () => {
  expect(ticks(1490, 4300, 4)).toEqual([2000, 3000, 4000]);
  expect(ticks(0, 0.62, 4)).toEqual([0, 0.2, 0.4, 0.6]);
});

it("looks at what was touched, and at the next of several when touched again", () => {
  const marks = [{ points: [point(1, 1, 1), point(2, 1, 1)], x: 50, y: 50 }];
  expect(nearest(marks, 60, 60)).toBe(marks[0]);
  expect(nearest(marks, 150, 60)).toBeUndefined();
  expect(touched(marks[0]!, "k1").key).toBe("k2");
  expect(touched(marks[0]!, "k2").key).toBe("k1");
  expect(touched(marks[0]!, "k7").key).toBe("k1");
});
