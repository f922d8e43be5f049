/** How strongly the water shakes around its mean speed. */

import { exp } from "../elementary/index.js";
import { type Caveat, caveatFor, type Validity } from "../sources/index.js";
import { type MetresPerSecond, metresPerSecond } from "../units/index.js";

export interface TurbulenceIntensity {
  /** Standard deviation of the speed along, across and upright, m/s. */
  readonly along: MetresPerSecond;
  readonly across: MetresPerSecond;
  readonly upright: MetresPerSecond;
  readonly caveats: readonly Caveat[];
}

/** Turbulence intensities: σ/u* = 2.30, 1.63, 1.27 times e^(−z/h) along, across and upright.
 *  Valid 0.1 < z/h < 0.9 over smooth and moderately rough beds (turbulenceValidity). [NezuNakagawa1993] eq. 4.11-4.13.
 *  @example turbulenceIntensity(metresPerSecond(1), 0.5).along // => 1.3950 */
export function turbulenceIntensity(
  shearVelocity: MetresPerSecond,
  relativeHeight: number,
): TurbulenceIntensity {
  const scale = shearVelocity * exp(-relativeHeight);
  return {
    along: metresPerSecond(2.3 * scale),
    across: metresPerSecond(1.63 * scale),
    upright: metresPerSecond(1.27 * scale),
    caveats: caveatFor(turbulenceValidity, relativeHeight),
  };
}

export const turbulenceValidity: Validity = {
  relation: "NezuNakagawa1993",
  quantity: "relative height z/h",
  min: 0.1,
  max: 0.9,
};
