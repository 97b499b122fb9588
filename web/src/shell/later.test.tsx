// @vitest-environment happy-dom
import { render } from "preact";
import { expect, it, vi } from "vitest";

let renewed = 0;
vi.mock("../offline", () => ({ renew: async () => { renewed += 1; } }));
const { later } = await import("./later");

it("offers to fetch the page anew once a part has failed to come a second time", async () => {
  const place = document.body.appendChild(document.createElement("div"));
  const Part = later(() => Promise.reject(new Error("404")));
  const buttons = () => [...place.querySelectorAll("button")].map((button) => button.textContent);
  render(<Part />, place);
  await vi.waitFor(() => expect(buttons()).toEqual(["Try now"]));
  place.querySelector("button")!.click();
  await vi.waitFor(() => expect(buttons()).toEqual(["Try now", "Fetch the page anew"]));
  place.querySelectorAll("button")[1]!.click();
  expect(renewed).toBe(1);
});
