/** Hooks by size: the lengths of a standard hook, and its weight as a length of steel wire. */

import { type Kilograms, kilograms, type Metres, millimetres, QuantityError } from "../units/index.js";

/** Dry hooks are of fine wire, nymph hooks of strong wire. */
export type HookWire = "fine" | "strong";

export interface Hook {
  /** Straight part, from behind the eye to the bend. */
  readonly shank: Metres;
  /** From the shank to the point. */
  readonly gape: Metres;
  readonly wire: Readonly<Record<HookWire, Metres>>;
}

/** Sizes that the table holds, largest hook first. */
export const hookSizes: readonly number[] = [6, 8, 10, 12, 14, 16, 18, 20];

/** Relative half-width of the lengths: makers differ by about a size. Common practice, no source. */
export const hookLengthSpread = 0.15;
/** Relative half-width of the mass: ±10 % of wire diameter and ±5 % of wire length. Common practice, no source. */
export const hookMassSpread = 0.25;

/** Shank, gape, fine and strong wire in mm, by size. Common practice, no source, from memory. */
const millimetresBySize: readonly (readonly [number, number, number, number])[] = [
  [16.0, 7.4, 0.58, 0.66],
  [14.0, 6.5, 0.53, 0.6],
  [12.5, 5.7, 0.48, 0.55],
  [11.0, 5.0, 0.43, 0.5],
  [9.5, 4.4, 0.4, 0.46],
  [8.0, 3.7, 0.36, 0.42],
  [6.7, 3.1, 0.33, 0.38],
  [5.6, 2.6, 0.3, 0.34],
];

/** Density of carbon steel, kg/m³, from memory. */
export const steelDensity = 7850;

/** A standard hook of an even size from 6 to 20; throws QuantityError for any other. @example hook(12).shank // => 0.011 */
export function hook(size: number): Hook {
  const row = millimetresBySize[hookSizes.indexOf(size)];
  if (row === undefined) throw new QuantityError("hook size", `one of ${hookSizes.join(", ")}`, size);
  const [shank, gape, fine, strong] = row;
  return {
    shank: millimetres(shank),
    gape: millimetres(gape),
    wire: { fine: millimetres(fine), strong: millimetres(strong) },
  };
}

/** Mass of a hook: steel wire π d²/4 long by the shank, a half circle over the gape, a point of 0.4 shanks and an eye of 0.2.
 *  The proportions are common practice; ±25 % (hookMassSpread). */
export function hookMass({ shank, gape, wire }: Hook, kind: HookWire): Kilograms {
  const wireLength = 1.6 * shank + (Math.PI / 2) * gape;
  return kilograms(((steelDensity * Math.PI) / 4) * wire[kind] ** 2 * wireLength);
}
