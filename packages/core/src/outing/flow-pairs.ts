/** A stop at another discharge, from one's own notes of it. */

import type { StreamValue } from "../channel/index.js";
import { exp, ln } from "../elementary/index.js";
import { leastSquares, studentQuantile } from "../numerics/index.js";
import { type Assumption, caveatFor } from "../sources/index.js";
import {
  type CubicMetresPerSecond,
  metres,
  metresPerSecond,
  QuantityError,
  requirePositive,
  requireWithin,
} from "../units/index.js";
import { type FlowEstimate, geometryScaled, type MeasuredStop, type StopPair } from "./flow-stop.js";

/** Powers of discharge through the stop and the pairs by least squares of the logarithms, with the interval of one more measurement.
 *  What fewer than three of them note follows the published exponents. [LeopoldMaddock1953] */
export function byPairs(stop: MeasuredStop, pairs: readonly StopPair[]): FlowEstimate {
  pairs.forEach(checkPair);
  const { observation, measuredAt, surfaceSpeed, now, confidence } = stop;
  const { width } = stop;
  const own = { discharge: measuredAt, depth: observation.depth };
  const seen = surfaceSpeed > 0 ? { surfaceSpeed } : {};
  const all: readonly StopPair[] = [{ ...own, ...seen, ...(width === undefined ? {} : { width }) }, ...pairs];
  if (all.length < 3) throw new QuantityError("pairs", "two or more besides the stop itself", pairs.length);
  const fit = <Q extends number>(
    of: (pair: StopPair) => Q | undefined,
    make: (value: number) => Q,
  ): StreamValue<Q> | null => fitted({ all, of, make, now, confidence });
  const discharges = all.map(({ discharge }) => discharge);
  const range = { min: Math.min(...discharges), max: Math.max(...discharges) };
  const depth = fit((pair) => pair.depth, metres);
  const speed = fit((pair) => pair.surfaceSpeed, metresPerSecond);
  return {
    depth: depth ?? geometryScaled(stop, "meanDepth", observation.depth, metres),
    surfaceSpeed: speed ?? geometryScaled(stop, "meanSpeed", surfaceSpeed, metresPerSecond),
    width:
      fit((pair) => pair.width, metres) ??
      (width === undefined ? null : geometryScaled(stop, "width", width, metres)),
    relations: ["LeopoldMaddock1953"],
    assumptions: speed === null ? [published] : [],
    caveats: caveatFor({ relation: "LeopoldMaddock1953", quantity: "discharge, m³/s", ...range }, now),
  };
}

const published: Assumption = {
  name: "exponent of the surface speed",
  value: "mean of many stations: fewer than three pairs say the speed",
  basis: "default",
};

interface Fitting<Q> {
  readonly all: readonly StopPair[];
  readonly of: (pair: StopPair) => Q | undefined;
  readonly make: (value: number) => Q;
  readonly now: CubicMetresPerSecond;
  readonly confidence: number;
}

/** The power through whatever notes say it; nothing where fewer than three do, or all at one discharge. */
function fitted<Q extends number>({ all, of, make, now, confidence }: Fitting<Q>): StreamValue<Q> | null {
  const noted = all.flatMap((pair) => {
    const value = of(pair);
    return value === undefined ? [] : [{ q: ln(pair.discharge), y: ln(value) }];
  });
  if (noted.length < 3) return null;
  const mean = noted.reduce((sum, { q }) => sum + q, 0) / noted.length;
  const fit = leastSquares(
    noted.map(({ q }) => [1, q - mean]),
    noted.map(({ y }) => y),
  );
  const row = [1, ln(now) - mean];
  const value = exp(
    (fit.coefficients[0] ?? Number.NaN) + (fit.coefficients[1] ?? Number.NaN) * (row[1] ?? 0),
  );
  const t = studentQuantile((1 + confidence) / 2, fit.freedom);
  const factor = exp(t * fit.deviation * Math.sqrt(1 + fit.leverage(row)));
  requireWithin("factor of uncertainty of the fitted power", factor, 1, 1e100);
  return { value: make(value), interval: { min: make(value / factor), max: make(value * factor) } };
}

function checkPair({ discharge, depth, surfaceSpeed, width }: StopPair, i: number): void {
  const n = i + 1;
  requireWithin(`discharge of pair ${n}`, discharge, 1e-6, 1e6, "m³/s");
  requireWithin(`depth of pair ${n}`, depth, 0.001, 50, "m");
  if (surfaceSpeed !== undefined) requireWithin(`surface speed of pair ${n}`, surfaceSpeed, 0.001, 10, "m/s");
  if (width !== undefined) requirePositive(`width of pair ${n}`, width, "m");
}
