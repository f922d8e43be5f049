/** One root of a function of depth, between two depths of opposite sign that may be the dry bed and infinity. */

import { exp, ln } from "../elementary/index.js";
import { findRoot } from "../numerics/index.js";
import { QuantityError } from "../units/index.js";

export interface Bracket {
  readonly a: number;
  readonly b: number;
  readonly fa: number;
  readonly fb: number;
}

/** Moves an end at infinity, or at the dry bed, in until the sign there can be seen; then finds the root. */
export function rootIn(f: (depth: number) => number, { a, b, fa, fb }: Bracket): number {
  if (b === Number.POSITIVE_INFINITY) {
    const [from, value] = steppedFrom(f, a > 0 ? 2 * a : 1, 16, fb);
    if (a > 0) return bracketed(f, { a, b: from, fa, fb: value });
    return rootIn(f, { a, b: from, fa, fb: value });
  }
  if (a > 0) return bracketed(f, { a, b, fa, fb });
  const [near, value] = steppedFrom(f, b / 16, 1 / 16, fa);
  return bracketed(f, { a: near, b, fa: value, fb });
}

/** Steps from y by a factor until f has the wanted sign. */
function steppedFrom(
  f: (depth: number) => number,
  start: number,
  factor: number,
  wanted: number,
): readonly [depth: number, value: number] {
  let y = start;
  let value = f(y);
  while (value < 0 !== wanted < 0) {
    y *= factor;
    value = f(y);
    // further out areas overflow, and a sign would be of their overflow
    if (!(y > 1e-100 && y < 1e100)) {
      throw new QuantityError(
        "depth that balances",
        "between 1e-100 and 1e100 m: the given values leave no such depth",
        y,
      );
    }
  }
  return [y, value];
}

/** The root by the logarithm of depth, in which the relations of hydraulics are nearly straight. */
function bracketed(f: (depth: number) => number, { a, b, fa, fb }: Bracket): number {
  if (fa === 0) return a;
  if (fb === 0) return b;
  const [low, high] = [ln(a), ln(b)];
  const finite = (value: number): number => Math.max(-1e9, Math.min(1e9, value));
  // the ends keep their own depths: their logarithms need not come back to them
  const at = (x: number): number => finite(x === low ? fa : x === high ? fb : f(exp(x)));
  const { root } = findRoot(at, low, high, 1e-16);
  return root === low ? a : root === high ? b : exp(root);
}
