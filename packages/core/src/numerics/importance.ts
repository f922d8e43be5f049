/** Sampling of a posterior whose prior is a standard normal, with a counted number of evaluations. */

import { exp, ln } from "../elementary/index.js";
import { requireWithin } from "../units/index.js";
import { normalPoints } from "./normal-points.js";

export interface WeighedPoints {
  readonly points: readonly (readonly number[])[];
  /** Of the posterior; they sum to 1. */
  readonly weights: readonly number[];
  /** Of the prior over the same points. */
  readonly priorWeights: readonly number[];
  /** 1/Σw²: as good as so many independent points. */
  readonly effective: number;
  /** ln of the mean likelihood over the prior. */
  readonly logEvidence: number;
}

interface Proposal {
  readonly count: number;
  readonly mean: readonly number[];
  /** Lower triangle of Cholesky. */
  readonly root: readonly (readonly number[])[];
}

/** Refinements after the first half. */
const stages = 4;
/** Further ones, where the points are not worth `enough`. */
const spareStages = 4;
/** A proposal is this much wider, in variance, than the sample it was fitted to. */
const widened = 1.3;

/** Half of the points come from the prior, the rest in four stages from normals fitted to the weighted points so far; every point is weighted by prior
 *  times likelihood over the mixture of all proposals (adaptive multiple importance sampling; from memory after Cornuet et al. 2012).
 *  Where they are worth fewer than `enough` independent ones, up to four stages more: half as many points again.
 *  `logLikelihood` may be −Infinity, not everywhere. Points are those of `normalPoints`: the same seed gives the same answer.
 *  Throws QuantityError for fewer than 64 or more than 20,000 samples, or a dimension outside 1 to 10. */
export function sampleByImportance(given: {
  readonly dimension: number;
  readonly samples: number;
  readonly seed: number;
  /** Independent points that all should be worth; 0 unless given. */
  readonly enough?: number;
  readonly logLikelihood: (point: readonly number[]) => number;
}): WeighedPoints {
  const { dimension, samples, seed, enough = 0, logLikelihood } = given;
  requireWithin("samples", samples, 64, 20_000);
  requireWithin("dimension of the sample", dimension, 1, 10);
  const normals = normalPoints({ dimension, seed });
  const points: (readonly number[])[] = [];
  const likelihoods: number[] = [];
  const proposals: Proposal[] = [];
  const draw = (proposal: Proposal): void => {
    proposals.push(proposal);
    for (let i = 0; i < proposal.count; i++) {
      const point = moved(proposal, normals(points.length));
      points.push(point);
      likelihoods.push(logLikelihood(point));
    }
  };
  const each = Math.floor(samples / (2 * stages));
  const identity = Array.from({ length: dimension }, (_, i) => unit(dimension, i));
  draw({ count: samples - stages * each, mean: new Array<number>(dimension).fill(0), root: identity });
  let logs = logWeights(points, likelihoods, proposals);
  for (let stage = 0; stage < stages + spareStages; stage++) {
    if (stage >= stages && effectiveSize(normalised(logs, 1)) >= enough) break;
    draw({ count: each, ...fitted(points, tempered(logs, 10 + 3 * dimension)) });
    logs = logWeights(points, likelihoods, proposals);
  }
  const top = logs.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  const weights = normalised(logs, 1);
  const sum = logs.reduce((total, log) => total + exp(log - top), 0);
  return {
    points,
    weights,
    priorWeights: normalised(
      logWeights(
        points,
        likelihoods.map(() => 0),
        proposals,
      ),
      1,
    ),
    effective: effectiveSize(weights),
    logEvidence: top === Number.NEGATIVE_INFINITY ? top : top + ln(sum / points.length),
  };
}

function unit(dimension: number, i: number): readonly number[] {
  return Array.from({ length: dimension }, (_, j) => (i === j ? 1 : 0));
}

function moved({ mean, root }: Proposal, normal: readonly number[]): readonly number[] {
  return mean.map((m, i) => root[i]!.reduce((sum, r, j) => sum + r * normal[j]!, m));
}

/** ln of prior × likelihood over the mixture of proposals; the constants of the normals cancel. */
function logWeights(
  points: readonly (readonly number[])[],
  likelihoods: readonly number[],
  proposals: readonly Proposal[],
): readonly number[] {
  const densities = proposals.map((proposal) => logDensity(proposal));
  return points.map((point, i) => {
    const logs = densities.map((density, k) => ln(proposals[k]!.count / points.length) + density(point));
    const top = Math.max(...logs);
    const mixture = top + ln(logs.reduce((sum, log) => sum + exp(log - top), 0));
    return likelihoods[i]! - 0.5 * squared(point) - mixture;
  });
}

function logDensity({ mean, root }: Proposal): (point: readonly number[]) => number {
  const logDeterminant = root.reduce((sum, row, i) => sum + ln(row[i]!), 0);
  return (point) => {
    const solved: number[] = [];
    for (const [i, row] of root.entries()) {
      let rest = point[i]! - mean[i]!;
      for (let j = 0; j < i; j++) rest -= row[j]! * solved[j]!;
      solved.push(rest / row[i]!);
    }
    return -0.5 * squared(solved) - logDeterminant;
  };
}

function squared(point: readonly number[]): number {
  return point.reduce((sum, x) => sum + x * x, 0);
}

/** Weights to a power, at most 1, at which they are as good as `least` points. */
function tempered(logs: readonly number[], least: number): readonly number[] {
  let [low, high] = [0, 1];
  if (effectiveSize(normalised(logs, 1)) >= least) return normalised(logs, 1);
  for (let i = 0; i < 30; i++) {
    const power = (low + high) / 2;
    if (effectiveSize(normalised(logs, power)) >= least) low = power;
    else high = power;
  }
  return normalised(logs, low);
}

function normalised(logs: readonly number[], power: number): readonly number[] {
  const top = logs.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  if (top === Number.NEGATIVE_INFINITY) return logs.map(() => 1 / logs.length);
  const raw = logs.map((log) => (log === Number.NEGATIVE_INFINITY ? 0 : exp(power * (log - top))));
  const sum = raw.reduce((a, b) => a + b, 0);
  return raw.map((weight) => weight / sum);
}

function effectiveSize(weights: readonly number[]): number {
  return 1 / squared(weights);
}

/** Mean and widened covariance of weighted points. */
function fitted(points: readonly (readonly number[])[], weights: readonly number[]): Omit<Proposal, "count"> {
  const dimension = points[0]!.length;
  const mean = Array.from({ length: dimension }, (_, i) => weighted(points, weights, (p) => p[i]!));
  const covariance = mean.map((a, i) =>
    mean.map((b, j) => {
      const spread = widened * weighted(points, weights, (p) => (p[i]! - a) * (p[j]! - b));
      return i === j ? spread + 1e-6 : spread;
    }),
  );
  return { mean, root: cholesky(covariance) };
}

function weighted(
  points: readonly (readonly number[])[],
  weights: readonly number[],
  of: (point: readonly number[]) => number,
): number {
  return points.reduce((sum, point, i) => sum + weights[i]! * of(point), 0);
}

function cholesky(matrix: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const root: number[][] = matrix.map((row) => row.map(() => 0));
  for (let i = 0; i < matrix.length; i++) {
    for (let j = 0; j <= i; j++) {
      let rest = matrix[i]![j]!;
      for (let k = 0; k < j; k++) rest -= root[i]![k]! * root[j]![k]!;
      root[i]![j] = i === j ? Math.sqrt(Math.max(rest, 1e-12)) : rest / root[j]![j]!;
    }
  }
  return root;
}
