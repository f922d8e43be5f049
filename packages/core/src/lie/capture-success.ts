/** How surely a drift-feeding fish takes what drifts by, and how far murky water cuts its sight. */

import { exp, log10 } from "../elementary/index.js";
import { type Metres, type MetresPerSecond, requireWithin } from "../units/index.js";
import { type Capture, reactionDistance } from "./window.js";

/** Probability that a fish takes prey that drifts past at `distance`: 1/(1 + e^(−u)),
 *  u = 1.28 − 0.0588 V + 0.383 FL − 0.0918 d/RD − 0.210 V d/RD (V cm/s, FL cm). [RosenfeldTaylor2009], as quoted in public code.
 *  Throws QuantityError for sizes not above 0, or a distance below 0.
 *  @example captureSuccess({ preyLength: millimetres(6), fishLength: centimetres(20), waterSpeed: metresPerSecond(0.3), distance: centimetres(35.34065) }) // => 0.98166 */
export function captureSuccess({
  preyLength,
  fishLength,
  waterSpeed,
  distance,
}: Omit<Capture, "greatestSpeed"> & {
  readonly waterSpeed: MetresPerSecond;
  /** From the fish, at right angles to the stream. */
  readonly distance: Metres;
}): number {
  requireWithin("speed of the water at the fish", waterSpeed, 0, 20, "m/s");
  requireWithin("distance of the prey", distance, 0, 100, "m");
  const share = distance / reactionDistance(preyLength, fishLength);
  const v = waterSpeed * 100;
  const u = 1.28 - 0.0588 * v + 0.383 * fishLength * 100 - 0.0918 * share - 0.21 * v * share;
  return 1 / (1 + exp(-u));
}

/** What murky water leaves of the reaction distance: (31.64 − 13.31 log10 NTU)/36. [GregoryNorthcote1993]
 *  as evaluated by Hayes et al. Throws QuantityError outside 0.01 to 237 NTU, where nothing is left.
 *  @example turbidityFactor(10) // => 0.50917 */
export function turbidityFactor(turbidity: number): number {
  requireWithin("turbidity", turbidity, 0.01, 237, "NTU");
  return (31.64 - 13.31 * log10(turbidity)) / 36;
}
