import { expect, test } from "vitest";
import { dragCoefficient } from "./index.js";

test("the standard law is the body's own, a constant is the same at every speed", () => {
  const own = (reynolds: number) => 24 / reynolds;
  expect(dragCoefficient("standard", own)).toBe(own);
  const constant = dragCoefficient({ coefficient: 1.2 }, own);
  expect([1e-9, 1, 1e9].map(constant)).toEqual([1.2, 1.2, 1.2]);
});
