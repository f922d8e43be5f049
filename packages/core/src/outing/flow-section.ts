/** A stop at another discharge, from a section of the stream with its slope and resistance. */

import { type Channel, type Lane, type LateralFlow, lateralFlow, sectionGeometry } from "../channel/index.js";
import type { Assumption } from "../sources/index.js";
import {
  type CubicMetresPerSecond,
  cubicMetresPerSecond,
  type Metres,
  metres,
  metresPerSecond,
  QuantityError,
} from "../units/index.js";
import { type FlowEstimate, type MeasuredStop, type NoFlow, normalQuantile } from "./flow-stop.js";

/** Relative standard uncertainty of the ratio of the discharges. An assumption. */
const ratioUncertainty = 0.07;

interface InSection {
  readonly channel: Channel;
  readonly station?: Metres;
}

type Lanes = Extract<LateralFlow, { kind: "found" }>;

/** The water at the stop rises as uniform flow in the section rises; its speed goes with the mean speed of its lane. [Chow1959] */
export function bySection(stop: MeasuredStop, section: InSection): FlowEstimate | NoFlow {
  const { observation, surfaceSpeed, measuredAt, now, confidence } = stop;
  const before = lanesAt(section, measuredAt);
  if (before.kind === "not-carried") return before;
  const after = lanesAt(section, now);
  if (after.kind === "not-carried") return after;
  const lane = laneAt(before, section);
  const depthAt = ({ depth }: Lanes): number => observation.depth + depth - before.depth;
  if (!(depthAt(after) > 0.01)) return { kind: "dry", fall: metres(before.depth - after.depth) };
  const speedAt = (lanes: Lanes): number =>
    (surfaceSpeed * laneAt(lanes, section).meanSpeed) / lane.meanSpeed;
  const widthAt = ({ depth }: Lanes): number => sectionGeometry(section.channel.section, depth).topWidth;
  const factor = 1 + normalQuantile(confidence) * ratioUncertainty;
  const ends = [now / factor, now * factor].flatMap((discharge) => {
    const lanes = lanesAt(section, cubicMetresPerSecond(discharge));
    return lanes.kind === "found" && depthAt(lanes) > 0 ? [lanes] : [];
  });
  const value = <Q>(of: (lanes: Lanes) => number, make: (x: number) => Q) => ({
    value: make(of(after)),
    interval: ends.length < 2 ? null : intervalOf(ends.map(of), make),
  });
  return {
    depth: value(depthAt, metres),
    surfaceSpeed: value(speedAt, metresPerSecond),
    width: value(widthAt, metres),
    relations: before.grounds.relations,
    assumptions: [...before.grounds.assumptions, ...assumptionsOf(lane, observation.depth)],
    caveats: [],
  };
}

function intervalOf<Q>(values: readonly number[], make: (x: number) => Q): { min: Q; max: Q } {
  return { min: make(Math.min(...values)), max: make(Math.max(...values)) };
}

function lanesAt(
  { channel }: InSection,
  discharge: CubicMetresPerSecond,
): Lanes | Extract<NoFlow, { kind: "not-carried" }> {
  const flow = lateralFlow(channel, discharge);
  return flow.kind === "found" ? flow : { kind: "not-carried", discharge, why: flow.kind };
}

/** The lane of the stop: at its station of a survey, else the deepest. */
function laneAt({ lanes }: Lanes, { channel, station }: InSection): Lane {
  if (station !== undefined && channel.section.shape !== "surveyed")
    throw new QuantityError("station", "given with a surveyed section only", station);
  const nearer = (a: Lane, b: Lane): boolean =>
    station === undefined ? a.depth > b.depth : Math.abs(a.station - station) < Math.abs(b.station - station);
  const best = lanes.reduce((found, lane) => (nearer(lane, found) ? lane : found));
  if (station !== undefined && Math.abs(best.station - station) > best.width)
    throw new QuantityError("station", "in the water", station);
  return best;
}

function assumptionsOf(lane: Lane, measured: number): readonly Assumption[] {
  const spread: Assumption = {
    name: "uncertainty of the ratio of discharges",
    value: `${100 * ratioUncertainty} % standard`,
    basis: "assumption",
  };
  if (Math.abs(lane.depth / measured - 1) <= 0.2) return [spread];
  const apart = `the section gives ${lane.depth.toFixed(2)} m where ${measured.toFixed(2)} m were measured`;
  return [spread, { name: "depth at the stop", value: apart, basis: "assumption" }];
}
