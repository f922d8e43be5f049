/** The beta distribution: what share of it lies below a point, and the point that a share lies below. */

import { exp, ln, sin } from "../elementary/index.js";
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
  if (x < 0.5) return ln(Math.PI / sin(Math.PI * x)) - logGamma(1 - x);
  const z = x - 1;
  const t = z + 7.5;
  let sum: number = lanczos[0];
  for (let i = 1; i < lanczos.length; i++) sum += (lanczos[i] ?? 0) / (z + i);
  return 0.5 * ln(2 * Math.PI) + (z + 0.5) * ln(t) - t + ln(sum);
}

/** Regularised incomplete beta function I_x(a, b), 0 to 1. [DLMF]
 *  @example incompleteBeta(0.5, 2, 3) // => 0.6875 */
export function incompleteBeta(x: number, a: number, b: number): number {
  requireWithin("x of the incomplete beta function", x, 0, 1);
  return x === 1 ? 1 : oddsBelow({ odds: x / (1 - x), a, b });
}

/** The probability that the odds x/(1 − x) of a beta variable are below `odds`: I_x(a, b) with both x and 1 − x to all their digits, so that
 *  either tail keeps them (exchange a and b and turn the odds over for the other one). For 1e-3 <= a, b <= 1e6.
 *  The continued fraction 8.17.22 by Lentz's method, on the side where it converges fast. [DLMF]
 *  @example oddsBelow({ odds: 3, a: 2, b: 2 }) // => 0.84375 */
export function oddsBelow({
  odds,
  a,
  b,
}: {
  readonly odds: number;
  readonly a: number;
  readonly b: number;
}): number {
  requireWithin("odds", odds, 0, Number.MAX_VALUE);
  checkShape(a, b);
  if (odds === 0) return 0;
  if (odds > (a + 1) / (b + 1)) return 1 - lowerTail(1 / odds, b, a);
  return lowerTail(odds, a, b);
}

/** The odds that a beta variable stays below with `probability`, 1e-12 to 1 − 1e-12: solved in their logarithm, each tail by its own share.
 *  @example oddsQuantile({ probability: 0.5, a: 4, b: 4 }) // => 1.000000 */
export function oddsQuantile({
  probability,
  a,
  b,
}: {
  readonly probability: number;
  readonly a: number;
  readonly b: number;
}): number {
  requireWithin("probability", probability, 1e-12, 1 - 1e-12);
  checkShape(a, b);
  const excess = (logOdds: number): number =>
    probability < 0.5
      ? oddsBelow({ odds: exp(logOdds), a, b }) - probability
      : 1 - probability - oddsBelow({ odds: exp(-logOdds), a: b, b: a });
  let [low, high] = [ln(a / b), ln(a / b)];
  for (let step = 1; excess(low) > 0 && low > -700; step *= 2) low = Math.max(-700, low - step);
  for (let step = 1; excess(high) < 0 && high < 700; step *= 2) high = Math.min(700, high + step);
  return exp(findRoot(excess, low, high, 1e-16).root);
}

function checkShape(a: number, b: number): void {
  requireWithin("a of the beta distribution", a, 1e-3, 1e6);
  requireWithin("b of the beta distribution", b, 1e-3, 1e6);
}

function lowerTail(odds: number, a: number, b: number): number {
  const x = odds / (1 + odds);
  return density(odds, a, b) / (a * betaFraction(x, a, b));
}

/** x^a (1 − x)^b / B(a, b). With m = (a + b) x: the distance of a from m, and of b from a + b − m, without the great logarithms
 *  that cancel. From memory after Loader 2000, the saddle-point form of the binomial. */
function density(odds: number, a: number, b: number): number {
  const n = a + b;
  const mean = (n * odds) / (1 + odds);
  const rest = n / (1 + odds);
  const remainder = stirling(n) - stirling(a) - stirling(b);
  return Math.sqrt((a * b) / (2 * Math.PI * n)) * exp(remainder - deviance(a, mean) - deviance(b, rest));
}

/** a ln(a/m) + m − a, by a series where a and m are close. */
function deviance(a: number, m: number): number {
  const v = (a - m) / (a + m);
  if (Math.abs(v) > 0.1) return a * ln(a / m) + m - a;
  let sum = (a - m) * v;
  let term = 2 * a * v;
  for (let j = 3; j < 40; j += 2) {
    term *= v * v;
    const next = sum + term / j;
    if (next === sum) break;
    sum = next;
  }
  return sum;
}

/** ln Γ(z) less Stirling's (z − ½) ln z − z + ½ ln 2π: the series 5.11.1 from z = 10 on, where its eighth term is below 1e-16. [DLMF] */
function stirling(z: number): number {
  if (z < 10) return logGamma(z) - (z - 0.5) * ln(z) + z - 0.5 * ln(2 * Math.PI);
  const s = 1 / (z * z);
  const inner = 1 / 1260 - s * (1 / 1680 - s * (1 / 1188 - s * (691 / 360360 - s / 156)));
  return (1 / 12 - s * (1 / 360 - s * inner)) / z;
}

function betaFraction(x: number, a: number, b: number): number {
  const tiny = 1e-300;
  let f = 1;
  let c = 1;
  let d = 0;
  for (let i = 1; i < 10_000; i++) {
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
