/** Student's t: how many standard errors hold a stated share of the cases, for few measurements. */

import { requireWithin } from "../units/index.js";
import { findRoot } from "./root.js";

/** Lanczos coefficients for g = 7: ln Γ to 1e-15 relative. */
const lanczos = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
] as const;

/** ln Γ(x) for x above 0, by Lanczos' sum with g = 7. @example logGamma(0.5) // => 0.5723649429 */
export function logGamma(x: number): number {
  requireWithin("argument of ln Γ", x, Number.MIN_VALUE, 1e300);
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  const z = x - 1;
  const t = z + 7.5;
  let sum: number = lanczos[0];
  for (let i = 1; i < lanczos.length; i++) sum += (lanczos[i] ?? 0) / (z + i);
  return 0.5 * Math.log(2 * Math.PI) + (z + 0.5) * Math.log(t) - t + Math.log(sum);
}

/** Regularised incomplete beta function I_x(a, b), 0 to 1: the continued fraction 8.17.22 by Lentz's method, on the side where it converges fast. [DLMF]
 *  @example incompleteBeta(0.5, 2, 3) // => 0.6875 */
export function incompleteBeta(x: number, a: number, b: number): number {
  requireWithin("x of the incomplete beta function", x, 0, 1);
  requireWithin("a of the incomplete beta function", a, 1e-3, 1e5);
  requireWithin("b of the incomplete beta function", b, 1e-3, 1e5);
  if (x === 0 || x === 1) return x;
  if (x > (a + 1) / (a + b + 2)) return 1 - incompleteBeta(1 - x, b, a);
  const front = a * Math.log(x) + b * Math.log1p(-x) + logGamma(a + b) - logGamma(a) - logGamma(b);
  return Math.exp(front) / (a * betaFraction(x, a, b));
}

function betaFraction(x: number, a: number, b: number): number {
  const tiny = 1e-300;
  let f = 1;
  let c = 1;
  let d = 0;
  for (let i = 1; i < 2000; i++) {
    const m = i >> 1;
    const top =
      i % 2 === 0
        ? (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m))
        : (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / (1 + top * d || tiny);
    c = 1 + top / c || tiny;
    f *= c * d;
    if (Math.abs(c * d - 1) < 1e-16) break;
  }
  return f;
}

/** The t that a share `probability` of Student's distribution stays below, for 1 to 1e5 degrees of freedom and 1e-9 to 1 - 1e-9.
 *  Solves I_x(ν/2, 1/2) = 2 (1 - p), x = ν/(ν + t²), in ln t. [DLMF]
 *  @example studentQuantile(0.975, 10) // => 2.2281388520 */
export function studentQuantile(probability: number, freedom: number): number {
  requireWithin("probability", probability, 1e-9, 1 - 1e-9);
  requireWithin("degrees of freedom", freedom, 1, 1e5);
  if (probability === 0.5) return 0;
  const tail = 2 * Math.min(probability, 1 - probability);
  const excess = (logT: number): number => {
    const square = Math.exp(2 * logT);
    const all = freedom + square;
    // the small one of the two shares, outside and inside ±t, keeps its digits
    if (tail < 0.5) return tail - incompleteBeta(freedom / all, freedom / 2, 0.5);
    return incompleteBeta(square / all, 0.5, freedom / 2) - Math.abs(2 * probability - 1);
  };
  const t = Math.exp(findRoot(excess, -25, 25, 1e-14).root);
  return probability < 0.5 ? -t : t;
}
