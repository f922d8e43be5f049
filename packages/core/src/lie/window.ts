/** Where a fish holds, and the band of heights in which it takes something that drifts by. Model §7. */

import { type Column, speedAt } from "../column/index.js";
import { exp } from "../elementary/index.js";
import type { Assumption, Grounds } from "../sources/index.js";
import {
  feet,
  type HeightAboveBed,
  heightAboveBed,
  type Metres,
  type MetresPerSecond,
  metres,
  requirePositive,
  requireWithin,
} from "../units/index.js";

/** Prey and fish for the published capture geometry. */
export interface Capture {
  readonly preyLength: Metres;
  readonly fishLength: Metres;
  /** The greatest speed the fish can swim. */
  readonly greatestSpeed: MetresPerSecond;
}

export interface LieObservation {
  /** Height above the bed at which the fish holds: 12 in, or a third of the depth where that is less, unless given. */
  readonly holdingHeight?: Metres;
  /** How far up or down it moves to take: 12 in unless given. */
  readonly reach?: Metres;
  /** Computes the reach in place of `reach`. */
  readonly capture?: Capture;
}

export interface FishWindow {
  readonly low: HeightAboveBed;
  readonly high: HeightAboveBed;
  readonly holding: HeightAboveBed;
  readonly reach: Metres;
  readonly grounds: Grounds;
}

/** The window at a lie: the holding height and a reach up and down from it, cut off at bed and surface.
 *  Common practice, no source: a fish holds about 12 in off the bed and lifts as much. That it moves down as readily as up is our assumption.
 *  With `capture` the reach is √(RD² − (V RD/Vmax)²), RD = 12 PL (1 − e^(−0.2 FL)) cm (PL mm, FL cm), V the speed at the holding height;
 *  0 where V is above Vmax. [HughesDill1990] eq. 1 and 2.
 *  Throws QuantityError for a holding height above the surface, or sizes not above 0. */
export function fishWindow(column: Column, lie: LieObservation = {}): FishWindow {
  const holding = lie.holdingHeight ?? metres(Math.min(feet(1), column.depth / 3));
  requireWithin("holding height", holding, 0, column.depth, "m");
  const computed =
    lie.capture === undefined ? null : captureReach(lie.capture, speedAt(column, heightAboveBed(holding)));
  const reach = computed ?? lie.reach ?? feet(1);
  requireWithin("reach of the fish", reach, 0, 10, "m");
  return {
    low: heightAboveBed(Math.max(0, holding - reach)),
    high: heightAboveBed(Math.min(column.depth, holding + reach)),
    holding: heightAboveBed(holding),
    reach,
    grounds: {
      relations: computed === null ? [] : ["HughesDill1990"],
      assumptions: assumptionsOf(lie),
      caveats: [],
    },
  };
}

function assumptionsOf(lie: LieObservation): readonly Assumption[] {
  const taken: Assumption[] = [
    { name: "the fish moves down as far as up", value: "yes", basis: "assumption" },
  ];
  if (lie.holdingHeight === undefined) {
    taken.push({ name: "holding height", value: "12 in, or a third of the depth", basis: "practice" });
  }
  if (lie.reach === undefined && lie.capture === undefined) {
    taken.push({ name: "reach of the fish", value: "12 in", basis: "practice" });
  }
  return taken;
}

/** Distance at which a drift-feeding fish sees its prey: 12 PL (1 − e^(−0.2 FL)) cm, PL mm, FL cm. [HughesDill1990] eq. 1.
 *  @example reactionDistance(millimetres(6), centimetres(20)) // => 0.706813 */
export function reactionDistance(preyLength: Metres, fishLength: Metres): Metres {
  requirePositive("prey length", preyLength, "m");
  requirePositive("fish length", fishLength, "m");
  return metres(0.12 * (preyLength * 1000) * (1 - exp(-0.2 * (fishLength * 100))));
}

/** Greatest distance at right angles to the stream that a fish reaches before prey drifts past. [HughesDill1990] eq. 2.
 *  @example captureReach({ preyLength: millimetres(6), fishLength: centimetres(20), greatestSpeed: metresPerSecond(0.9) }, metresPerSecond(0.3)) // => 0.666389 */
export function captureReach(
  { preyLength, fishLength, greatestSpeed }: Capture,
  waterSpeed: MetresPerSecond,
): Metres {
  requirePositive("greatest speed of the fish", greatestSpeed, "m/s");
  const distance = reactionDistance(preyLength, fishLength);
  const share = waterSpeed / greatestSpeed;
  return metres(share >= 1 ? 0 : distance * Math.sqrt(1 - share * share));
}
