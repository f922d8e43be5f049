/** Monotone cubic interpolation: no overshoot between the points. */

import { QuantityError } from "../units/index.js";

export interface Interpolant {
  /** Value at x; constant beyond the ends. */
  readonly at: (x: number) => number;
  /** Integral from the first point to the last. */
  readonly integral: number;
}

/** Piecewise cubic Hermite interpolation with Fritsch-Carlson slopes (weighted harmonic means inside, three-point at the ends). [FritschCarlson1980]
 *  Throws QuantityError unless there are at least two points with strictly rising x.
 *  @example monotoneCubic([0, 1, 2], [0, 1, 1]).at(1.5) // => 1 */
export function monotoneCubic(x: readonly number[], y: readonly number[]): Interpolant {
  const n = x.length;
  if (n < 2 || y.length !== n)
    throw new QuantityError("points", "two or more, as many x as y", `${n} and ${y.length}`);
  const h: number[] = [];
  const slope: number[] = [];
  for (let i = 0; i + 1 < n; i++) {
    const width = at(x, i + 1) - at(x, i);
    if (!(width > 0))
      throw new QuantityError("x of the points", "strictly rising", `${at(x, i)} then ${at(x, i + 1)}`);
    h.push(width);
    slope.push((at(y, i + 1) - at(y, i)) / width);
  }
  const d = nodeSlopes(h, slope);
  let integral = 0;
  for (let i = 0; i + 1 < n; i++) {
    const w = at(h, i);
    integral += (w * (at(y, i) + at(y, i + 1))) / 2 + (w * w * (at(d, i) - at(d, i + 1))) / 12;
  }
  return {
    integral,
    at: (q) => {
      if (q <= at(x, 0)) return at(y, 0);
      if (q >= at(x, n - 1)) return at(y, n - 1);
      let i = 0;
      while (q > at(x, i + 1)) i++;
      const w = at(h, i);
      const t = (q - at(x, i)) / w;
      const s = 1 - t;
      return (
        s * s * ((1 + 2 * t) * at(y, i) + t * w * at(d, i)) +
        t * t * ((1 + 2 * s) * at(y, i + 1) - s * w * at(d, i + 1))
      );
    },
  };
}

function at(values: readonly number[], i: number): number {
  return values[i] ?? Number.NaN;
}

function nodeSlopes(h: readonly number[], slope: readonly number[]): number[] {
  const n = h.length;
  if (n === 1) return [at(slope, 0), at(slope, 0)];
  const d = [endSlope(at(h, 0), at(h, 1), at(slope, 0), at(slope, 1))];
  for (let i = 1; i < n; i++) {
    const [h0, h1, s0, s1] = [at(h, i - 1), at(h, i), at(slope, i - 1), at(slope, i)];
    const w0 = 2 * h1 + h0;
    const w1 = h1 + 2 * h0;
    d.push(s0 * s1 > 0 ? (w0 + w1) / (w0 / s0 + w1 / s1) : 0);
  }
  d.push(endSlope(at(h, n - 1), at(h, n - 2), at(slope, n - 1), at(slope, n - 2)));
  return d;
}

function endSlope(h0: number, h1: number, s0: number, s1: number): number {
  const d = ((2 * h0 + h1) * s0 - h0 * s1) / (h0 + h1);
  if (d * s0 <= 0) return 0;
  return s0 * s1 < 0 && Math.abs(d) > 3 * Math.abs(s0) ? 3 * s0 : d;
}
