/** The hydraulic jump: what it keeps (specific force) and what it loses. */

import {
  type CubicMetres,
  cubicMetres,
  type KilogramsPerCubicMetre,
  type Metres,
  metres,
  QuantityError,
  requirePositive,
  standardGravity,
  type Watts,
  watts,
} from "../units/index.js";
import { wetInBand } from "./conveyance.js";
import { checkFlow, criticalFor, type Flow, froudeNumber } from "./critical.js";
import { specificEnergy } from "./energy.js";
import { cutAt, type InBand, piecesOf, rootsOver } from "./every-root.js";
import { requireDepth } from "./section.js";
import type { Wet } from "./wet.js";
import { wetAt } from "./wet.js";

/** M = β Q²/(g A) + A ȳ, the force of the flow over ρ g. [Chow1959] eq. 3-18. */
export function specificForce(flow: Flow, depth: Metres): CubicMetres {
  checkFlow(flow);
  requireDepth(flow.section, depth);
  return cubicMetres(force(flow, wetAt(flow.section, depth)));
}

function force({ discharge, gravity = standardGravity, momentumCoefficient = 1 }: Flow, wet: Wet): number {
  return (momentumCoefficient * discharge * discharge) / (gravity * wet.area) + wet.moment;
}

export type ConjugateDepths =
  /** The other depths of the same specific force, shallowest first: one, but for sections with overbanks. */
  | { readonly kind: "found"; readonly depths: readonly Metres[] }
  /** The flow is critical: no other depth has its specific force. */
  | { readonly kind: "critical" }
  /** The other depth is above the section: the pipe fills, the survey ends. */
  | { readonly kind: "over-capacity" };

/** Every other depth of the same specific force. Bed slope and friction over the length of the jump are left out.
 *  Throws QuantityError as `sectionGeometry` does.
 *  @example conjugateDepths({ section: rectangularSection(metres(1)), discharge: cubicMetresPerSecond(10), gravity: 9.81 }, metres(1.25)).depths[0] // => 3.4616 */
export function conjugateDepths(flow: Flow, depth: Metres): ConjugateDepths {
  const asked = specificForce(flow, depth);
  const { section, discharge, gravity = standardGravity, momentumCoefficient = 1 } = flow;
  const critical = criticalFor(section, discharge, gravity / momentumCoefficient);
  const turns = critical.kind === "found" ? critical.depths : [];
  if (turns.includes(depth)) return { kind: "critical" };
  const excess: InBand = (band, y) => {
    const wet = wetInBand(section, band, y);
    return wet.area > 0 ? force(flow, wet) / asked - 1 : Number.POSITIVE_INFINITY;
  };
  // in the pieces that hold the depth itself it is the only root
  const others = cutAt(piecesOf(section), turns).filter(({ low, high }) => depth < low || depth > high);
  const depths = rootsOver(excess, others, 1).map(metres);
  return depths.length > 0 ? { kind: "found", depths } : { kind: "over-capacity" };
}

export type HydraulicJump =
  | {
      readonly kind: "jump";
      readonly before: Metres;
      readonly after: Metres;
      readonly froudeBefore: number;
      readonly froudeAfter: number;
      /** E before less E after, m. */
      readonly headLoss: Metres;
      /** ρ g Q times the loss. */
      readonly power: Watts;
    }
  /** Only supercritical flow jumps. */
  | { readonly kind: "not-supercritical"; readonly froude: number }
  | { readonly kind: "over-capacity" };

/** The jump from a supercritical depth to the first deeper conjugate.
 *  Throws QuantityError as `conjugateDepths` does, and for α and β so far apart (no stream has them) that the jump would gain head. */
export function hydraulicJump(flow: Flow, before: Metres, density: KilogramsPerCubicMetre): HydraulicJump {
  requirePositive("density", density, "kg/m³");
  const froudeBefore = froudeNumber(flow, before);
  const conjugate = conjugateDepths(flow, before);
  if (froudeBefore <= 1 || conjugate.kind === "critical") {
    return { kind: "not-supercritical", froude: froudeBefore };
  }
  const after = conjugate.kind === "found" ? conjugate.depths.find((y) => y > before) : undefined;
  if (after === undefined) return { kind: "over-capacity" };
  const loss = specificEnergy(flow, before) - specificEnergy(flow, after);
  if (loss < -1e-9 * before)
    throw new QuantityError("energy and momentum coefficients", "such that a jump loses head", loss);
  const { discharge, gravity = standardGravity } = flow;
  return {
    kind: "jump",
    before,
    after,
    froudeBefore,
    froudeAfter: froudeNumber(flow, after),
    headLoss: metres(loss),
    power: watts(density * gravity * discharge * loss),
  };
}
