/** The forms in which one resistance is written: V/u*, Manning's n, and the shear velocity that both are measured by. */

import { raise } from "../elementary/index.js";
import {
  type Metres,
  type MetresPerSecond,
  metresPerSecond,
  QuantityError,
  requirePositive,
  standardGravity,
} from "../units/index.js";

/** Manning's n of a V/u* at a hydraulic radius: n = R^(1/6)/(√g V/u*), SI.
 *  @example manningOf(7.2349, metres(1)) // => 0.044137 */
export function manningOf(velocityRatio: number, hydraulicRadius: Metres): number {
  requirePositive("V/u*", velocityRatio);
  requirePositive("hydraulic radius", hydraulicRadius, "m");
  return raise(hydraulicRadius, 1 / 6) / (Math.sqrt(standardGravity) * velocityRatio);
}

/** V/u* of a Manning's n (SI) at a hydraulic radius; f = 8/(V/u*)². @example velocityRatioOf(0.03, metres(10)) // => 15.6237 */
export function velocityRatioOf(n: number, hydraulicRadius: Metres): number {
  requirePositive("Manning's n", n);
  requirePositive("hydraulic radius", hydraulicRadius, "m");
  return raise(hydraulicRadius, 1 / 6) / (Math.sqrt(standardGravity) * n);
}

/** u* = √(g R S). @example shearVelocityOf(metres(1), 0.01) // => 0.31316 */
export function shearVelocityOf(hydraulicRadius: Metres, slope: number): MetresPerSecond {
  requirePositive("hydraulic radius", hydraulicRadius, "m");
  if (!(slope >= 0)) throw new QuantityError("slope", "0 or more", slope);
  return metresPerSecond(Math.sqrt(standardGravity * hydraulicRadius * slope));
}
