import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { incompleteBeta, logGamma, studentQuantile } from "./index.js";

const relative = (value: number, expected: number): number => Math.abs(value / expected - 1);

describe("ln Γ", () => {
  test("of whole numbers is that of the factorial", () => {
    let factorial = 1;
    for (let n = 2; n < 20; n++) {
      factorial *= n;
      expect(relative(logGamma(n + 1), Math.log(factorial))).toBeLessThan(1e-13);
    }
  });

  test("rises by ln x from x to x + 1", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 1e4, noNaN: true }), (x) => {
        const scale = Math.max(1, Math.abs(logGamma(x + 1)));
        expect(Math.abs(logGamma(x + 1) - logGamma(x) - Math.log(x)) / scale).toBeLessThan(1e-13);
      }),
      { seed: 1, numRuns: 200 },
    );
  });
});

describe("the incomplete beta function", () => {
  // closed form for b = 1
  test.each([0.1, 0.5, 0.9])("is x^a for b = 1 at x = %d", (x) => {
    for (const a of [0.3, 1, 7, 40]) expect(relative(incompleteBeta(x, a, 1), x ** a)).toBeLessThan(1e-12);
  });

  test("is mirrored by exchanging a and b", () => {
    const size = fc.double({ min: 0.1, max: 500, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.99, noNaN: true }), size, size, (x, a, b) => {
        expect(Math.abs(incompleteBeta(x, a, b) + incompleteBeta(1 - x, b, a) - 1)).toBeLessThan(1e-12);
      }),
      { seed: 2, numRuns: 200 },
    );
  });

  test("is 0 and 1 at its ends, and names what it does not take", () => {
    expect(incompleteBeta(0, 2, 3)).toBe(0);
    expect(incompleteBeta(1, 2, 3)).toBe(1);
    expect(() => incompleteBeta(-0.1, 2, 3)).toThrow("x of the incomplete beta function");
    expect(() => incompleteBeta(0.5, 0, 3)).toThrow("a of the incomplete beta function");
  });
});

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
