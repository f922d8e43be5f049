import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { QuantityError } from "../units/index.js";
import { findRoot } from "./index.js";

interface Hard {
  readonly f: (x: number) => number;
  readonly low: number;
  readonly high: number;
  readonly root: number;
}

/** Functions that defeat a bare Newton or secant step; their roots are known in closed form. */
const hard: Readonly<Record<string, Hard>> = {
  parabola: { f: (x) => x * x - 2, low: 0, high: 2, root: Math.SQRT2 },
  exponential: { f: (x) => Math.exp(x) - 5, low: -10, high: 10, root: Math.log(5) },
  "flat at the root": { f: (x) => x ** 19, low: -0.5, high: 1, root: 0 },
  "upright at the root": { f: (x) => Math.cbrt(x - 0.1), low: -1, high: 3, root: 0.1 },
  jump: { f: (x) => (x < 0.3 ? -1 : 1), low: 0, high: 1, root: 0.3 },
  "near a pole": { f: (x) => Math.tan(x) - 100, low: 0, high: 1.57, root: Math.atan(100) },
  "minute values": { f: (x) => 1e-200 * (x - 0.7), low: 0, high: 1, root: 0.7 },
  "huge values": { f: (x) => Math.sinh(700 * (x - 0.25)), low: 0, high: 1, root: 0.25 },
  falling: { f: (x) => 1 / x - 3, low: 0.01, high: 100, root: 1 / 3 },
  "high end below the low end": { f: (x) => x - 0.2, low: 1, high: 0, root: 0.2 },
};

describe.each(Object.entries(hard))("%s", (_, { f, low, high, root }) => {
  const bound = (tolerance: number) => 3 * Math.ceil(Math.log2(Math.abs(high - low) / tolerance)) + 6;

  test.each([1e-3, 1e-8, 1e-13])("is found to %d within the bound on evaluations", (tolerance) => {
    let calls = 0;
    const found = findRoot(
      (x) => {
        calls++;
        return f(x);
      },
      low,
      high,
      tolerance,
    );
    expect(Math.abs(found.root - root)).toBeLessThanOrEqual(tolerance + 1e-15);
    expect(found.residual).toBe(f(found.root));
    expect(found.evaluations).toBe(calls);
    expect(calls).toBeLessThanOrEqual(bound(tolerance));
  });
});

test("a smooth root takes far fewer evaluations than halving (47 of them)", () => {
  expect(findRoot((x) => x * x - 2, 0, 2, 1e-14).evaluations).toBeLessThan(15);
});

test("any cubic with one sign change is solved within the bound", () => {
  fc.assert(
    fc.property(
      fc.double({ min: -1, max: 1, noNaN: true }),
      fc.double({ min: 0, max: 1e3, noNaN: true }),
      (root, bend) => {
        const found = findRoot((x) => (x - root) * (1 + bend * x * x), -2, 2, 1e-12);
        expect(Math.abs(found.root - root)).toBeLessThanOrEqual(1e-12);
        expect(found.evaluations).toBeLessThanOrEqual(3 * 42 + 6);
      },
    ),
    { seed: 7, numRuns: 500 },
  );
});

test("a root at an end is given as it is", () => {
  expect(findRoot((x) => x, 0, 1, 1e-9)).toEqual({ root: 0, residual: 0, evaluations: 2 });
  expect(findRoot((x) => x - 1, 0, 1, 1e-9)).toEqual({ root: 1, residual: 0, evaluations: 2 });
});

test("a tolerance of 0 ends at the resolution of the numbers", () => {
  expect(Math.abs(findRoot((x) => Math.exp(x) - 5, 0, 10, 0).root / Math.log(5) - 1)).toBeLessThan(1e-15);
  expect(findRoot((x) => (x > 0 ? 1 : -1), -1, 1, 0).root).toBeCloseTo(0, 300);
});

describe("refuses", () => {
  test("a bracket without a change of sign", () => {
    expect(() => findRoot((x) => x * x + 1, -1, 1, 1e-9)).toThrow(
      "function over the bracket must be of opposite signs at its ends, got 2 and 2",
    );
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY])("%d at an end", (value) => {
    expect(() => findRoot((x) => (x === 0 ? value : 1), 0, 1, 1e-9)).toThrow(QuantityError);
    expect(() => findRoot((x) => (x === 1 ? value : -1), 0, 1, 1e-9)).toThrow("high end");
  });

  test("a function that is not a number inside", () => {
    const broken = (x: number) => (x > 0.1 && x < 0.9 ? Number.NaN : x - 0.5);
    expect(() => findRoot(broken, 0, 1, 1e-9)).toThrow("function at 0.5 must be a number, got NaN");
  });
});
