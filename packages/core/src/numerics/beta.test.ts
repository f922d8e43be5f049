import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { incompleteBeta, logGamma, oddsBelow, oddsQuantile } from "./index.js";

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
    expect(() => incompleteBeta(0.5, 0, 3)).toThrow("a of the beta distribution");
  });
});

const size = fc.double({ min: 0.1, max: 3000, noNaN: true });

describe("odds of a beta variable", () => {
  // closed form for a = 1: the share above x is (1 − x)^b, the odds above o are (1 + o)^-b
  test("are above o with (1 + o)^-b for a = 1, far into the tail", () => {
    fc.assert(
      fc.property(size, fc.double({ min: 0.01, max: 100, noNaN: true }), (b, odds) => {
        const exact = -b * Math.log1p(odds);
        fc.pre(exact > -600);
        const above = oddsBelow({ odds: 1 / odds, a: b, b: 1 });
        expect(Math.abs(Math.log(above) - exact)).toBeLessThan(1e-13 * Math.max(1, -exact));
      }),
      { seed: 3, numRuns: 300 },
    );
  });

  test("have a quantile that undoes them, in either tail", () => {
    fc.assert(
      fc.property(size, size, fc.double({ min: -12, max: 12, noNaN: true }), (a, b, logit) => {
        const probability = 1 / (1 + Math.exp(-logit));
        const odds = oddsQuantile({ probability, a, b });
        const back = oddsBelow({ odds, a, b });
        expect(Math.abs(back - probability)).toBeLessThan(2e-13);
        if (probability < 0.5) expect(relative(back, probability)).toBeLessThan(1e-11);
      }),
      { seed: 4, numRuns: 300 },
    );
  });

  test("have a middle of 1 where a and b are equal, and turn over with them", () => {
    expect(relative(oddsQuantile({ probability: 0.5, a: 7, b: 7 }), 1)).toBeLessThan(1e-14);
    const low = oddsQuantile({ probability: 0.05, a: 3, b: 0.5 });
    const high = oddsQuantile({ probability: 0.95, a: 0.5, b: 3 });
    expect(relative(low * high, 1)).toBeLessThan(1e-12);
  });

  test.each([
    ["odds", () => oddsBelow({ odds: -1, a: 1, b: 1 })],
    ["probability", () => oddsQuantile({ probability: 0, a: 1, b: 1 })],
    ["a of the beta distribution", () => oddsQuantile({ probability: 0.5, a: 0, b: 1 })],
  ])("name their %s outside the range", (name, call) => expect(call).toThrow(name));
});
