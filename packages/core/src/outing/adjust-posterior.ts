/** The posterior over waters and rigs: settled drifts, weighed by what was seen. */

import { type Settled, settle } from "../drift/index.js";
import { raise } from "../elementary/index.js";
import { sampleByImportance } from "../numerics/index.js";
import { heightAboveBed, metres, metresPerSecond, radians, requireWithin } from "../units/index.js";
import { likelihoodOf, requireWhole, sightingScales } from "./adjust-likelihood.js";
import {
  type Factors,
  type Prior,
  priorOf,
  speedBelow,
  treatmentWith,
  type World,
  worldWith,
} from "./adjust-prior.js";
import { revisionOf, total, type Weighed } from "./adjust-summary.js";
import type { AdjustQuestion, RevisedQuantities } from "./adjust-types.js";

/** Rigs settled to weigh what was seen, unless the caller says otherwise. */
const usualSamples = 400;

/** Below so many effective samples the intervals are rough: more are drawn, half as many again at most. */
export const enoughEffective = 50;

/** One water and rig that were tried, and how well each sighting fits it. */
export interface Tried extends World {
  readonly factors: Factors;
  readonly settled: Pick<Settled, "regime" | "lean" | "sinkers">;
  readonly logs: readonly number[];
  /** Square of how far the factors are from what was stated, in their spreads. */
  readonly distance: number;
}

export type Values = Readonly<Record<keyof RevisedQuantities, readonly number[]>>;

export interface Posterior {
  readonly prior: Prior;
  readonly tried: readonly Tried[];
  readonly weighed: Weighed;
  readonly values: Values;
  readonly quantities: RevisedQuantities;
  readonly effective: number;
  readonly logEvidence: number;
  /** Rigs settled. */
  readonly samples: number;
  readonly seed: number;
}

/** Weighs what was seen. Throws what `adjustRig` throws, but for the box. */
export function posteriorOf(question: AdjustQuestion): Posterior {
  const { seen, samples = usualSamples, seed = 1 } = question;
  requireWithin("number of sightings", seen.length, 1, 20);
  requireWhole("samples", samples, 128, 4000);
  requireWhole("seed", seed, 0, raise(2, 31));
  const prior = priorOf(question);
  const drifts = settledDrifts(question, prior, samples, seed);
  const values = valuesOf(prior, drifts.tried);
  const quantities = quantitiesOf(values, drifts.weighed);
  return { ...drifts, prior, values, quantities, seed };
}

type Drifts = Pick<Posterior, "tried" | "weighed" | "effective" | "logEvidence" | "samples">;

function settledDrifts(question: AdjustQuestion, prior: Prior, samples: number, seed: number): Drifts {
  const { seen, wind, scales } = question;
  const worth = { ...sightingScales, ...scales };
  const likelihoods = seen.map((one) => likelihoodOf(one, worth, prior.column.surfaceSpeed));
  const how = { alone: true, ...(wind === undefined ? {} : { wind }) };
  const all: (Tried | null)[] = [];
  const { weights, priorWeights, effective, logEvidence } = sampleByImportance({
    dimension: prior.dimension,
    samples,
    seed,
    enough: enoughEffective,
    logLikelihood: (point) => {
      const factors = prior.factorsAt(point);
      const world = worldWith(prior, factors);
      if (world === null) {
        all.push(null);
        return Number.NEGATIVE_INFINITY;
      }
      const settled = settle(world.rig, world.column, how);
      const logs = likelihoods.map((of) => of(settled));
      all.push({ ...world, factors, settled, logs, distance: total(point.map((z) => z * z)) });
      return total(logs);
    },
  });
  const possible = (of: readonly number[]): readonly number[] => {
    const kept = of.filter((_, i) => all[i] !== null);
    const whole = total(kept);
    return kept.map((weight) => weight / whole);
  };
  return {
    tried: all.filter((one) => one !== null),
    weighed: { before: possible(priorWeights), now: possible(weights) },
    effective,
    logEvidence,
    samples: all.length,
  };
}

function valuesOf(prior: Prior, tried: readonly Tried[]): Values {
  return {
    depth: tried.map(({ column }) => column.depth),
    surfaceSpeed: tried.map(({ column }) => column.surfaceSpeed),
    speedBelow: tried.map(({ column }) => speedBelow(column)),
    drag: tried.map(({ factors }) => factors.drag),
    treatment: tried.map(({ factors }) => treatmentWith(prior, factors)),
    nymphHeight: tried.map(({ settled }) => settled.sinkers.at(-1)?.heightAboveBed ?? 0),
    lean: tried.map(({ settled }) => settled.lean),
  };
}

function quantitiesOf(values: Values, weighed: Weighed): RevisedQuantities {
  const plain = (value: number): number => value;
  return {
    depth: revisionOf(values.depth, weighed, metres),
    surfaceSpeed: revisionOf(values.surfaceSpeed, weighed, metresPerSecond),
    speedBelow: revisionOf(values.speedBelow, weighed, plain),
    drag: revisionOf(values.drag, weighed, plain),
    treatment: revisionOf(values.treatment, weighed, plain),
    nymphHeight: revisionOf(values.nymphHeight, weighed, heightAboveBed),
    lean: revisionOf(values.lean, weighed, radians),
  };
}
