import { expect, it } from "vitest";
import demo from "../../../examples/demo.json";
import { exampleTitle } from "./example";

it("the example is known by its title", () => {
  expect(demo.title).toBe(exampleTitle);
});
