/** What a stream does to a sinker: a bead (sphere) and a dressed body (cylinder) on one hook. */

import { raise } from "../elementary/index.js";
import { findRoot } from "../numerics/index.js";
import {
  type CubicMetres,
  type Kilograms,
  type Metres,
  type MetresPerSecond,
  metresPerSecond,
  type Newtons,
  newtons,
  requirePositive,
  requireWithin,
  standardGravity,
} from "../units/index.js";
import type { Water } from "../water/index.js";
import { cylinderDrag } from "./cylinder-drag.js";
import { type DragLaw, dragCoefficient } from "./drag-law.js";
import { sphereDrag } from "./sphere-drag.js";

/** How the fly hangs from its line: a loop lets it fall head first, a tight knot holds it across its path. Common practice, no source. */
export type Knot = "loop" | "tight";

/** A body denser than water hung on a line: a nymph, or a split shot (a bead without a body). */
export interface Sinker {
  readonly mass: Kilograms;
  readonly volume: CubicMetres;
  /** Diameter of the bead, absent where there is none. */
  readonly bead?: Metres;
  /** Dressed body, absent for a bare shot. */
  readonly body?: { readonly length: Metres; readonly diameter: Metres };
  /** Drag of tails, hackle and dubbing over that of the bare shapes. An assumption. */
  readonly dressing: number;
  readonly knot: Knot;
  readonly beadDrag: DragLaw;
  readonly bodyDrag: DragLaw;
}

/** Drag coefficient of a long cylinder end-on, referred to its cross-section. [Hoerner1965], from memory. */
export const endOnDrag = 0.82;

/** A sinker with the published drag laws; throws QuantityError when it is impossible or has neither bead nor body. */
export function sinker(given: {
  readonly mass: Kilograms;
  readonly volume: CubicMetres;
  readonly bead?: Metres;
  readonly body?: { readonly length: Metres; readonly diameter: Metres };
  readonly dressing?: number;
  readonly knot?: Knot;
  readonly beadDrag?: DragLaw;
  readonly bodyDrag?: DragLaw;
}): Sinker {
  requireWithin("mass of the sinker", given.mass, 1e-7, 1, "kg");
  requireWithin("volume of the sinker", given.volume, 0, 1e-3, "m³");
  if (given.bead !== undefined) requireWithin("bead diameter", given.bead, 1e-5, 0.1, "m");
  if (given.body !== undefined) {
    requireWithin("body length", given.body.length, 1e-5, 1, "m");
    requireWithin("body diameter", given.body.diameter, 1e-5, 0.1, "m");
  }
  if (given.bead === undefined && given.body === undefined) requirePositive("bead or body of the sinker", 0);
  requireWithin("dressing factor", given.dressing ?? 1, 0, 20);
  return { dressing: 1, knot: "tight", beadDrag: "standard", bodyDrag: "standard", ...given };
}

/** Weight in water: (m − ρ V) g, N. Negative for a body that floats. */
export function submergedWeight(body: Sinker, water: Water): Newtons {
  return newtons((body.mass - water.density * body.volume) * standardGravity);
}

/** Added mass: 0.5 ρ V of the bead, 1.0 ρ V of the body (across its axis; taken for every direction). [Lamb1932] */
export function addedMass(body: Sinker, water: Water): number {
  const bead = (raise(body.bead ?? 0, 3) * Math.PI) / 6;
  const cylinder = body.body ? (body.body.diameter ** 2 * body.body.length * Math.PI) / 4 : 0;
  return water.density * (0.5 * bead + cylinder);
}

/** Drag over speed, N s/m: the force is this times the relative velocity.
 *  ½ρ|w| [Cd_s π d²/4 + (across) Cd_c l d_b (1 − c²) + (end-on) 0.82 π d_b²/4 c²] × dressing, c the share of the velocity along the body.
 *  `along` is c² (0 across, 1 end-on). */
export type SinkerKernel = (speed: number, along: number) => number;

/** Compiles the drag of a sinker in water. [BrownLawler2003], [SuckerBrauer1975] */
export function sinkerKernel(given: Sinker, water: Water): SinkerKernel {
  const bead = given.bead ?? 0;
  const length = given.body?.length ?? 0;
  const diameter = given.body?.diameter ?? 0;
  const half = 0.5 * water.density * given.dressing;
  const beadArea = (half * Math.PI * bead * bead) / 4;
  const acrossArea = half * length * diameter;
  const endArea = (half * endOnDrag * Math.PI * diameter * diameter) / 4;
  const beadPerSpeed = bead / water.kinematicViscosity;
  const bodyPerSpeed = diameter / water.kinematicViscosity;
  const sphere = dragCoefficient(given.beadDrag, sphereDrag);
  const cylinder = dragCoefficient(given.bodyDrag, cylinderDrag);
  return (speed, along) => {
    if (!(speed > 0)) return 0;
    let k = along * endArea;
    if (beadArea > 0) k += beadArea * sphere(beadPerSpeed * speed);
    if (acrossArea > 0 && along < 1) k += (1 - along) * acrossArea * cylinder(bodyPerSpeed * speed);
    return k * speed;
  };
}

/** How fast a sinker falls freely in still water: head first on a loop, across on a tight knot.
 *  Throws QuantityError for a body that floats.
 *  @example terminalSpeed(sinker({ mass: grams(0.14), volume: cubicMillimetres(11.5), bead: millimetres(2.8) }), waterAt(celsius(15))) // => 1.0157 */
export function terminalSpeed(body: Sinker, water: Water): MetresPerSecond {
  const weight = submergedWeight(body, water);
  requirePositive("submerged weight of the sinker", weight, "N");
  const kernel = sinkerKernel(body, water);
  const along = body.knot === "loop" ? 1 : 0;
  let high = 0.01;
  while (kernel(high, along) * high < weight && high < 1e3) high *= 2;
  return metresPerSecond(findRoot((w) => kernel(w, along) * w - weight, 0, high, 1e-13).root);
}
