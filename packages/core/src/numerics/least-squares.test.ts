import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { findLeast, leastSquares } from "./index.js";

const value = fc.double({ min: -10, max: 10, noNaN: true });
const points = fc.array(fc.record({ x: value, y: value, w: fc.double({ min: 0.1, max: 10, noNaN: true }) }), {
  minLength: 4,
  maxLength: 20,
});
const wide = points.filter((all) => new Set(all.map((p) => Math.round(p.x))).size > 2);

describe("least squares", () => {
  test("leave residuals that are square to every column, by weight", () => {
    fc.assert(
      fc.property(wide, (all) => {
        const fit = leastSquares(
          all.map((p) => [1, p.x]),
          all.map((p) => p.y),
          all.map((p) => p.w),
        );
        const along = (column: (x: number) => number): number =>
          all.reduce((sum, p, i) => sum + p.w * column(p.x) * (fit.residuals[i] ?? Number.NaN), 0);
        expect(Math.abs(along(() => 1))).toBeLessThan(1e-9);
        expect(Math.abs(along((x) => x))).toBeLessThan(1e-9);
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  test("share their leverage out so that it adds up to the number of coefficients", () => {
    fc.assert(
      fc.property(wide, (all) => {
        const rows = all.map((p) => [1, p.x]);
        const fit = leastSquares(
          rows,
          all.map((p) => p.y),
        );
        expect(Math.abs(rows.reduce((sum, row) => sum + fit.leverage(row), 0) - 2)).toBeLessThan(1e-9);
      }),
      { seed: 2, numRuns: 200 },
    );
  });

  test("take a weight of two for a point that is there twice", () => {
    const twice = leastSquares(
      [
        [1, 0],
        [1, 1],
        [1, 1],
        [1, 3],
      ],
      [0, 2, 2, 1],
    );
    const weighted = leastSquares(
      [
        [1, 0],
        [1, 1],
        [1, 3],
      ],
      [0, 2, 1],
      [1, 2, 1],
    );
    weighted.coefficients.forEach((c, i) => {
      expect(c).toBeCloseTo(twice.coefficients[i] ?? Number.NaN, 12);
    });
    expect(weighted.sumOfSquares).toBeCloseTo(twice.sumOfSquares, 12);
  });

  test("name what they cannot do", () => {
    expect(() => leastSquares([[1, 2]], [1])).toThrow("points of a least-squares fit");
    expect(() => leastSquares([], [])).toThrow("points of a least-squares fit");
    expect(() =>
      leastSquares(
        [
          [1, 2],
          [1, 2],
          [1, 2],
        ],
        [1, 2, 3],
      ),
    ).toThrow("tell the coefficients apart");
    expect(() =>
      leastSquares(
        [
          [1, 0],
          [1, 1],
        ],
        [1, 2],
        [1, 0],
      ),
    ).toThrow("weight of a point");
  });
});

describe("the least value", () => {
  test("is found inside, and at an end", () => {
    expect(findLeast((x) => (x - 0.3) ** 4, -1, 2, 1e-9)).toBeCloseTo(0.3, 3);
    expect(findLeast((x) => Math.abs(x - 0.3), -1, 2, 1e-12)).toBeCloseTo(0.3, 11);
    expect(findLeast((x) => x, -1, 2, 1e-12)).toBeCloseTo(-1, 11);
  });

  test("is not looked for where there is no number", () => {
    expect(() => findLeast(() => Number.NaN, 0, 1, 1e-9)).toThrow("function at 0");
  });
});
