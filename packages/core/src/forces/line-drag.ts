/** What a stream does to a thin line: the cross-flow principle. */

import {
  type KilogramsPerCubicMetre,
  type Metres,
  requirePositive,
  requireWithin,
  standardGravity,
} from "../units/index.js";
import type { Water } from "../water/index.js";
import { cylinderDrag } from "./cylinder-drag.js";
import { type DragLaw, dragCoefficient } from "./drag-law.js";

/** A length of round line. Bending is neglected: for nylon at tippet diameters √(EI/T) is a few centimetres at 1 mN. */
export interface Line {
  readonly length: Metres;
  readonly diameter: Metres;
  readonly density: KilogramsPerCubicMetre;
  /** Law of the drag across the line. */
  readonly normalDrag: DragLaw;
  /** Skin friction coefficient along the line, referred to its whole surface. */
  readonly tangentialDrag: number;
}

/** Skin friction of a line along the stream. [Hoerner1965] */
export const lineSkinFriction = 0.02;

/** A line with the published drag laws; throws QuantityError for impossible sizes.
 *  @example line({ length: metres(1), diameter: millimetres(0.15), density: kilogramsPerCubicMetre(1140) }).tangentialDrag // => 0.02 */
export function line(given: {
  readonly length: Metres;
  readonly diameter: Metres;
  readonly density: KilogramsPerCubicMetre;
  readonly normalDrag?: DragLaw;
  readonly tangentialDrag?: number;
}): Line {
  requireWithin("length of the line", given.length, 1e-3, 100, "m");
  requireWithin("diameter of the line", given.diameter, 1e-6, 0.01, "m");
  requireWithin("density of the line", given.density, 900, 3000, "kg/m³");
  return { normalDrag: "standard", tangentialDrag: lineSkinFriction, ...given };
}

/** The forces on one metre of a line in plain numbers, for kernels that ask many times.
 *  Drag per length across the line is `normal(|w_n|) w_n`, along it `tangential |w_t| w_t`; `weight` is submerged weight per length, N/m. */
export interface LineKernel {
  /** ½ρ d Cd(w_n d/ν) |w_n|, N s/m². [Hoerner1965], [SuckerBrauer1975] */
  readonly normal: (normalSpeed: number) => number;
  /** ½ρ π d Cf, N s²/m³. */
  readonly tangential: number;
  readonly weight: number;
}

/** Compiles the forces on a line in water. Throws QuantityError for a line lighter than the water: it would float, which is not modelled. */
export function lineKernel(given: Line, water: Water): LineKernel {
  const d = given.diameter;
  const area = (Math.PI * d * d) / 4;
  const excess = given.density - water.density;
  if (excess < -1e-9 * water.density)
    requirePositive("density of the line less that of the water", excess, "kg/m³");
  const coefficient = dragCoefficient(given.normalDrag, cylinderDrag);
  const half = 0.5 * water.density * d;
  const perSpeed = d / water.kinematicViscosity;
  return {
    normal: (speed) => (speed > 0 ? half * coefficient(speed * perSpeed) * speed : 0),
    tangential: 0.5 * water.density * Math.PI * d * given.tangentialDrag,
    weight: Math.max(0, excess) * standardGravity * area,
  };
}
