import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { studentQuantile } from "./index.js";

const relative = (value: number, expected: number): number => Math.abs(value / expected - 1);

describe("Student's quantile", () => {
  const share = fc.double({ min: 0.501, max: 1 - 1e-9, noNaN: true });

  // closed forms: a Cauchy distribution for one degree of freedom, an algebraic one for two
  test("is a tangent for one degree of freedom", () => {
    fc.assert(
      fc.property(share, (p) => {
        expect(relative(studentQuantile(p, 1), 1 / Math.tan(Math.PI * (1 - p)))).toBeLessThan(1e-11);
      }),
      { seed: 3, numRuns: 200 },
    );
  });

  test("is (2p − 1)/√(2p(1 − p)) for two", () => {
    fc.assert(
      fc.property(share, (p) => {
        const exact = (2 * p - 1) / Math.sqrt(2 * p * (1 - p));
        expect(relative(studentQuantile(p, 2), exact)).toBeLessThan(1e-11);
      }),
      { seed: 4, numRuns: 200 },
    );
  });

  test("is odd about a half, and falls with the degrees of freedom", () => {
    expect(studentQuantile(0.5, 7)).toBe(0);
    expect(studentQuantile(0.025, 7)).toBeCloseTo(-studentQuantile(0.975, 7), 12);
    const falling = [1, 2, 5, 30, 1000, 1e5].map((n) => studentQuantile(0.975, n));
    expect(falling).toEqual([...falling].sort((a, b) => b - a));
  });

  test.each([
    ["probability", 0, 5],
    ["probability", 1, 5],
    ["degrees of freedom", 0.9, 0],
    ["degrees of freedom", 0.9, Number.NaN],
  ])("names its %s outside the range", (name, probability, freedom) => {
    expect(() => studentQuantile(probability, freedom)).toThrow(name);
  });
});
