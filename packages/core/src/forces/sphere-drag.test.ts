import { expect, test } from "vitest";
import { sphereDrag, sphereDragValidity } from "./index.js";

test("a creeping sphere obeys Stokes: Cd Re tends to 24", () => {
  expect(Math.abs((sphereDrag(1e-6) * 1e-6) / 24 - 1)).toBeLessThan(1e-4);
  expect(sphereDrag(0.1) * 0.1).toBeGreaterThan(24);
});

test("a quick sphere has a drag near 0.4 to 0.5: Newton's plateau", () => {
  for (const reynolds of [2e3, 1e4, sphereDragValidity.max]) {
    expect(sphereDrag(reynolds)).toBeGreaterThan(0.38);
    expect(sphereDrag(reynolds)).toBeLessThan(0.5);
  }
});

test("the force grows with speed though the coefficient falls: Cd Re² rises", () => {
  let last = 0;
  for (let reynolds = 1e-3; reynolds < 2e5; reynolds *= 1.2) {
    const force = sphereDrag(reynolds) * reynolds ** 2;
    expect(force).toBeGreaterThan(last);
    last = force;
  }
});
