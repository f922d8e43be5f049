/** A rating curve: discharge from stage, fitted to gaugings, with the interval that the next gauging should fall in. */

import { exp, ln, raise } from "../elementary/index.js";
import { findLeast, type LinearFit, leastSquares, studentQuantile } from "../numerics/index.js";
import { type Caveat, caveatFor } from "../sources/index.js";
import {
  type CubicMetresPerSecond,
  cubicMetresPerSecond,
  type Metres,
  metres,
  QuantityError,
  requirePositive,
  requireWithin,
} from "../units/index.js";

export interface Gauging {
  readonly stage: Metres;
  readonly discharge: CubicMetresPerSecond;
  /** Relative standard uncertainty of the discharge: weights the gauging by its inverse square. Given for all or for none. */
  readonly uncertainty?: number;
}

/** The stage at which the discharge is 0: known, or to be found between two stages below the lowest gauging. */
export type ZeroFlow = { readonly stage: Metres } | { readonly from: Metres; readonly to: Metres };

/** Q = C (h − h0)^b. */
export interface RatingCurve {
  readonly coefficient: number;
  readonly exponent: number;
  readonly exponentStandardError: number;
  readonly zeroFlowStage: Metres;
  /** "at the end": the best stage lies at an end of the bracket, so it is not found. */
  readonly zeroFlow: "given" | "found" | "at the end of the bracket";
  /** Standard deviation of ln Q about the curve, for a gauging of mean weight: about the relative scatter. */
  readonly scatter: number;
  readonly freedom: number;
  /** ln of measured over fitted discharge, in the order of the gaugings. */
  readonly residuals: readonly number[];
  readonly stages: { readonly min: Metres; readonly max: Metres };
  /** Variance of the fitted ln Q at a stage over the variance of the scatter. */
  readonly leverageAt: (stage: Metres) => number;
}

/** Weighted least squares of ln Q against ln(h − h0). With h0 searched, it counts as a third parameter: a degree of freedom is spent, and its
 *  uncertainty is in the leverage through the derivative −b/(h − h0). [ISO1100]
 *  Throws QuantityError for too few gaugings (3, or 4 with h0 searched), stages at or below h0, discharges not above 0, or one single stage.
 *  @example rateStage([{ stage: metres(1), discharge: cubicMetresPerSecond(2) }, { stage: metres(2), discharge: cubicMetresPerSecond(8) }, { stage: metres(4), discharge: cubicMetresPerSecond(32) }], { stage: metres(0) }).exponent // => 2.0000 */
export function rateStage(gaugings: readonly Gauging[], zeroFlow: ZeroFlow): RatingCurve {
  const weights = checkGaugings(gaugings, zeroFlow);
  const logs = gaugings.map((g) => ln(g.discharge));
  const straight = (h0: number): LinearFit =>
    leastSquares(
      gaugings.map((g) => [1, ln(g.stage - h0)]),
      logs,
      weights,
    );
  const searched = "from" in zeroFlow;
  const h0 = searched ? bestZero(straight, zeroFlow.from, zeroFlow.to) : zeroFlow.stage;
  const line = straight(h0);
  const [intercept = Number.NaN, exponent = Number.NaN] = line.coefficients;
  const row = (stage: number): readonly number[] => {
    const base = [1, ln(stage - h0)];
    return searched ? [...base, -exponent / (stage - h0)] : base;
  };
  // at the best h0 the third column takes nothing more out of the residuals: it only widens what is not known
  const full = searched
    ? leastSquares(
        gaugings.map((g) => row(g.stage)),
        logs,
        weights,
      )
    : line;
  const coefficient = exp(intercept);
  requirePositive(
    "coefficient of the rating: stages too near each other for their height above zero flow, it",
    coefficient,
  );
  const freedom = full.freedom;
  const stages = gaugings.map((g) => g.stage);
  return {
    coefficient,
    exponent,
    exponentStandardError:
      Math.sqrt(full.leverage(full.coefficients.map((_, i) => (i === 1 ? 1 : 0)))) *
      Math.sqrt(line.sumOfSquares / freedom),
    zeroFlowStage: metres(h0),
    zeroFlow: !searched ? "given" : atEnd(h0, zeroFlow) ? "at the end of the bracket" : "found",
    scatter: Math.sqrt(line.sumOfSquares / freedom),
    freedom,
    residuals: line.residuals,
    stages: { min: metres(Math.min(...stages)), max: metres(Math.max(...stages)) },
    leverageAt: (stage) => full.leverage(row(stage)),
  };
}

export interface RatedDischarge {
  /** The curve's discharge: the middle (median) of what is expected there; the mean is higher by exp(scatter²/2). */
  readonly discharge: CubicMetresPerSecond;
  readonly confidence: number;
  /** Where the curve itself lies. */
  readonly curve: { readonly min: CubicMetresPerSecond; readonly max: CubicMetresPerSecond };
  /** Where one more gauging of mean weight lies. */
  readonly prediction: { readonly min: CubicMetresPerSecond; readonly max: CubicMetresPerSecond };
  /** Made where the stage is outside the gauged stages. */
  readonly caveats: readonly Caveat[];
}

/** Discharge at a stage: exp(ln Q ± t s √(l)) for the curve and ± t s √(1 + l) for a gauging, l the leverage, t of Student. [ISO1100]
 *  Throws QuantityError for a stage at or below that of zero flow, or a confidence not inside 0.5 to 0.9999. */
export function ratedDischarge(rating: RatingCurve, stage: Metres, confidence = 0.95): RatedDischarge {
  requireWithin("confidence", confidence, 0.5, 0.9999);
  const above = stage - rating.zeroFlowStage;
  requirePositive("stage above that of zero flow", above, "m");
  const discharge = rating.coefficient * raise(above, rating.exponent);
  requireWithin("discharge by the rating", discharge, 0, 1e100, "m³/s");
  const leverage = rating.leverageAt(stage);
  const t = studentQuantile((1 + confidence) / 2, rating.freedom);
  const around = (variance: number): RatedDischarge["curve"] => {
    const factor = exp(t * rating.scatter * Math.sqrt(variance));
    requireWithin("factor of uncertainty of the rating", factor, 1, 1e100);
    return { min: cubicMetresPerSecond(discharge / factor), max: cubicMetresPerSecond(discharge * factor) };
  };
  return {
    discharge: cubicMetresPerSecond(discharge),
    confidence,
    curve: around(leverage),
    prediction: around(1 + leverage),
    caveats: caveatFor({ relation: "ISO1100", quantity: "stage, m", ...rating.stages }, stage),
  };
}

/** The h0 of least squares in its bracket. */
function bestZero(straight: (h0: number) => LinearFit, from: number, to: number): number {
  return findLeast((h0) => straight(h0).sumOfSquares, from, to, 1e-9 * (to - from));
}

function atEnd(h0: number, { from, to }: { readonly from: Metres; readonly to: Metres }): boolean {
  const near = 1e-6 * (to - from);
  return h0 - from <= near || to - h0 <= near;
}

/** The weights, mean 1, or undefined where no uncertainty is given. */
function checkGaugings(gaugings: readonly Gauging[], zeroFlow: ZeroFlow): readonly number[] | undefined {
  const searched = "from" in zeroFlow;
  const least = searched ? 4 : 3;
  if (gaugings.length < least) throw new QuantityError("gaugings", `${least} or more`, gaugings.length);
  if (searched && !(zeroFlow.from < zeroFlow.to))
    throw new QuantityError(
      "bracket of the stage of zero flow",
      "rising",
      `${zeroFlow.from} to ${zeroFlow.to}`,
    );
  const top = searched ? zeroFlow.to : zeroFlow.stage;
  gaugings.forEach((g, i) => {
    requirePositive(`discharge of gauging ${i + 1}`, g.discharge, "m³/s");
    if (!(g.stage > top))
      throw new QuantityError(`stage of gauging ${i + 1}`, `above ${top} m, zero flow`, g.stage);
    if (g.uncertainty !== undefined) requirePositive(`uncertainty of gauging ${i + 1}`, g.uncertainty);
  });
  const stated = gaugings.map((g) => g.uncertainty).filter((u) => u !== undefined);
  if (stated.length === 0) return undefined;
  if (stated.length < gaugings.length)
    throw new QuantityError("uncertainty of the gaugings", "given for all or for none", stated.length);
  const mean = stated.reduce((sum, u) => sum + raise(u, -2), 0) / stated.length;
  return stated.map((u) => raise(u, -2) / mean);
}
