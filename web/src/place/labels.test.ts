import { expect, it } from "vitest";
import { halfSize } from "./hit";
import { partLabels } from "./labels";
import { outline } from "./outline";
import { shedJob } from "./sample";
import { fitted, toPixels } from "./view";
import { boxAround } from "./outline";

const size = { width: 328, height: 296 };

it("no name of metal lies on the name of a building, nor leaves the sheet", () => {
  for (const [x, y] of [[30, 0], [21, 4], [20, 3], [26, 10], [12, 8]] as const) {
    const job = shedJob();
    job.buildings[1]!.name = "Potter's studio";
    job.buildings[1]!.metalwork = [
      { what: "water pipe", through_m: [[x, y], [20, 10]] },
      { what: "oil pipe", through_m: [[x + 1, y], [20, 10]] },
    ];
    const of = outline(job);
    const view = fitted(boxAround(of), size);
    const [bx, by] = toPixels(view, size, [20, 10]);
    const name = by + halfSize("building", view.scale)[1] + 20;
    const labels = partLabels(of, view, size, (part) => `${part.what}, copper`);
    for (const { at, anchor, said } of labels) {
      const wide = said.length * 6.7;
      const left = anchor === "start" ? at[0] : anchor === "end" ? at[0] - wide : at[0] - wide / 2;
      const beside = left + wide < bx - 55 || left > bx + 55;
      expect(beside || Math.abs(at[1] - name) >= 12, `${x},${y}`).toBe(true);
      expect(left >= -1 && left + wide <= size.width + 1, `${x},${y}`).toBe(true);
    }
    const [one, other] = labels;
    expect(Math.abs(one!.at[1] - other!.at[1]) > 10 || Math.abs(one!.at[0] - other!.at[0]) > 90).toBe(true);
  }
});
