/** How often the intervals of `adjustRig` hold the truth. */

import { posteriorOf } from "./adjust-posterior.js";
import { inventTruth, type Truth } from "./adjust-truth.fixture.js";

export const revised = [
  "depth",
  "surfaceSpeed",
  "speedBelow",
  "drag",
  "treatment",
  "nymphHeight",
  "lean",
] as const;

export interface Coverage {
  /** Share of truths inside the interval of 0.9, and below the median. */
  readonly inside: Readonly<Record<keyof Truth["truth"], number>>;
  readonly underMedian: Readonly<Record<keyof Truth["truth"], number>>;
  readonly leastEffective: number;
}

export function coverageOver(cases: number): Coverage {
  const none = { depth: 0, surfaceSpeed: 0, speedBelow: 0, drag: 0, treatment: 0, nymphHeight: 0, lean: 0 };
  const inside = { ...none };
  const underMedian = { ...none };
  let leastEffective = Number.POSITIVE_INFINITY;
  for (let seed = 1; seed <= cases; seed++) {
    const { truth, ...question } = inventTruth(seed);
    const { quantities, effective } = posteriorOf(question);
    leastEffective = Math.min(leastEffective, effective);
    for (const name of revised) {
      const { lower, median, upper } = quantities[name].now;
      inside[name] += Number(truth[name] >= lower && truth[name] <= upper) / cases;
      underMedian[name] += Number(truth[name] < median) / cases;
    }
  }
  return { inside, underMedian, leastEffective };
}
