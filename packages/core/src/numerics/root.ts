/** A bracketed root: bisection that takes inverse quadratic steps where they help. Always converges. */

import { QuantityError } from "../units/index.js";

export interface Root {
  readonly root: number;
  /** Function value at the root. */
  readonly residual: number;
  readonly evaluations: number;
}

/** Finds x between `low` and `high` with f(x) = 0 to within `tolerance` in x, by Chandrupatla's method (Adv. Eng. Softw. 28:145-149, 1997).
 *  Throws QuantityError when f does not change sign or is not finite at an end. Never takes more than 3 evaluations per halving of the bracket.
 *  @example findRoot((x) => x * x - 2, 0, 2, 1e-14).root // => 1.41421356237 */
export function findRoot(f: (x: number) => number, low: number, high: number, tolerance: number): Root {
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
  let c = a;
  let fc = fa;
  let fraction = 0.5;
  for (let evaluations = 3; evaluations < 400; evaluations++) {
    const x = b + fraction * (a - b);
    const fx = f(x);
    if (fx > 0 === fb > 0) {
      c = b;
      fc = fb;
    } else {
      c = a;
      fc = fa;
      a = b;
      fa = fb;
    }
    b = x;
    fb = fx;
    if (fx === 0) return { root: x, residual: 0, evaluations };
    if (fa > 0 === fb > 0) {
      [a, c, fa, fc] = [c, a, fc, fa];
    }
    const nearer = Math.abs(fa) < Math.abs(fb) ? a : b;
    const limit = (2 * Number.EPSILON * Math.abs(nearer) + 0.5 * tolerance) / Math.abs(b - a);
    if (limit > 0.5) return { root: nearer, residual: nearer === a ? fa : fb, evaluations };
    fraction = chandrupatlaFraction({ a, b, c, fa, fb, fc }, limit);
  }
  return { root: b, residual: fb, evaluations: 400 };
}

interface Triple {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly fa: number;
  readonly fb: number;
  readonly fc: number;
}

function chandrupatlaFraction({ a, b, c, fa, fb, fc }: Triple, limit: number): number {
  const xi = (a - b) / (c - b);
  const phi = (fa - fb) / (fc - fb);
  if (!(phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi)) return 0.5;
  const t = (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb));
  return Math.min(1 - limit, Math.max(limit, t));
}
