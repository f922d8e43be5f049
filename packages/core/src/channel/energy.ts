/** Specific energy: the depths between which a flow can choose. */

import { type Metres, metres, requirePositive, standardGravity } from "../units/index.js";
import { wetInBand } from "./conveyance.js";
import { checkFlow, criticalFor, type Flow } from "./critical.js";
import { cutAt, type InBand, piecesOf, rootsOver } from "./every-root.js";
import { requireDepth } from "./section.js";
import type { Piece } from "./survey.js";
import { wetAt } from "./wet.js";

/** E = y + α V²/2g. [Chow1959] eq. 3-3. Throws QuantityError as `sectionGeometry` does.
 *  @example specificEnergy({ section: trapezoidalSection(metres(3), 1.5), discharge: cubicMetresPerSecond(15.8923) }, metres(1.5)) // => 1.707645 */
export function specificEnergy(flow: Flow, depth: Metres): Metres {
  checkFlow(flow);
  requireDepth(flow.section, depth);
  return metres(depth + head(flow, wetAt(flow.section, depth).area));
}

function head({ discharge, gravity = standardGravity, energyCoefficient = 1 }: Flow, area: number): number {
  return (energyCoefficient * (discharge / area) ** 2) / (2 * gravity);
}

export interface LeastEnergy {
  readonly energy: Metres;
  readonly depth: Metres;
}

/** The least specific energy with which the section passes the discharge: at critical depth, or at its top if that is out of reach. */
export function minimumEnergy(flow: Flow): LeastEnergy {
  checkFlow(flow);
  let least = { energy: Number.POSITIVE_INFINITY, depth: 0 };
  for (const { band, low, high } of energyPieces(flow)) {
    for (const depth of [low, high]) {
      if (depth === 0 || depth === Number.POSITIVE_INFINITY) continue;
      const energy = depth + head(flow, wetInBand(flow.section, band, depth).area);
      if (energy < least.energy) least = { energy, depth };
    }
  }
  return { energy: metres(least.energy), depth: metres(least.depth) };
}

export type AlternateDepths =
  /** Shallowest first: supercritical, then subcritical. One only where the other is above the section. */
  | { readonly kind: "found"; readonly depths: readonly Metres[] }
  | { readonly kind: "below-minimum"; readonly minimum: LeastEnergy }
  /** The section begins to carry more by a step, and the energy lies within it. */
  | { readonly kind: "within-step"; readonly minimum: LeastEnergy };

/** Every depth at which the flow has this specific energy. Throws QuantityError for an energy not above 0.
 *  @example alternateDepths({ section: rectangularSection(metres(1)), discharge: cubicMetresPerSecond(1), gravity: 9.81 }, metres(1)).depths[0] // => 0.2630 */
export function alternateDepths(flow: Flow, energy: Metres): AlternateDepths {
  checkFlow(flow);
  requirePositive("specific energy", energy, "m");
  const excess: InBand = (band, y) => {
    const { area } = wetInBand(flow.section, band, y);
    return area > 0 ? (y + head(flow, area)) / energy - 1 : Number.POSITIVE_INFINITY;
  };
  const depths = rootsOver(excess, energyPieces(flow), 1).map(metres);
  if (depths.length > 0) return { kind: "found", depths };
  const minimum = minimumEnergy(flow);
  return { kind: energy < minimum.energy ? "below-minimum" : "within-step", minimum };
}

/** Pieces over which energy only falls or only rises. */
function energyPieces({
  section,
  discharge,
  gravity = standardGravity,
  energyCoefficient = 1,
}: Flow): readonly Piece[] {
  const critical = criticalFor(section, discharge, gravity / energyCoefficient);
  return cutAt(piecesOf(section), critical.kind === "found" ? critical.depths : []);
}
