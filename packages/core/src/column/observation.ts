/** What a person at the river can give, and what follows from it before any law of speed. */

import type { Assumption, SourceKey } from "../sources/index.js";
import {
  type Celsius,
  type Metres,
  type MetresPerSecond,
  metres,
  metresPerSecond,
  QuantityError,
  requirePositive,
  requireWithin,
  rowOf,
  type Seconds,
} from "../units/index.js";
import type { Water } from "../water/index.js";
import { type BedClass, bedClassLimits } from "./bed.js";
import type { ColumnLaw, MeasuredPoint } from "./profile.js";

export interface TimedFloat {
  readonly distance: Metres;
  readonly time: Seconds;
}

/** What a person at the river can give. Only depth and some speed are needed; the rest sharpens the answer. */
export interface Observation {
  readonly depth: Metres;
  /** Speed of the surface over the spot. */
  readonly surfaceSpeed?: MetresPerSecond;
  /** Runs of something drifting on the surface over a distance: an alternative to `surfaceSpeed`. */
  readonly timedFloats?: readonly TimedFloat[];
  /** Speeds measured at heights above the bed, two or more: used as they are. */
  readonly points?: readonly MeasuredPoint[];
  /** Grade of the bed, or its measured D84 (the size that 84 % of the stones stay below). */
  readonly bed?: BedClass | { readonly d84: Metres };
  /** Equivalent sand roughness ks; 3.5 D84 unless given. */
  readonly roughness?: Metres;
  /** Height z0 at which the log law reaches zero; overrides `roughness`. */
  readonly roughnessLength?: Metres;
  /** Coles wake strength Π of the log-wake law. */
  readonly wake?: number;
  /** m of the power law, 6 unless given. */
  readonly exponent?: number;
  /** Width of the channel: tells whether the fastest water is under the surface. */
  readonly channelWidth?: Metres;
  /** Slope of the water surface: gives the shear velocity in place of the law. */
  readonly slope?: number;
  /** Water temperature, 12 °C unless given. */
  readonly temperature?: Celsius;
  /** Water of stated properties, in place of `temperature`. */
  readonly water?: Water;
  /** Forces a law in place of the choice by h/D84. */
  readonly law?: ColumnLaw;
}

const laws: Readonly<Record<ColumnLaw, true>> = {
  log: true,
  "log-wake": true,
  dip: true,
  power: true,
  "mixing-layer": true,
  measured: true,
};

/** Throws QuantityError naming the quantity that is impossible. */
export function checkObservation(o: Observation): void {
  requireWithin("depth", o.depth, 0.01, 50, "m");
  if (o.surfaceSpeed !== undefined) requireWithin("surface speed", o.surfaceSpeed, 0, 10, "m/s");
  if (o.roughness !== undefined) requireWithin("roughness", o.roughness, 0, 10, "m");
  if (o.roughnessLength !== undefined) requirePositive("roughness length", o.roughnessLength, "m");
  if (o.wake !== undefined) requireWithin("wake strength", o.wake, -0.5, 2);
  if (o.exponent !== undefined) requireWithin("exponent of the power law", o.exponent, 1, 100);
  if (o.channelWidth !== undefined) requirePositive("channel width", o.channelWidth, "m");
  if (o.slope !== undefined) requireWithin("slope", o.slope, 0, 1);
  if (o.law !== undefined) rowOf("law", laws, o.law);
  if (typeof o.bed === "object") requireWithin("D84", o.bed.d84, 1e-6, 10, "m");
  for (const run of o.timedFloats ?? []) {
    requirePositive("distance of a timed float", run.distance, "m");
    requirePositive("time of a timed float", run.time, "s");
  }
  for (const point of o.points ?? []) {
    requireWithin("height above the bed of a measured point", point.heightAboveBed, 0, o.depth, "m");
    requireWithin("speed of a measured point", point.speed, 0, 10, "m/s");
  }
}

export interface SurfaceSpeed {
  readonly speed: MetresPerSecond;
  readonly uncertainty: MetresPerSecond | null;
  readonly relations: readonly SourceKey[];
}

export function surfaceSpeedOf(o: Observation): SurfaceSpeed {
  if (o.surfaceSpeed !== undefined) return { speed: o.surfaceSpeed, uncertainty: null, relations: [] };
  if (o.timedFloats !== undefined && o.timedFloats.length > 0) return meanOfFloats(o.timedFloats);
  const top = o.points?.reduce((a, b) => (b.heightAboveBed > a.heightAboveBed ? b : a));
  if (top !== undefined) return { speed: top.speed, uncertainty: null, relations: [] };
  throw new QuantityError("surface speed", "given, or timed floats, or measured points", undefined);
}

/** Mean speed of the runs and its standard uncertainty s/√n. [ISO748], [JCGM100] 4.2.3 */
export function meanOfFloats(runs: readonly TimedFloat[]): SurfaceSpeed {
  const speeds = runs.map((run) => run.distance / run.time);
  const n = speeds.length;
  const mean = speeds.reduce((a, b) => a + b, 0) / n;
  requireWithin("speed of the timed floats", mean, 0, 10, "m/s");
  const variance = speeds.reduce((a, v) => a + (v - mean) ** 2, 0) / (n - 1);
  return {
    speed: metresPerSecond(mean),
    uncertainty: n > 1 ? metresPerSecond(Math.sqrt(variance / n)) : null,
    relations: n > 1 ? ["ISO748", "JCGM100"] : ["ISO748"],
  };
}

export interface StoneSize {
  readonly d84: Metres | null;
  readonly relations: readonly SourceKey[];
  readonly assumptions: readonly Assumption[];
}

export function stoneSize({ bed }: Observation): StoneSize {
  if (bed === undefined) return { d84: null, relations: [], assumptions: [] };
  if (typeof bed === "object") return { d84: bed.d84, relations: [], assumptions: [] };
  const limits = rowOf("bed", bedClassLimits, bed);
  const d84 = metres(Math.sqrt(limits.min * limits.max));
  const value = `${(d84 * 1000).toPrecision(3)} mm, the geometric middle of ${bed}`;
  return { d84, relations: ["Wentworth1922"], assumptions: [{ name: "D84", value, basis: "assumption" }] };
}
