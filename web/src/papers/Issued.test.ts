import { expect, it } from "vitest";
import { standing } from "./Issued";

it("tells that the job changed since papers were issued, also before the change is saved", () => {
  expect(standing({ revision: 4 }, { revision: 4, pending: false })).toBe("current");
  expect(standing({ revision: 4 }, { revision: 6, pending: false })).toBe("behind");
  expect(standing({ revision: 4 }, { revision: 4, pending: true })).toBe("behind");
});
