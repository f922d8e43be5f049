/** Columns from a gauge instead of a float: discharge, section and slope tell how deep and how fast a stream is at each place across it. */

import { type Channel, type Lane, type LateralFlow, lateralFlow } from "../channel/index.js";
import { exp } from "../elementary/index.js";
import { findRoot } from "../numerics/index.js";
import { joinGrounds } from "../sources/index.js";
import {
  type CubicMetresPerSecond,
  type Metres,
  type MetresPerSecond,
  metres,
  metresPerSecond,
  type PerSecond,
  perSecond,
  QuantityError,
  requireWithin,
  standardGravity,
} from "../units/index.js";
import { type Column, waterColumn } from "./column.js";
import type { Observation } from "./observation.js";
import { vonKarman } from "./profile.js";

/** What is known of a spot but its speed: the mean over the depth is known instead. */
export type SpotBed = Omit<Observation, "surfaceSpeed" | "timedFloats" | "points">;

/** The column whose depth mean is given: the surface speed is the mean over the ratio of its law, which for a smooth bed depends on it in turn.
 *  @example columnOfMean({ depth: metres(1), exponent: 6 }, metresPerSecond(1)).surfaceSpeed // => 1.1667 */
export function columnOfMean(spot: SpotBed, meanSpeed: MetresPerSecond): Column {
  requireWithin("mean speed", meanSpeed, 0, 10, "m/s");
  const of = (surface: number): Column => waterColumn({ ...spot, surfaceSpeed: metresPerSecond(surface) });
  let column = of(meanSpeed);
  for (let i = 0; i < 50 && Math.abs(column.meanSpeed - meanSpeed) > 1e-14 * meanSpeed; i++) {
    column = of(meanSpeed / column.surfaceRatio);
  }
  return column;
}

/** A spot in a stream that runs uniformly: its lane and the column over it. */
export interface ColumnInChannel {
  readonly lane: Lane;
  readonly column: Column;
  /** How the surface speed changes from left to right across the stream there. */
  readonly laneGradient: PerSecond;
}

export type ChannelColumns = ColumnInChannel | Exclude<LateralFlow, { kind: "found" }>;

export interface SpotInChannel {
  readonly channel: Channel;
  readonly discharge: CubicMetresPerSecond;
  /** Where across the stream; the deepest lane unless given. */
  readonly station?: Metres;
  /** What is known of the bed there. Without it the log law takes the roughness that gives the lane its speed on this slope. */
  readonly bed?: Omit<SpotBed, "depth" | "slope">;
}

/** The column at a place across a stream of known discharge, section, friction and slope: the lane of `lateralFlow` gives depth and mean speed,
 *  and the log law with mean speed V/u* = (ln(h/z0) − 1 + z0/h)/κ, u* = √(g h S), the rest. [NezuNakagawa1993]
 *  Answers the kind of normal depth where there is none. Throws QuantityError for a station outside the water. */
export function columnInChannel(spot: SpotInChannel): ChannelColumns {
  const flow = lateralFlow(spot.channel, spot.discharge);
  if (flow.kind !== "found") return flow;
  const i = laneIndex(flow.lanes, spot.station);
  const lane = flow.lanes[i]!;
  const columnOf = (one: Lane): Column => laneColumn(one, spot);
  const column = columnOf(lane);
  const left = flow.lanes[Math.max(0, i - 1)]!;
  const right = flow.lanes[Math.min(flow.lanes.length - 1, i + 1)]!;
  const difference = columnOf(right).surfaceSpeed - columnOf(left).surfaceSpeed;
  return {
    lane,
    column: { ...column, grounds: joinGrounds(flow.grounds, column.grounds) },
    laneGradient: perSecond(difference / (right.station - left.station)),
  };
}

function laneIndex(lanes: readonly Lane[], station: Metres | undefined): number {
  const better =
    station === undefined
      ? (a: Lane, b: Lane): boolean => a.depth > b.depth
      : (a: Lane, b: Lane): boolean => Math.abs(a.station - station) < Math.abs(b.station - station);
  const best = lanes.reduce((found, lane, i) => (better(lane, lanes[found]!) ? i : found), 0);
  const lane = lanes[best]!;
  if (station !== undefined && Math.abs(lane.station - station) > lane.width)
    throw new QuantityError("station", "in the water", station);
  return best;
}

function laneColumn({ depth, meanSpeed }: Lane, { channel, bed }: SpotInChannel): Column {
  const { slope, gravity = standardGravity } = channel;
  if (bed !== undefined) return columnOfMean({ ...bed, depth, slope }, meanSpeed);
  const ratio = meanSpeed / Math.sqrt(gravity * depth * slope);
  return columnOfMean({ depth, slope, roughnessLength: roughnessLengthOf(ratio, depth) }, meanSpeed);
}

/** z0 of the log law with a given V/u* over a depth. Throws QuantityError where V/u* is outside 0.01 to 60: no bed is so rough or so smooth. */
export function roughnessLengthOf(velocityRatio: number, depth: Metres): Metres {
  requireWithin("mean over shear velocity", velocityRatio, 0.01, 60);
  // ln(h/z0) − 1 + z0/h = κ V/u*, in q = ln(h/z0)
  const excess = (q: number): number => q - 1 + exp(-q) - vonKarman * velocityRatio;
  return metres(depth * exp(-findRoot(excess, 0, 2 + vonKarman * velocityRatio, 1e-14).root));
}
