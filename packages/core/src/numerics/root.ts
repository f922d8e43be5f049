/** A bracketed root: bisection that takes inverse quadratic steps where they help. Always converges. */

import { QuantityError } from "../units/index.js";

export interface Root {
  readonly root: number;
  /** Function value at the root. */
  readonly residual: number;
  readonly evaluations: number;
}

/** Finds x between `low` and `high` with f(x) = 0 to within `tolerance` in x, by Chandrupatla's method (Adv. Eng. Softw. 28:145-149, 1997).
 *  Two evaluations that together fail to halve the bracket are followed by a bisection: at most 3 evaluations per halving.
 *  Throws QuantityError when f does not change sign, is not finite at an end, or is not a number inside.
 *  @example findRoot((x) => x * x - 2, 0, 2, 1e-14).root // => 1.41421356237 */
export function findRoot(f: (x: number) => number, low: number, high: number, tolerance: number): Root {
  // b is the newest point, a the other end of the bracket, c the point that b or a replaced
  let a = low;
  let b = high;
  let fa = f(a);
  let fb = f(b);
  if (!Number.isFinite(fa)) throw new QuantityError("function at the low end of the bracket", "finite", fa);
  if (!Number.isFinite(fb)) throw new QuantityError("function at the high end of the bracket", "finite", fb);
  if (fa === 0) return { root: a, residual: 0, evaluations: 2 };
  if (fb === 0) return { root: b, residual: 0, evaluations: 2 };
  if (fa > 0 === fb > 0)
    throw new QuantityError("function over the bracket", "of opposite signs at its ends", `${fa} and ${fb}`);
  let fraction = 0.5;
  let width = Math.abs(b - a);
  let tries = 0;
  for (let evaluations = 3; ; evaluations++) {
    const x = b + fraction * (a - b);
    const fx = f(x);
    if (Number.isNaN(fx)) throw new QuantityError(`function at ${x}`, "a number", fx);
    if (fx === 0) return { root: x, residual: 0, evaluations };
    const stuck = x === a || x === b;
    let c = a;
    let fc = fa;
    if (fx > 0 === fb > 0) {
      c = b;
      fc = fb;
    } else {
      a = b;
      fa = fb;
    }
    b = x;
    fb = fx;
    const nearer = Math.abs(fa) < Math.abs(fb) ? a : b;
    const limit = (2 * Number.EPSILON * Math.abs(nearer) + 0.5 * tolerance) / Math.abs(b - a);
    if (limit > 0.5 || stuck) return { root: nearer, residual: nearer === a ? fa : fb, evaluations };
    tries++;
    if (Math.abs(b - a) <= 0.5 * width) {
      width = Math.abs(b - a);
      tries = 0;
    }
    fraction = tries >= 2 ? 0.5 : chandrupatlaFraction({ a, b, c, fa, fb, fc }, limit);
  }
}

interface Triple {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly fa: number;
  readonly fb: number;
  readonly fc: number;
}

/** Where to look next, as a fraction of the way from b to a: inverse quadratic interpolation where it is monotone, else the middle. */
function chandrupatlaFraction({ a, b, c, fa, fb, fc }: Triple, limit: number): number {
  const xi = (b - a) / (c - a);
  const phi = (fb - fa) / (fc - fa);
  if (!(phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi)) return 0.5;
  const t = (fb / (fa - fb)) * (fc / (fa - fc)) + ((c - b) / (a - b)) * (fb / (fc - fb)) * (fa / (fc - fa));
  return Math.min(1 - limit, Math.max(limit, t));
}
