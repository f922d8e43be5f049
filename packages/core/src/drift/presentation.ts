/** Where the angler stands and casts, and what the lanes of the stream make of it: the landing, the time without drag, the end of the drift. */

import { cos, sin } from "../elementary/index.js";
import { gaussThree, monotoneCubic } from "../numerics/index.js";
import type { Grounds } from "../sources/index.js";
import {
  type Metres,
  type MetresPerSecond,
  metres,
  metresPerSecond,
  perSecond,
  QuantityError,
  type Radians,
  requirePositive,
  requireWithin,
  type Seconds,
  seconds,
} from "../units/index.js";
import type { Cast } from "./unsteady-types.js";

/** The surface speed at a distance across from the angler. */
export interface LaneSpeed {
  readonly across: Metres;
  readonly surfaceSpeed: MetresPerSecond;
}

export interface Presentation {
  /** From the angler to where the dry lands, over the water. */
  readonly distance: Metres;
  /** From straight across, positive upstream: 45° is up and across, −45° down and across. */
  readonly upstream: Radians;
  /** Two lanes or more, the nearest first; from a measurement, or from `spreadFlow`. */
  readonly lanes: readonly LaneSpeed[];
  /** Tippet from the dry to the nymph. */
  readonly dropper: Metres;
  /** How far past the dry the nymph lands, along the cast, as a share of the dropper: 1 turned over, −1 fallen back. 0.6 unless given. */
  readonly turnover?: number;
  /** Line lying loose on the water, 0 unless given. */
  readonly slack?: Metres;
}

export interface Presented {
  /** Where the dry lands from the angler. */
  readonly landing: { readonly downstream: Metres; readonly across: Metres };
  /** How the nymph lands from the dry, for `drift` and `rankSetups`. */
  readonly cast: Pick<Cast, "sinkerDownstream" | "sinkerAcross" | "laneGradient">;
  /** Surface speed where the dry lands. */
  readonly surfaceSpeed: MetresPerSecond;
  /** Mean surface speed under the line less that under the dry. */
  readonly laneDifference: MetresPerSecond;
  /** Until the slack is used up; null where line and dry drift alike. */
  readonly dragFree: Seconds | null;
  /** How far the dry drifts until the line is straight down to it. */
  readonly reach: Metres;
  /** How much quicker the water is where the nymph lands than where the dry does. */
  readonly nymphGain: MetresPerSecond;
  readonly grounds: Grounds;
}

/** A cast over lanes of different speed. The drag-free time is slack over the difference of speed between the lane of the dry and those under
 *  the line; the line is taken to lie straight from the angler to the dry, at the height of the water. Our assumption, model §6.
 *  Throws QuantityError for a distance not above 0, an angle beyond ±90°, lanes that do not rise or do not cover the cast, or a share outside −1 to 1. */
export function present(given: Presentation): Presented {
  const { distance, upstream, lanes, dropper, turnover = 0.6, slack = metres(0) } = given;
  requireWithin("distance of the cast", distance, 0.1, 60, "m");
  requireWithin("direction of the cast", upstream, -Math.PI / 2, Math.PI / 2, "rad");
  requirePositive("dropper", dropper, "m");
  requireWithin("turnover", turnover, -1, 1);
  requireWithin("slack", slack, 0, 60, "m");
  const [sine, cosine] = [sin(upstream), cos(upstream)];
  const across = distance * cosine;
  const past = turnover * dropper;
  const speed = speedAcross(lanes, [0, across, across + past * cosine]);
  const dry = speed(across);
  const underLine = meanOf(speed, across);
  const difference = underLine - dry;
  const reach = Math.sqrt((distance + slack) ** 2 - across ** 2) + distance * sine;
  return {
    landing: { downstream: metres(-distance * sine), across: metres(across) },
    cast: {
      sinkerDownstream: metres(-past * sine),
      sinkerAcross: metres(past * cosine),
      // read over a dropper on either side
      laneGradient: perSecond((speed(across + dropper) - speed(across - dropper)) / (2 * dropper)),
    },
    surfaceSpeed: metresPerSecond(dry),
    laneDifference: metresPerSecond(difference),
    dragFree: Math.abs(difference) < 1e-9 ? null : seconds(slack / Math.abs(difference)),
    reach: metres(reach),
    nymphGain: metresPerSecond(speed(across + past * cosine) - dry),
    grounds,
  };
}

const grounds: Grounds = {
  relations: ["FritschCarlson1980", "OurAssumption"],
  assumptions: [
    { name: "line on the water", value: "straight from the angler to the dry", basis: "assumption" },
    { name: "lanes beyond those given", value: "as quick as the last", basis: "assumption" },
  ],
  caveats: [],
};

/** Speed against distance across; beyond the last lane as in it, but no cast may land there. */
function speedAcross(lanes: readonly LaneSpeed[], places: readonly number[]): (across: number) => number {
  lanes.forEach(({ across, surfaceSpeed }, i) => {
    requireWithin(`speed of lane ${i + 1}`, surfaceSpeed, -5, 10, "m/s");
    const before = lanes[i - 1]?.across ?? Number.NEGATIVE_INFINITY;
    if (!(across > before))
      throw new QuantityError(`place of lane ${i + 1}`, "farther than the lane before", across);
  });
  const last = lanes.at(-1)?.across ?? 0;
  if (lanes.length < 2) throw new QuantityError("lanes", "two or more", lanes.length);
  const farthest = Math.max(...places);
  if (farthest > last + 1e-9)
    throw new QuantityError("lanes", `given as far as the cast lands, ${farthest} m`, last);
  const curve = monotoneCubic(
    lanes.map(({ across }) => across),
    lanes.map(({ surfaceSpeed }) => surfaceSpeed),
  );
  return curve.at;
}

/** Mean from the angler to a distance across; straight up or down a lane it is the speed of the lane. */
function meanOf(speed: (across: number) => number, across: number): number {
  if (across < 1e-6) return speed(across);
  const pieces = 64;
  let sum = 0;
  for (let i = 0; i < pieces; i++)
    sum += gaussThree(speed, (across * i) / pieces, (across * (i + 1)) / pieces);
  return sum / across;
}
