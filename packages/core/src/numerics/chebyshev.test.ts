import fc from "fast-check";
import { expect, test } from "vitest";
import { chebyshevSum, gaussFive, gaussThree } from "./index.js";

const end = fc.double({ min: -3, max: 3, noNaN: true });
const range = fc.tuple(end, end).filter(([a, b]) => b - a > 0.1);
/** Closed forms: ∫ x^k over a range. */
const power = (k: number, a: number, b: number): number => (b ** (k + 1) - a ** (k + 1)) / (k + 1);
const size = (k: number, a: number, b: number): number => Math.max(1, Math.abs(a), Math.abs(b)) ** (k + 1);

test("a Chebyshev sum is a polynomial of degree 8, and its integral that of degree 9", () => {
  fc.assert(
    fc.property(
      range,
      fc.integer({ min: 0, max: 8 }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      ([a, b], k, share) => {
        const sum = chebyshevSum((x) => x ** k, a, b);
        const x = a + share * (b - a);
        expect(Math.abs(sum.valueAt(x) - x ** k) / size(k, a, b)).toBeLessThan(1e-13);
        expect(Math.abs(sum.integralAt(x) - power(k, a, x)) / size(k, a, b)).toBeLessThan(1e-12);
        expect(sum.integralAt(b)).toBeCloseTo(sum.integral, 12);
      },
    ),
    { seed: 1, numRuns: 200 },
  );
});

test("its stated error is at least the true one where the function is smooth", () => {
  for (const width of [0.5, 1, 2, 4]) {
    const sum = chebyshevSum(Math.exp, 0, width);
    expect(Math.abs(sum.integral - Math.expm1(width))).toBeLessThanOrEqual(sum.error + 1e-15);
  }
  expect(chebyshevSum(Math.exp, 0, 4).error).toBeGreaterThan(chebyshevSum(Math.exp, 0, 1).error);
});

test("Gauss with three and five points is exact to the fifth and ninth degree, and not beyond", () => {
  for (let k = 0; k <= 9; k++) {
    const exact = power(k, -0.5, 1.5);
    expect(Math.abs(gaussFive((x) => x ** k, -0.5, 1.5) - exact)).toBeLessThan(1e-12);
    if (k <= 5) expect(Math.abs(gaussThree((x) => x ** k, -0.5, 1.5) - exact)).toBeLessThan(1e-13);
  }
  expect(Math.abs(gaussThree((x) => x ** 6, -0.5, 1.5) - power(6, -0.5, 1.5))).toBeGreaterThan(1e-3);
  expect(Math.abs(gaussFive((x) => x ** 10, -0.5, 1.5) - power(10, -0.5, 1.5))).toBeGreaterThan(1e-5);
});
