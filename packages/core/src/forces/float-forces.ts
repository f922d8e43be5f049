/** What holds a dry fly up, how deep it sits, and what the stream and the wind do to it. */

import {
  type Kilograms,
  type Metres,
  metres,
  type Newtons,
  newtons,
  requirePositive,
  requireWithin,
  standardGravity,
} from "../units/index.js";
import type { Water } from "../water/index.js";

/** A floating body at the surface, as the box that encloses what the water touches. Hackle tips and tails outside it carry nothing. */
export interface Float {
  readonly length: Metres;
  readonly width: Metres;
  readonly height: Metres;
  /** Share of the box that the body fills; π/4, an upright elliptic cylinder, unless given. */
  readonly fill: number;
  /** Share of the filled volume that keeps water out: 1 for closed foam, less for yarn, hair and hackle. An assumption. */
  readonly buoyantShare: number;
  readonly mass: Kilograms;
  /** How well the dressing repels water: 0 soaked, 1 freshly dressed. Scales the support of the film. An assumption. */
  readonly treatment: number;
  /** Drag coefficient of the wetted side. An assumption. */
  readonly drag: number;
}

/** Ratio of the side that the stream sees, averaged over all headings, to the broad side. */
const yawAverage = 2 / Math.PI;
/** Density of air at 15 °C and 1 atm, kg/m³ (International Standard Atmosphere, from memory). */
const airDensity = 1.225;

/** A float with the usual shares; throws QuantityError for impossible sizes. */
export function float(given: {
  readonly length: Metres;
  readonly width: Metres;
  readonly height: Metres;
  readonly fill?: number;
  readonly buoyantShare?: number;
  readonly mass: Kilograms;
  readonly treatment?: number;
  readonly drag?: number;
}): Float {
  for (const side of ["length", "width", "height"] as const) {
    requireWithin(`${side} of the float`, given[side], 1e-4, 1, "m");
  }
  requireWithin("mass of the float", given.mass, 0, 1, "kg");
  requireWithin("fill of the float", given.fill ?? 1, 0.01, 1);
  requireWithin("buoyant share of the float", given.buoyantShare ?? 1, 0.001, 1);
  requireWithin("treatment of the float", given.treatment ?? 1, 0, 1);
  requirePositive("drag coefficient of the float", given.drag ?? 1);
  return { fill: Math.PI / 4, buoyantShare: 1, treatment: 1, drag: 1.1, ...given };
}

/** The forces on a float in plain numbers, N, m and m/s. */
export interface FloatKernel {
  readonly weight: number;
  /** What the body alone can carry beyond its weight, N; negative for a body that sinks without the film. */
  readonly buoyantReserve: number;
  /** What the film adds, N. */
  readonly film: number;
  readonly height: number;
  /** Draft under a load: (weight + load)/(ρ g length width fill buoyantShare), at most the height. */
  readonly draft: (load: number) => number;
  /** ½ρ Cd length (2/π) draft |w| w. */
  readonly dragAt: (speed: number, draft: number) => number;
  /** ½ρ_air Cd length (2/π) (height − draft) |w| w. */
  readonly windageAt: (speed: number, draft: number) => number;
}

/** Compiles the forces on a float in water. */
export function floatKernel(given: Float, water: Water): FloatKernel {
  const side = yawAverage * given.length;
  const perDraft =
    water.density * standardGravity * given.length * given.width * given.fill * given.buoyantShare;
  const weight = given.mass * standardGravity;
  return {
    weight,
    buoyantReserve: perDraft * given.height - weight,
    film: water.surfaceTension * 2 * (given.length + given.width) * given.treatment,
    height: given.height,
    draft: (load) => Math.min(given.height, Math.max(0, (weight + load) / perDraft)),
    dragAt: (speed, draft) => 0.5 * water.density * given.drag * side * draft * Math.abs(speed) * speed,
    windageAt: (speed, draft) =>
      0.5 * airDensity * given.drag * side * (given.height - draft) * Math.abs(speed) * speed,
  };
}

/** What a float can carry before it drowns: ρ g V − weight, plus film support γ × waterline perimeter × treatment, N.
 *  @example floatReserve(float({ length: millimetres(22), width: millimetres(5), height: millimetres(4.5), mass: grams(0.1), treatment: 0 }), waterAt(celsius(15))) // => 0.0028285 */
export function floatReserve(given: Float, water: Water): Newtons {
  const kernel = floatKernel(given, water);
  return newtons(Math.max(0, kernel.buoyantReserve + kernel.film));
}

/** How deep a float sits under a load, m. */
export function floatDraft(given: Float, water: Water, load: Newtons): Metres {
  return metres(floatKernel(given, water).draft(load));
}
