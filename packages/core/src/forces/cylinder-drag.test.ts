import { expect, test } from "vitest";
import { cylinderDrag, cylinderDragValidity } from "./index.js";

test("the viscous end grows as 6.8 Re^-0.89", () => {
  for (const reynolds of [1e-3, 1e-4]) {
    expect(Math.abs((cylinderDrag(reynolds) * reynolds ** 0.89) / 6.8 - 1)).toBeLessThan(0.03);
  }
});

test("it falls, dips near Re = 2000 and climbs to a plateau", () => {
  const across = [1e-3, 0.1, 10, 100, 1000].map(cylinderDrag);
  expect([...across].sort((a, b) => b - a)).toEqual(across);
  expect(cylinderDrag(2000)).toBeLessThan(cylinderDrag(500));
  expect(cylinderDrag(2000)).toBeLessThan(cylinderDrag(1e4));
  expect(Math.abs(cylinderDrag(2e5) - 1.18)).toBeLessThan(0.01);
});

test("it is positive all over its range", () => {
  const { min, max } = cylinderDragValidity;
  for (let reynolds = min; reynolds <= max; reynolds *= 1.1)
    expect(cylinderDrag(reynolds)).toBeGreaterThan(0.9);
});
