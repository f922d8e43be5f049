/** How width, depth and speed of a stream change with its discharge: powers, published or fitted to one's own measurements. */

import { exp, hypot, ln, raise } from "../elementary/index.js";
import { type LinearFit, leastSquares, studentQuantile } from "../numerics/index.js";
import { type Assumption, type Caveat, caveatFor, type SourceKey } from "../sources/index.js";
import {
  type CubicMetresPerSecond,
  cubicMetresPerSecond,
  type Metres,
  type MetresPerSecond,
  metres,
  metresPerSecond,
  QuantityError,
  requirePositive,
  requireWithin,
} from "../units/index.js";

/** What was measured on one day at one station: depth is the mean over the width, speed is discharge over width and depth. */
export interface StationMeasurement {
  readonly discharge: CubicMetresPerSecond;
  readonly width: Metres;
  readonly meanDepth: Metres;
}

/** coefficient × Q^exponent, SI, with how well the exponent is known; `scatter` is the standard deviation of the natural logarithm. */
export interface GeometryPower {
  readonly coefficient: number;
  readonly exponent: number;
  readonly exponentStandardError: number | null;
  readonly scatter: number | null;
  /** Standard error of the logarithm at a discharge, of the curve itself. */
  readonly curveErrorAt: ((discharge: CubicMetresPerSecond) => number) | null;
}

/** w = a Q^b, d = c Q^f, v = k Q^m; b + f + m = 1 and a c k = 1, since w d v = Q. */
export interface HydraulicGeometry {
  readonly relation: SourceKey;
  readonly width: GeometryPower;
  readonly meanDepth: GeometryPower;
  readonly meanSpeed: GeometryPower;
  /** Measurements less two, null for published exponents. */
  readonly freedom: number | null;
  readonly discharges: { readonly min: CubicMetresPerSecond; readonly max: CubicMetresPerSecond };
  readonly assumptions: readonly Assumption[];
}

/** Mean exponents of many streams; single stations scatter about them by 0.1 each. [LeopoldMaddock1953] Downstream ones are from memory. */
export const geometryExponents: Readonly<Record<"at a station" | "downstream", GeometryExponents>> = {
  "at a station": { width: 0.26, meanDepth: 0.4, meanSpeed: 0.34 },
  downstream: { width: 0.5, meanDepth: 0.4, meanSpeed: 0.1 },
};

export interface GeometryExponents {
  readonly width: number;
  readonly meanDepth: number;
  readonly meanSpeed: number;
}

/** Powers through one measurement with published exponents. Throws QuantityError for a measurement not above 0.
 *  @example streamAt(geometryOf({ discharge: cubicMetresPerSecond(2), width: metres(10), meanDepth: metres(0.4) }, "at a station"), cubicMetresPerSecond(4)).width.value // => 11.975 */
export function geometryOf(
  measured: StationMeasurement,
  exponents: keyof typeof geometryExponents,
): HydraulicGeometry {
  checkMeasurement(measured, 1);
  const { discharge, width, meanDepth } = measured;
  const published = geometryExponents[exponents];
  const through = (value: number, exponent: number): GeometryPower => ({
    coefficient: value / raise(discharge, exponent),
    exponent,
    exponentStandardError: null,
    scatter: null,
    curveErrorAt: null,
  });
  return {
    relation: "LeopoldMaddock1953",
    width: through(width, published.width),
    meanDepth: through(meanDepth, published.meanDepth),
    meanSpeed: through(discharge / (width * meanDepth), published.meanSpeed),
    freedom: null,
    discharges: { min: discharge, max: discharge },
    assumptions: [{ name: "exponents of the hydraulic geometry", value: exponents, basis: "default" }],
  };
}

/** Powers fitted to measurements by least squares of the logarithms. The sums of exponents and the product of coefficients are 1 exactly,
 *  because speed is discharge over width and depth. [LeopoldMaddock1953]
 *  Throws QuantityError for fewer than three measurements, or all of one discharge. */
export function fitGeometry(measurements: readonly StationMeasurement[]): HydraulicGeometry {
  if (measurements.length < 3) throw new QuantityError("measurements", "three or more", measurements.length);
  measurements.forEach((one, i) => {
    checkMeasurement(one, i + 1);
  });
  const discharges = measurements.map((m) => m.discharge);
  const rows = discharges.map((q) => [1, ln(q)]);
  const fit = (value: (m: StationMeasurement) => number): GeometryPower =>
    powerOf(
      leastSquares(
        rows,
        measurements.map((m) => ln(value(m))),
      ),
    );
  return {
    relation: "LeopoldMaddock1953",
    width: fit((m) => m.width),
    meanDepth: fit((m) => m.meanDepth),
    meanSpeed: fit((m) => m.discharge / (m.width * m.meanDepth)),
    freedom: measurements.length - 2,
    discharges: {
      min: cubicMetresPerSecond(Math.min(...discharges)),
      max: cubicMetresPerSecond(Math.max(...discharges)),
    },
    assumptions: [],
  };
}

export interface StreamValue<Q> {
  readonly value: Q;
  /** Where one more measurement should lie, null for published exponents. */
  readonly interval: { readonly min: Q; readonly max: Q } | null;
}

export interface StreamState {
  readonly width: StreamValue<Metres>;
  readonly meanDepth: StreamValue<Metres>;
  readonly meanSpeed: StreamValue<MetresPerSecond>;
  /** Made where the discharge lies outside the measured ones. */
  readonly caveats: readonly Caveat[];
}

/** Width, mean depth and mean speed at a discharge, with prediction intervals where the powers were fitted.
 *  Throws QuantityError for a discharge not above 0, or a confidence outside 0.5 to 0.9999. */
export function streamAt(
  geometry: HydraulicGeometry,
  discharge: CubicMetresPerSecond,
  confidence = 0.95,
): StreamState {
  requirePositive("discharge", discharge, "m³/s");
  requireWithin("confidence", confidence, 0.5, 0.9999);
  const { freedom } = geometry;
  const t = freedom === null ? null : studentQuantile((1 + confidence) / 2, freedom);
  const read = <Q>(power: GeometryPower, make: (value: number) => Q): StreamValue<Q> => {
    const value = power.coefficient * raise(discharge, power.exponent);
    if (t === null || power.scatter === null || power.curveErrorAt === null)
      return { value: make(value), interval: null };
    const factor = exp(t * hypot(power.scatter, power.curveErrorAt(discharge)));
    requireWithin("factor of uncertainty of the fitted power", factor, 1, 1e100);
    return { value: make(value), interval: { min: make(value / factor), max: make(value * factor) } };
  };
  const range = { relation: geometry.relation, quantity: "discharge, m³/s", ...geometry.discharges };
  return {
    width: read(geometry.width, metres),
    meanDepth: read(geometry.meanDepth, metres),
    meanSpeed: read(geometry.meanSpeed, metresPerSecond),
    caveats: caveatFor(range, discharge),
  };
}

function powerOf(fit: LinearFit): GeometryPower {
  const [intercept = Number.NaN, exponent = Number.NaN] = fit.coefficients;
  return {
    coefficient: exp(intercept),
    exponent,
    exponentStandardError: fit.standardErrors[1] ?? null,
    scatter: fit.deviation,
    curveErrorAt: (q) => fit.deviation * Math.sqrt(fit.leverage([1, ln(q)])),
  };
}

function checkMeasurement({ discharge, width, meanDepth }: StationMeasurement, number: number): void {
  requirePositive(`discharge of measurement ${number}`, discharge, "m³/s");
  requirePositive(`width of measurement ${number}`, width, "m");
  requirePositive(`mean depth of measurement ${number}`, meanDepth, "m");
}
