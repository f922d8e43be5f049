/** The ratio of two rates of takes as the odds of a beta variable, and how many takes decide. */

import { oddsBelow, oddsQuantile } from "../numerics/index.js";
import { seconds } from "../units/index.js";
import type { Effort, MoreTakes, TakesVerdict, WeighedTakes } from "./takes-types.js";

/** The most further takes that are looked for. */
export const mostFurtherTakes = 10_000;
/** The most readings of a distribution that one verdict takes: its own, 27 in each of three searches for takes, 100 in each of three quantiles. */
export const mostOddsRead: number = 1 + 3 * 27 + 3 * 100;

/** Counted takes, and how much fishing stands behind them. */
export interface Seen {
  readonly dry: number;
  readonly nymph: number;
  readonly effort: { readonly dry: number; readonly nymph: number };
  readonly prior: { readonly dry: number; readonly nymph: number };
}

/** P(r > t) = P(odds of Beta(nymph, dry) < 1/(t E_dry/E_nymph)): the upper tail by its own digits. */
export function above({ dry, nymph, effort, prior }: Seen, threshold: number): number {
  const odds = effort.nymph / (threshold * effort.dry);
  return oddsBelow({ odds, a: prior.nymph + nymph, b: prior.dry + dry });
}

export function verdictAt(probability: number, confidence: number): TakesVerdict {
  if (probability >= confidence) return "cut";
  return probability <= 1 - confidence ? "keep" : "too-early";
}

/** Median and central interval of the true ratio. */
export function trueRatio({ dry, nymph, effort, prior }: Seen, confidence: number): WeighedTakes["ratio"] {
  const [a, b] = [prior.dry + dry, prior.nymph + nymph];
  const at = (probability: number): number =>
    (oddsQuantile({ probability, a, b }) * effort.nymph) / effort.dry;
  return { median: at(0.5), low: at(1 - confidence), high: at(confidence), within: 2 * confidence - 1 };
}

/** How much more fishing with both flies decides, at the rates so far. */
export function moreTakes(
  {
    seen,
    threshold,
    confidence,
  }: { readonly seen: Seen; readonly threshold: number; readonly confidence: number },
  verdict: TakesVerdict,
  given: Effort | undefined,
): MoreTakes {
  if (verdict !== "too-early") return { kind: "decided" };
  if (seen.dry + seen.nymph === 0) return { kind: "nothing-seen" };
  // rates per unit of effort, the prior among the takes
  const rate = (fly: "dry" | "nymph"): number => (seen.prior[fly] + seen[fly]) / seen.effort[fly];
  const [dry, nymph] = [rate("dry"), rate("nymph")];
  const towards = dry / nymph > threshold ? "cut" : "keep";
  const effortFor = (takes: number): number => takes / (dry + nymph);
  const takes = fewestTakes((n) => {
    const further = effortFor(n);
    const then: Seen = {
      dry: seen.dry + dry * further,
      nymph: seen.nymph + nymph * further,
      effort: { dry: seen.effort.dry + further, nymph: seen.effort.nymph + further },
      prior: seen.prior,
    };
    return verdictAt(above(then, threshold), confidence) === towards;
  });
  if (takes === null) return { kind: "beyond", takes: mostFurtherTakes };
  return {
    kind: "more",
    towards,
    takes,
    time: given?.kind === "time" ? seconds(effortFor(takes)) : null,
    drifts: given?.kind === "drifts" ? Math.ceil(effortFor(takes)) : null,
  };
}

/** The least whole number that will do, up to 10,000. */
export function fewestTakes(does: (n: number) => boolean): number | null {
  if (does(0)) return 0;
  let low = 0;
  let high = 1;
  while (!does(high)) {
    if (high === mostFurtherTakes) return null;
    low = high;
    high = Math.min(2 * high, mostFurtherTakes);
  }
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (does(middle)) high = middle;
    else low = middle;
  }
  return high;
}
