/** How likely each sighting is with a settled rig. The scales are our assumptions; docs/adjustments.md argues them. */

import type { Settled } from "../drift/index.js";
import { exp, hypot, ln } from "../elementary/index.js";
import {
  degrees,
  metres,
  metresPerSecond,
  QuantityError,
  requirePositive,
  requireWithin,
  seconds,
} from "../units/index.js";
import type { RigSighting, SightingScales } from "./adjust-types.js";

export const sightingScales: SightingScales = {
  ticksAtBed: 3,
  tickHeight: metres(0.05),
  strayTicks: 0.02,
  drowningTime: seconds(5),
  drowningMargin: 0.25,
  leanError: degrees(8),
  underWithin: degrees(5),
  underError: degrees(3),
  misread: 0.05,
  speedError: 0.05,
  speedFloor: metresPerSecond(0.02),
};

/** ln of the likelihood of a sighting over the greatest that any rig could give it: 0 is a rig that it fits perfectly. */
export type Likelihood = (settled: Settled) => number;

/** Compiles the likelihood of one sighting. Throws QuantityError for a sighting that nobody can make. */
export function likelihoodOf(sighting: RigSighting, scales: SightingScales, statedSpeed: number): Likelihood {
  switch (sighting.kind) {
    case "ticks":
      return ticksLikelihood(sighting, scales);
    case "dry":
      return dryLikelihood(sighting, scales);
    case "lean": {
      requireWithin("lean", sighting.lean, -Math.PI / 2, Math.PI / 2, "rad");
      return ({ lean }) => -0.5 * ((sighting.lean - lean) / scales.leanError) ** 2;
    }
    case "nymph":
      return nymphLikelihood(sighting.rides, scales);
    case "drift-time": {
      requirePositive("distance of a timed drift", sighting.distance, "m");
      requirePositive("time of a timed drift", sighting.time, "s");
      const speed = sighting.distance / sighting.time;
      requireWithin("speed of a timed drift", speed, 0, 10, "m/s");
      const error = hypot(scales.speedError * statedSpeed, scales.speedFloor);
      return ({ driftSpeed }) => -0.5 * ((speed - driftSpeed) / error) ** 2;
    }
  }
}

/** Height of the lowest sinker; line that lies on the bed counts against it. */
export function clearance({ sinkers, bed }: Settled): number {
  return (sinkers.at(-1)?.heightAboveBed ?? 0) - (bed?.lyingLine ?? 0);
}

/** Poisson, with a mean per drift of stray + at bed × e^(−clearance/height). */
function ticksLikelihood(
  { drifts, ticks }: RigSighting & { readonly kind: "ticks" },
  { ticksAtBed, tickHeight, strayTicks }: SightingScales,
): Likelihood {
  requireWhole("drifts of a sighting", drifts, 1, 1000);
  requireWhole("ticks of a sighting", ticks, 0, 10_000);
  return (settled) => {
    const mean = drifts * (strayTicks + ticksAtBed * exp(-clearance(settled) / tickHeight));
    return (ticks === 0 ? 0 : ticks * ln(mean / ticks)) - mean + ticks;
  };
}

/** Drowning at a rate of e^(−(margin − 1)/scale) per drowning time. */
function dryLikelihood(
  { outcome, after }: RigSighting & { readonly kind: "dry" },
  { drowningTime, drowningMargin }: SightingScales,
): Likelihood {
  requireWithin("time of the dry afloat", after, 0.1, 1e5, "s");
  return ({ load, reserve }) => {
    const margin = load > 0 ? reserve / load : Number.POSITIVE_INFINITY;
    const logRate = -(margin - 1) / drowningMargin - ln(drowningTime);
    const drownings = exp(logRate) * after;
    // a margin that is out of all bounds leaves a drowned dry very unlikely, not impossible
    return outcome === "floated" ? -drownings : Math.max(logRate, -700) + ln(after) + 1 - drownings;
  };
}

function nymphLikelihood(
  rides: "ahead" | "under" | "behind",
  { underWithin, underError, misread }: SightingScales,
): Likelihood {
  const logistic = (x: number): number => 1 / (1 + exp(-x));
  return ({ lean }) => {
    const behind = logistic((lean - underWithin) / underError);
    const ahead = logistic((-lean - underWithin) / underError);
    const seen = { ahead, behind, under: 1 - ahead - behind }[rides];
    return ln(misread / 3 + (1 - misread) * seen);
  };
}

/** Throws unless `value` is a whole number from `min` to `max`. */
export function requireWhole(quantity: string, value: number, min: number, max: number): void {
  if (!(Number.isInteger(value) && value >= min && value <= max))
    throw new QuantityError(quantity, `a whole number from ${min} to ${max}`, value);
}
