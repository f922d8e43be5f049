/** Takes on the dry against takes on the nymph: keep the dropper, or cut it off? */

import { standingCautions } from "../setup/index.js";
import type { Assumption, Grounds } from "../sources/index.js";
import { QuantityError, requireWithin } from "../units/index.js";
import { above, fewestTakes, moreTakes, type Seen, trueRatio, verdictAt } from "./takes-odds.js";
import type { FlyTakes, Takes, TakesVerdict, WeighedTakes } from "./takes-types.js";

/** Weighs the takes. Takes on each fly are Poisson at a rate of its own; with the prior λ^(a−1), λ^(b−1) of the rates [Jeffreys1946] (a = b = 1/2
 *  unless given) the rates are gamma variables, and their ratio r = λ_dry/λ_nymph times the ratio of the efforts is the odds of a beta variable with
 *  a + dry and b + nymph: P(r > t) = 1 − I_x, x = t E_dry/(t E_dry + E_nymph), exactly. [DLMF]
 *  Throws QuantityError for counts that are not whole numbers from 0 to 100,000, an effort of 0, or limits out of range.
 *  @example weighTakes({ dry: { takes: 0 }, nymph: { takes: 0 } }).probability // => 0.3333333333 */
export function weighTakes(given: Takes): WeighedTakes {
  const seen = seenIn(given);
  const threshold = given.threshold ?? 3;
  const confidence = given.confidence ?? 0.9;
  requireWithin("ratio of takes to decide by", threshold, 0.01, 1000);
  requireWithin("confidence", confidence, 0.51, 0.999);
  const limits = { threshold, confidence };
  const probability = above(seen, threshold);
  const verdict = verdictAt(probability, confidence);
  const observedRatio =
    seen.nymph === 0 ? null : seen.dry / seen.effort.dry / (seen.nymph / seen.effort.nymph);
  return {
    verdict,
    text: `${seen.dry} on the dry to ${seen.nymph} on the nymph: ${meaning[verdict]}`,
    probability,
    observedRatio,
    ratio: trueRatio(seen, confidence),
    ruleOfThumb: ruleOfThumb(seen, observedRatio, threshold),
    more: moreTakes({ seen, ...limits }, verdict, given.effort),
    fewest: {
      toCut: fewestTakes((n) => above({ ...seen, dry: seen.dry + n }, threshold) >= confidence),
      toKeep: fewestTakes((n) => above({ ...seen, nymph: seen.nymph + n }, threshold) <= 1 - confidence),
    },
    cautions: standingCautions,
    grounds: groundsOf(given),
  };
}

/** What each verdict means at the water. Common practice, no source. */
const meaning: Readonly<Record<TakesVerdict, string>> = {
  cut: "cut the dropper: the dry alone is faster to handle and tangles fewer fish",
  keep: "keep the dropper",
  "too-early": "too early to tell",
};

function seenIn({ dry, nymph, effort, prior, countMisses = true }: Takes): Seen {
  for (const [fly, { takes, missed = 0 }] of [
    ["dry", dry],
    ["nymph", nymph],
  ] as const) {
    whole(`takes on the ${fly}`, takes);
    whole(`missed takes on the ${fly}`, missed);
  }
  for (const fly of ["dry", "nymph"] as const) {
    requireWithin(`effort on the ${fly}`, effort?.[fly] ?? 1, 1e-3, 1e8);
    requireWithin(`prior takes on the ${fly}`, prior?.[fly] ?? 1, 0.1, 1000);
  }
  const counted = ({ takes, missed = 0 }: FlyTakes): number => takes + (countMisses ? missed : 0);
  return {
    dry: counted(dry),
    nymph: counted(nymph),
    effort: effort ?? { dry: 1, nymph: 1 },
    prior: prior ?? { dry: 0.5, nymph: 0.5 },
  };
}

function whole(quantity: string, value: number): void {
  if (!(Number.isInteger(value) && value >= 0 && value <= 1e5))
    throw new QuantityError(quantity, "a whole number from 0 to 100000", value);
}

function ruleOfThumb(seen: Seen, observed: number | null, threshold: number): WeighedTakes["ruleOfThumb"] {
  if (seen.dry + seen.nymph === 0) return "nothing-seen";
  return observed === null || observed > threshold ? "cut" : "keep";
}

function groundsOf({ effort, threshold, confidence, prior, countMisses = true, dry, nymph }: Takes): Grounds {
  const missed = (dry.missed ?? 0) + (nymph.missed ?? 0) > 0;
  const taken: Assumption[] = [
    { name: "takes", value: "independent, at one steady rate on each fly", basis: "assumption" },
  ];
  if (threshold === undefined) taken.push({ name: "ratio to decide by", value: "3", basis: "practice" });
  if (confidence === undefined)
    taken.push({ name: "confidence of a verdict", value: "0.9", basis: "default" });
  if (prior === undefined)
    taken.push({ name: "takes seen beforehand", value: "1/2 on each fly", basis: "default" });
  if (effort === undefined) taken.push({ name: "effort", value: "the same on both flies", basis: "default" });
  if (missed)
    taken.push({
      name: "missed takes",
      value: countMisses ? "count: the fish chose; those on the nymph often go unseen" : "left out",
      basis: "assumption",
    });
  const relations = ["DLMF", "Jeffreys1946", "CommonPractice", "OurAssumption"] as const;
  return { relations: [...relations], assumptions: taken, caveats: [] };
}
