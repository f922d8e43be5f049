/** How surely a drift-feeding fish takes what drifts by, and how far murky water cuts its sight. */

import { exp, ln, log10 } from "../elementary/index.js";
import { caveatFor, type Grounds } from "../sources/index.js";
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

/** Two points of the speed of the water, m/s, and the share of passing prey taken. [Piccolo2008] */
const [slow, quick] = [
  { speed: 0.29, share: 0.65 },
  { speed: 0.61, share: 0.1 },
] as const;

/** Probability that juvenile coho and steelhead take what drifts by: 0.65 at 0.29 m/s, 0.10 at 0.61 m/s. [Piccolo2008], as quoted in public
 *  code. That the logarithm of the odds is straight in the speed between these two is an assumption; outside them the value has a caveat.
 *  Speed 0 to 20 m/s, or QuantityError.
 *  @example juvenileCapture(metresPerSecond(0.45)).probability // => 0.31236 */
export function juvenileCapture(waterSpeed: MetresPerSecond): {
  readonly probability: number;
  readonly grounds: Grounds;
} {
  requireWithin("speed of the water at the fish", waterSpeed, 0, 20, "m/s");
  const odds = (share: number): number => ln(share / (1 - share));
  const way = (waterSpeed - slow.speed) / (quick.speed - slow.speed);
  const u = odds(slow.share) + way * (odds(quick.share) - odds(slow.share));
  const range = {
    relation: "Piccolo2008",
    quantity: "speed of the water",
    min: slow.speed,
    max: quick.speed,
  } as const;
  return {
    probability: 1 / (1 + exp(-u)),
    grounds: {
      relations: ["Piccolo2008"],
      assumptions: [{ name: "between two speeds", value: "straight in log odds", basis: "assumption" }],
      caveats: caveatFor(range, waterSpeed),
    },
  };
}

/** What murky water leaves of the reaction distance: (31.64 − 13.31 log10 NTU)/36. [GregoryNorthcote1993]
 *  as evaluated by Hayes et al. Throws QuantityError outside 0.01 to 237 NTU, where nothing is left.
 *  @example turbidityFactor(10) // => 0.50917 */
export function turbidityFactor(turbidity: number): number {
  requireWithin("turbidity", turbidity, 0.01, 237, "NTU");
  return (31.64 - 13.31 * log10(turbidity)) / 36;
}
