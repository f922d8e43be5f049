/** How fast a stream runs at each place across it: every vertical on its own balance of weight and friction. */

import type { Grounds } from "../sources/index.js";
import {
  type CubicMetresPerSecond,
  cubicMetresPerSecond,
  type MetresPerSecond,
  metresPerSecond,
  standardGravity,
} from "../units/index.js";
import { type Friction, speedLaw } from "./friction.js";
import type { CrossSection } from "./section.js";
import { type Channel, type NormalDepth, normalDepth } from "./uniform.js";
import { type Strip, stripsAcross } from "./verticals.js";

/** A strip with the mean speed over its depth. */
export interface Lane extends Strip {
  readonly meanSpeed: MetresPerSecond;
  readonly discharge: CubicMetresPerSecond;
}

export type LateralFlow =
  | {
      readonly kind: "found";
      readonly depth: Extract<NormalDepth, { kind: "found" }>["depth"];
      readonly lanes: readonly Lane[];
      /** The discharge over that of the balances alone: below 1 where banks hold back what single verticals do not feel. */
      readonly correction: number;
      readonly grounds: Grounds;
    }
  | Exclude<NormalDepth, { kind: "found" }>;

/** The balance of each vertical: ρ g d S = bed shear, so its speed is that of uniform flow with its depth d for hydraulic radius; all are then
 *  scaled to carry the discharge. Left out: the drag of neighbouring verticals on each other, which smooths over about a depth, and secondary
 *  flow in bends. [Chow1959] eq. 5-6 per vertical; the balance by verticals is our assumption.
 *  Throws QuantityError as `normalDepth` and `stripsAcross` do. */
export function lateralFlow(channel: Channel, discharge: CubicMetresPerSecond, strips = 41): LateralFlow {
  const normal = normalDepth(channel, discharge);
  if (normal.kind !== "found") return normal;
  const gravity = channel.gravity ?? standardGravity;
  const bare = stripsAcross(channel.section, normal.depth, strips).map((strip) => {
    const law = speedLaw(frictionAt(channel.section, channel.friction, strip.station), gravity);
    // no speed where the bed is rougher than the water is deep
    return { ...strip, speed: Math.max(0, law.speed(strip.depth, channel.slope)) };
  });
  const carried = bare.reduce((sum, { speed, depth, width }) => sum + speed * depth * width, 0);
  const correction = discharge / carried;
  const lanes = bare.map(({ speed, ...strip }) => ({
    ...strip,
    meanSpeed: metresPerSecond(correction * speed),
    discharge: cubicMetresPerSecond(correction * speed * strip.depth * strip.width),
  }));
  return { kind: "found", depth: normal.depth, lanes, correction, grounds };
}

const grounds: Grounds = {
  relations: ["Chow1959"],
  assumptions: [
    {
      name: "speed across the stream",
      value: "a balance of weight and friction for each vertical",
      basis: "assumption",
    },
  ],
  caveats: [],
};

function frictionAt(
  section: CrossSection,
  friction: Friction,
  station: number,
): Exclude<Friction, { law: "manning-zones" }> {
  if (friction.law !== "manning-zones") return friction;
  const zones = section.shape === "surveyed" ? (section.survey.zones ?? []) : [];
  const n = zones.findLast((zone) => zone.from <= station)?.manning ?? zones[0]?.manning ?? Number.NaN;
  return { law: "manning", n, ...(friction.units === undefined ? {} : { units: friction.units }) };
}
