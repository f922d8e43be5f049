/** The direct step method: the distance between chosen depths of a gradually varied flow, as it is done by hand. */

import { type Metres, type MetresPerSecond, metres, metresPerSecond, QuantityError } from "../units/index.js";
import { gradualFlow, type ReachFlow } from "./gradual.js";
import { requireDepth } from "./section.js";

/** How the friction slopes of the two ends of a step become one: their mean, geometric or harmonic mean, or the slope of the mean conveyance. */
export type SlopeAverage = "arithmetic" | "geometric" | "harmonic" | "conveyance";

export interface DirectStep {
  readonly depth: Metres;
  readonly speed: MetresPerSecond;
  /** Depth and velocity head, m. */
  readonly specificEnergy: Metres;
  readonly frictionSlope: number;
  /** Along the bed from the first depth, downstream positive. */
  readonly distance: Metres;
}

/** Δx = (E2 − E1)/(S0 − mean Sf), E = y + α V²/2g, summed from the first depth. [Chow1959] sec. 10-2.
 *  The method is second order: steps must shrink near normal depth, where the last hundredth of the depth can hold a fifth of the length.
 *  Throws QuantityError for fewer than two depths, or a step in which friction takes just what the bed gives. */
export function directStep(
  flow: ReachFlow,
  depths: readonly Metres[],
  average: SlopeAverage = "arithmetic",
): readonly DirectStep[] {
  if (depths.length < 2) throw new QuantityError("depths of the steps", "two or more", depths.length);
  const gradual = gradualFlow(flow);
  let distance = 0;
  let before: { readonly energy: number; readonly slope: number } | undefined;
  return depths.map((depth) => {
    requireDepth(flow.section, depth);
    const energy = gradual.energy(depth);
    const slope = gradual.frictionSlope(depth);
    if (before !== undefined) {
      const excess = flow.slope - averages[average](before.slope, slope);
      if (excess === 0) throw new QuantityError(`step to ${depth} m`, "away from normal depth", excess);
      distance += (energy - before.energy) / excess;
    }
    before = { energy, slope };
    return {
      depth,
      speed: metresPerSecond(gradual.speed(depth)),
      specificEnergy: metres(energy),
      frictionSlope: slope,
      distance: metres(distance),
    };
  });
}

const averages: Readonly<Record<SlopeAverage, (a: number, b: number) => number>> = {
  arithmetic: (a, b) => (a + b) / 2,
  geometric: (a, b) => Math.sqrt(a * b),
  harmonic: (a, b) => (2 * a * b) / (a + b),
  // K goes as 1/√Sf
  conveyance: (a, b) => (2 / (1 / Math.sqrt(a) + 1 / Math.sqrt(b))) ** 2,
};
