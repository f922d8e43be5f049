/** I saw this on the water: what is it really like there, and what changes first? */

import { waterColumn } from "../column/index.js";
import type { Regime } from "../drift/index.js";
import { exp } from "../elementary/index.js";
import { standingCautions } from "../setup/index.js";
import { caveatFor, joinGrounds, type Validity } from "../sources/index.js";
import { adviseChange } from "./adjust-change.js";
import { adjustGrounds } from "./adjust-grounds.js";
import { enoughEffective, posteriorOf, type Tried } from "./adjust-posterior.js";
import { type Factors, observationWith, piecesWith, treatmentWith } from "./adjust-prior.js";
import { ruledOutBy, share, spreadOf, total, verdictOf, type Weighed } from "./adjust-summary.js";
import type { AdjustedRig, AdjustQuestion } from "./adjust-types.js";

/** Waters and rigs of the posterior with which changes are judged. */
const drawn = 5;

/** Below it the intervals are rough. */
export const effectiveSamplesValidity: Validity = {
  relation: "OurAssumption",
  quantity: "effective samples of the posterior",
  min: enoughEffective,
  max: 20_000,
};

/** Bayes' rule over settled drifts: priors about what was stated, likelihoods for what was seen (docs/adjustments.md has both), adaptive importance
 *  sampling with a counted number of settled rigs. The same question gives the same answer. Sightings that nothing explains are an answer: `fit`.
 *  Throws QuantityError for standing or impossible water, an impossible rig or sighting, 0 or more than 20 sightings, fewer than 128 or more than 4000 samples. */
export function adjustRig(question: AdjustQuestion): AdjustedRig {
  const { observation, inHand, seen } = question;
  const { prior, tried, weighed, values, quantities, effective, logEvidence, samples, seed } =
    posteriorOf(question);
  const middle = medianFactors(tried, weighed.now);
  const revised = observationWith(prior, observation, middle);
  const column = waterColumn(revised);
  const advice = adviseChange(question, prior, drawsOf(tried, values.nymphHeight, weighed.now));
  const deviance = Math.min(...tried.map(({ logs, distance }) => distance - 2 * total(logs)));
  return {
    quantities,
    revised,
    column,
    inHand: piecesWith(inHand, middle, treatmentWith(prior, middle)),
    regimes: regimesOf(tried, weighed),
    ruledOut: ruledOutBy(quantities, values, weighed),
    fit: {
      sightings: seen.map((_, k) => share(tried.map(({ logs }, i) => weighed.now[i]! * exp(logs[k]!)))),
      best: exp(-deviance / 2),
      logEvidence,
      verdict: verdictOf(deviance, seen.length),
    },
    next: advice.next,
    effectiveSamples: effective,
    seed,
    work: { settled: samples + advice.settled, judged: advice.judged, changes: advice.changes },
    cautions: standingCautions,
    grounds: joinGrounds(column.grounds, adjustGrounds(question, prior), {
      relations: ["BrownLawler2003", "SuckerBrauer1975", "Hoerner1965"],
      assumptions: [],
      caveats: caveatFor(effectiveSamplesValidity, effective),
    }),
  };
}

/** Each factor at its own median. */
function medianFactors(tried: readonly Tried[], now: readonly number[]): Factors {
  const median = (part: keyof Factors): number =>
    spreadOf(
      tried.map(({ factors }) => factors[part]),
      now,
      (value) => value,
    ).median;
  return {
    depth: median("depth"),
    surfaceSpeed: median("surfaceSpeed"),
    profile: median("profile"),
    drag: median("drag"),
    treatment: median("treatment"),
  };
}

/** Equally likely draws, spread over the heights of the nymph. */
function drawsOf(tried: readonly Tried[], heights: readonly number[], now: readonly number[]): Factors[] {
  const order = tried.map((_, i) => i).sort((a, b) => heights[a]! - heights[b]!);
  const draws: Factors[] = [];
  let below = 0;
  for (const i of order) {
    below += now[i]!;
    while (draws.length < drawn && below >= (draws.length + 0.5) / drawn) draws.push(tried[i]!.factors);
  }
  return draws;
}

function regimesOf(tried: readonly Tried[], { before, now }: Weighed): AdjustedRig["regimes"] {
  const regimes: readonly Regime[] = ["hanging", "on-bed", "drowned", "slack-water"];
  const shareOf = (weights: readonly number[], regime: Regime): number =>
    share(tried.map(({ settled }, i) => (settled.regime === regime ? weights[i]! : 0)));
  return regimes
    .map((regime) => ({ regime, before: shareOf(before, regime), now: shareOf(now, regime) }))
    .filter((one) => one.before > 0 || one.now > 0);
}
