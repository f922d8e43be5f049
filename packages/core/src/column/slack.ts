/** The slack behind a boulder that stands out of the water, as a plane wake: an assumption, written down so that it can be argued with. */

import { raise } from "../elementary/index.js";
import { caveatFor, type Grounds, type Validity } from "../sources/index.js";
import {
  type Metres,
  type MetresPerSecond,
  metres,
  metresPerSecond,
  requirePositive,
  requireWithin,
} from "../units/index.js";

export interface BehindBoulder {
  /** Width of the boulder across the stream. */
  readonly width: Metres;
  /** Distance downstream of its middle. */
  readonly downstream: Metres;
  /** Distance to either side of the line straight behind it. */
  readonly across: Metres;
  /** Speed of the stream beside the boulder. */
  readonly speed: MetresPerSecond;
  /** Drag coefficient of the boulder, 1 unless given. */
  readonly dragCoefficient?: number;
}

export interface Slack {
  readonly speed: MetresPerSecond;
  /** "still": so near that the wake's formula would run backwards; eddies there are not modelled and the mean is taken as 0. */
  readonly zone: "still" | "wake" | "open stream";
  /** Half of the wake's width there. */
  readonly halfWidth: Metres;
  readonly grounds: Grounds;
}

const spread = 0.18;

/** Where the wake's formula was shown to hold, in widths times drag coefficient. */
export const wakeValidity: Validity = {
  relation: "Schlichting1979",
  quantity: "distance downstream / (drag coefficient × width)",
  min: 50,
  max: Number.POSITIVE_INFINITY,
};

/** Speed in a plane turbulent wake: U (1 − √10/(18 β) (x/(Cd b))^−½ (1 − (y/B)^1.5)²), half width B = √10 β √(x Cd b), β = 0.18. [Schlichting1979]
 *  Its range begins far behind a boulder; nearer it is our assumption, and the bed's drag, which shortens a wake in shallow water, is left out:
 *  the slack is longer here than in a stream of less depth than the boulder is wide. Throws QuantityError for lengths not above 0.
 *  @example slackBehind({ width: metres(1), downstream: metres(4), across: metres(0), speed: metresPerSecond(1) }).speed // => 0.5120 */
export function slackBehind({ width, downstream, across, speed, dragCoefficient = 1 }: BehindBoulder): Slack {
  requirePositive("width of the boulder", width, "m");
  requirePositive("distance downstream", downstream, "m");
  requireWithin("speed of the stream", speed, 0, 10, "m/s");
  requirePositive("drag coefficient", dragCoefficient);
  const blocked = dragCoefficient * width;
  const halfWidth = Math.sqrt(10) * spread * Math.sqrt(downstream * blocked);
  const off = Math.abs(across) / halfWidth;
  const shape = off < 1 ? (1 - raise(off, 1.5)) ** 2 : 0;
  const deficit = (Math.sqrt(10) / (18 * spread)) * Math.sqrt(blocked / downstream) * shape;
  return {
    speed: metresPerSecond(deficit < 1 ? speed * (1 - deficit) : 0),
    zone: deficit >= 1 ? "still" : deficit > 0 ? "wake" : "open stream",
    halfWidth: metres(halfWidth),
    grounds: {
      relations: ["Schlichting1979"],
      assumptions: [
        {
          name: "slack behind a boulder",
          value: "plane wake, drag of the bed left out",
          basis: "assumption",
        },
      ],
      caveats: caveatFor(wakeValidity, downstream / blocked),
    },
  };
}
