/** Student's t: how many standard errors hold a stated share of the cases, for few measurements. */

import { exp } from "../elementary/index.js";
import { requireWithin } from "../units/index.js";
import { incompleteBeta } from "./beta.js";
import { findRoot } from "./root.js";

/** The t that a share `probability` of Student's distribution stays below, for 1 to 1e5 degrees of freedom and 1e-9 to 1 - 1e-9.
 *  Solves I_x(ν/2, 1/2) = 2 (1 - p), x = ν/(ν + t²), in ln t. [DLMF]
 *  @example studentQuantile(0.975, 10) // => 2.2281388520 */
export function studentQuantile(probability: number, freedom: number): number {
  requireWithin("probability", probability, 1e-9, 1 - 1e-9);
  requireWithin("degrees of freedom", freedom, 1, 1e5);
  if (probability === 0.5) return 0;
  const tail = 2 * Math.min(probability, 1 - probability);
  const excess = (logT: number): number => {
    const square = exp(2 * logT);
    const all = freedom + square;
    // the small one of the two shares, outside and inside ±t, keeps its digits
    if (tail < 0.5) return tail - incompleteBeta(freedom / all, freedom / 2, 0.5);
    return incompleteBeta(square / all, 0.5, freedom / 2) - Math.abs(2 * probability - 1);
  };
  const t = exp(findRoot(excess, -25, 25, 1e-14).root);
  return probability < 0.5 ? -t : t;
}
