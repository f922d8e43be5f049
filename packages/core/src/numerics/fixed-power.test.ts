import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { raise } from "../elementary/index.js";
import { fixedPower } from "./index.js";

const stated = [
  ...[-0.89, 0.681, -0.319, 0.5, 2.3, -1, 1, 3.5, 4].map((p) => [p, 3e-13] as const),
  [-2, 2e-12],
  [-4, 2e-11],
] as const;

describe.each(stated)("x to the power of %d, to %d", (p, error) => {
  const power = fixedPower(p);

  test("is that of the language", () => {
    fc.assert(
      fc.property(fc.double({ min: -12, max: 12, noNaN: true }), (exponent) => {
        const x = 10 ** exponent;
        expect(Math.abs(power(x) / x ** p - 1)).toBeLessThan(error);
      }),
      { seed: 12, numRuns: 2000 },
    );
  });

  test("at the ends of its tables too, where the series is longest", () => {
    for (let i = 0; i <= 64; i++) {
      for (const x of [1 + i / 64, (1 + i / 64) * (1 - Number.EPSILON)]) {
        expect(Math.abs(power(x) / x ** p - 1)).toBeLessThan(error);
      }
    }
  });

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY, 1e-310, 1e305])(
    "is `raise` at %d, and that of the language to 1e-12",
    (x) => {
      expect(power(x)).toBe(raise(x, p));
      if (Number.isFinite(x ** p) && x ** p !== 0)
        expect(Math.abs(power(x) / x ** p - 1)).toBeLessThan(1e-12);
      else expect(power(x)).toBe(x ** p);
    },
  );
});
