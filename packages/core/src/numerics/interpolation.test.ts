import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { monotoneCubic } from "./index.js";

const runs = { seed: 11, numRuns: 200 };
const finite = fc.double({ min: -100, max: 100, noNaN: true });
const gap = fc.double({ min: 0.01, max: 10, noNaN: true });
/** Points with strictly rising x. */
const points = fc.array(fc.tuple(gap, finite), { minLength: 2, maxLength: 9 }).map((pairs) => {
  let last = 0;
  const x = pairs.map(([step]) => {
    last += step;
    return last;
  });
  return { x, y: pairs.map(([, value]) => value) };
});
const along = (x: readonly number[], n: number) => {
  const [low, high] = [x[0] ?? 0, x.at(-1) ?? 0];
  return Array.from({ length: n + 1 }, (_, i) => low + ((high - low) * i) / n);
};

describe("the curve", () => {
  test("goes through its points and stays between neighbours: no overshoot", () => {
    fc.assert(
      fc.property(points, ({ x, y }) => {
        const curve = monotoneCubic(x, y);
        x.forEach((q, i) => {
          expect(Math.abs(curve.at(q) - (y[i] ?? 0))).toBeLessThanOrEqual(1e-10);
        });
        for (let i = 0; i + 1 < x.length; i++) {
          const [a, b] = [y[i] ?? 0, y[i + 1] ?? 0];
          for (const q of along(x.slice(i, i + 2), 20)) {
            expect(curve.at(q)).toBeGreaterThanOrEqual(Math.min(a, b) - 1e-10);
            expect(curve.at(q)).toBeLessThanOrEqual(Math.max(a, b) + 1e-10);
          }
        }
      }),
      runs,
    );
  });

  test("rises where the points rise", () => {
    fc.assert(
      fc.property(points, ({ x, y }) => {
        const rising = [...y].sort((a, b) => a - b);
        const curve = monotoneCubic(x, rising);
        const values = along(x, 200).map(curve.at);
        values.slice(1).forEach((value, i) => {
          expect(value - (values[i] ?? 0)).toBeGreaterThanOrEqual(-1e-10);
        });
      }),
      runs,
    );
  });

  test("is exact for a straight line, its integral too", () => {
    fc.assert(
      fc.property(points, finite, finite, ({ x }, a, b) => {
        const curve = monotoneCubic(
          x,
          x.map((q) => a + b * q),
        );
        for (const q of along(x, 33)) expect(Math.abs(curve.at(q) - (a + b * q))).toBeLessThanOrEqual(1e-9);
        const [low, high] = [x[0] ?? 0, x.at(-1) ?? 0];
        const exact = a * (high - low) + (b * (high * high - low * low)) / 2;
        expect(Math.abs(curve.integral - exact)).toBeLessThanOrEqual(1e-9 * (1 + Math.abs(exact)));
      }),
      runs,
    );
  });

  test("has the integral of its own values (Simpson, exact for each cubic)", () => {
    fc.assert(
      fc.property(points, ({ x, y }) => {
        const curve = monotoneCubic(x, y);
        let sum = 0;
        for (let i = 0; i + 1 < x.length; i++) {
          const [a, b] = [x[i] ?? 0, x[i + 1] ?? 0];
          sum += ((b - a) / 6) * (curve.at(a) + 4 * curve.at((a + b) / 2) + curve.at(b));
        }
        expect(Math.abs(curve.integral - sum)).toBeLessThanOrEqual(1e-9 * (1 + Math.abs(sum)));
      }),
      runs,
    );
  });

  test("turns over with its values", () => {
    fc.assert(
      fc.property(points, ({ x, y }) => {
        const up = monotoneCubic(x, y);
        const down = monotoneCubic(
          x,
          y.map((v) => -v),
        );
        for (const q of along(x, 17)) expect(Math.abs(up.at(q) + down.at(q))).toBeLessThanOrEqual(1e-12);
      }),
      runs,
    );
  });

  test("is constant beyond its ends", () => {
    const { at } = monotoneCubic([1, 2, 4], [3, 5, -1]);
    expect([at(-10), at(1), at(4), at(1e9)]).toEqual([3, 3, -1, -1]);
  });
});

describe("refuses", () => {
  test.each([
    [[0], [1]],
    [[], []],
    [
      [0, 1],
      [1, 2, 3],
    ],
  ])("points %o and %o", (x, y) => {
    expect(() => monotoneCubic(x, y)).toThrow(
      `points must be two or more, as many x as y, got ${x.length} and ${y.length}`,
    );
  });

  test.each([[[0, 0]], [[1, 0]], [[0, Number.NaN]]])("x of %o", (x) => {
    expect(() => monotoneCubic(x, [1, 2])).toThrow("x of the points must be strictly rising");
  });
});
