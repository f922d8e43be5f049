/** Where shooting water under a tranquil surface jumps up to it. */

import { findRoot } from "../numerics/index.js";
import { type Metres, metres } from "../units/index.js";
import type { GradualFlow } from "./gradual.js";
import type { SurfaceCurve } from "./surface-curve.js";

/** Taken as of no length: its real length is about six times the depth behind it. */
export interface Jump {
  readonly distance: Metres;
  readonly before: Metres;
  readonly after: Metres;
  readonly headLoss: Metres;
}

/** One reach with its place and its two possible surfaces. */
export interface Stage {
  readonly flow: GradualFlow;
  readonly from: number;
  readonly length: number;
  readonly below: SurfaceCurve | null;
}

/** How far the shooting water gets: to where the tranquil surface first has its specific force, or to the end of the reach. */
export function jumpAt({ flow, length, below }: Stage, above: SurfaceCurve): number {
  if (below === null) return above.length;
  const begin = Math.max(0, length - below.length);
  const end = Math.min(length, above.length);
  if (begin > end) return end;
  const lead = (x: number): number => flow.force(below.depthAt(length - x)) - flow.force(above.depthAt(x));
  const steps = 32;
  let before = begin;
  // where the tranquil surface begins at critical depth its force is the least there is: it cannot lead
  if (begin === 0 && lead(0) > 0) return 0;
  for (let k = 1; k <= steps; k++) {
    const x = begin + ((end - begin) * k) / steps;
    if (lead(x) >= 0) return lead(before) >= 0 ? before : findRoot(lead, before, x, 1e-12 * length).root;
    before = x;
  }
  return end;
}

/** The jump between two depths. */
export function jumpOf(flow: GradualFlow, distance: number, before: number, after: number): Jump {
  return {
    distance: metres(distance),
    before: metres(before),
    after: metres(after),
    headLoss: metres(flow.energy(before) - flow.energy(after)),
  };
}
