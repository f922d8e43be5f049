/** The water surface down a river of several reaches: which branch holds where, and where the water jumps. */

import {
  type CubicMetresPerSecond,
  type Metres,
  QuantityError,
  requirePositive,
  requireWithin,
} from "../units/index.js";
import type { Friction } from "./friction.js";
import { type Control, controlDepth, type GradualFlow, gradualFlow } from "./gradual.js";
import { slopeClass } from "./profile-class.js";
import type { CrossSection } from "./section.js";
import { type SurfaceCurve, surfaceCurve } from "./surface-curve.js";
import { type Jump, jumpAt, jumpOf, type Stage } from "./surface-jump.js";
import { pointsOf, type SurfacePoint } from "./surface-points.js";

export interface Reach {
  readonly length: Metres;
  /** Fall over length; 0 is level, below 0 rises downstream. */
  readonly slope: number;
  readonly friction: Friction;
}

/** A steady discharge down reaches of one section, from upstream to downstream. */
export interface River {
  readonly section: CrossSection;
  readonly reaches: readonly Reach[];
  readonly discharge: CubicMetresPerSecond;
  /** m/s², standard gravity unless given. */
  readonly gravity?: number;
  /** α of the kinetic energy, 1 unless given. */
  readonly energyCoefficient?: number;
  /** What holds the water where it enters, at or below critical depth: a gate, a fall, a steep reach. */
  readonly upstream?: Control;
  /** What holds the water where it leaves, at or above critical depth: a weir, a pool, a fall, a long mild reach. */
  readonly downstream?: Control;
  /** Points in each reach, both ends included: 2 to 10 000, 41 unless given. */
  readonly pointsPerReach?: number;
}

export interface SurfaceProfile {
  /** From upstream to downstream; a jump has two points at one distance. */
  readonly points: readonly SurfacePoint[];
  readonly jumps: readonly Jump[];
  /** A control that the water from the other end drowns or does not reach has no effect. */
  readonly unused: readonly ("upstream" | "downstream")[];
}

/** A part of a reach with one surface: distances from its upstream end. */
export interface Run {
  readonly flow: GradualFlow;
  readonly reachFrom: number;
  readonly reachLength: number;
  readonly from: number;
  readonly to: number;
  readonly depthAt: (distance: number) => number;
}

/** Subcritical water is followed upstream from its controls (the downstream end, and critical depth where a mild reach meets a steep one), then
 *  supercritical water downstream from its own; it jumps where the subcritical branch first has as much specific force. [Chow1959] ch. 9-11.
 *  Left out: the length of a jump, losses where reaches meet, and the weight of the water on the slope inside a jump.
 *  Throws QuantityError for no reach, a control on the wrong side of critical depth, or water that no control holds. */
export function surfaceProfile(river: River): SurfaceProfile {
  const { reaches, pointsPerReach = 41 } = river;
  if (reaches.length === 0) throw new QuantityError("reaches", "one or more", 0);
  requireWithin("points in each reach", pointsPerReach, 2, 1e4);
  reaches.forEach((reach, i) => {
    requirePositive(`length of reach ${i + 1}`, reach.length, "m");
  });
  const flows = reaches.map(({ slope, friction }) => gradualFlow({ ...river, slope, friction }));
  const stages = upstreamPass(river, flows);
  const { runs, jumps, unused } = downstreamPass(river, stages);
  return { points: pointsOf(runs, pointsPerReach), jumps, unused };
}

const runsFree = (flow: GradualFlow): boolean => slopeClass(flow) === "steep";

/** The subcritical surface of every reach, null where there is none. */
function upstreamPass({ reaches, downstream }: River, flows: readonly GradualFlow[]): readonly Stage[] {
  const stages: Stage[] = [];
  let y: number | null = null;
  let to = reaches.reduce((sum, reach) => sum + reach.length, 0);
  for (let i = reaches.length - 1; i >= 0; i--) {
    const flow = flows[i]!;
    const { length } = reaches[i]!;
    const next = flows[i + 1];
    if (next === undefined) y = downstream === undefined ? null : startBelow(downstream, flow);
    else if (y === null && runsFree(next) && !runsFree(flow)) y = flow.critical;
    const curve: SurfaceCurve | null = y === null ? null : surfaceCurve(flow, y, "subcritical", length);
    const below: SurfaceCurve | null = curve !== null && curve.length > 0 ? curve : null;
    if (below?.end === "section full")
      throw new QuantityError("depth", "below the top of the section", flow.greatest);
    y = below !== null && below.end === "end of the reach" ? below.depthAt(length) : null;
    // what the sum of the lengths rounds off is not left over upstream
    to = i === 0 ? 0 : to - length;
    stages.unshift({ flow, from: to, length, below });
  }
  return stages;
}

function startBelow(control: Control, flow: GradualFlow): number {
  const y = controlDepth(control, flow, "downstream");
  if (y < flow.critical * (1 - 1e-9))
    throw new QuantityError("depth of the downstream control", `at least critical, ${flow.critical} m`, y);
  return Math.max(y, flow.critical);
}

function startAbove(control: Control, flow: GradualFlow): number {
  const y = controlDepth(control, flow, "upstream");
  if (y > flow.critical * (1 + 1e-9))
    throw new QuantityError("depth of the upstream control", `at most critical, ${flow.critical} m`, y);
  return Math.min(y, flow.critical);
}

/** What holds from upstream to downstream. */
function downstreamPass(
  { upstream, downstream }: River,
  stages: readonly Stage[],
): Omit<SurfaceProfile, "points"> & { readonly runs: readonly Run[] } {
  const runs: Run[] = [];
  const jumps: Jump[] = [];
  const unused: ("upstream" | "downstream")[] = [];
  const first = stages[0]!;
  // the depth of shooting water where a reach begins, null where the water is held from below
  let y: number | null = upstream === undefined ? null : startAbove(upstream, first.flow);
  for (const stage of stages) {
    const { flow, from, length, below } = stage;
    const covered = below !== null && below.length >= length;
    if (y === null && !covered) {
      if (stage === first || !runsFree(flow))
        throw new QuantityError(
          stage === first ? "upstream control" : "downstream control",
          `given: nothing holds the water at ${from} m`,
          undefined,
        );
      y = flow.critical;
    }
    const above: SurfaceCurve | null = y === null ? null : surfaceCurve(flow, y, "supercritical", length);
    const at = above === null ? 0 : jumpAt(stage, above);
    if (above !== null && stage === first && at === 0) unused.push("upstream");
    if (above !== null && at > 0)
      runs.push({ flow, reachFrom: from, reachLength: length, from: 0, to: at, depthAt: above.depthAt });
    if (above !== null && at >= length) {
      y = above.depthAt(length);
      continue;
    }
    if (below === null)
      throw new QuantityError(
        "downstream control",
        `given: nothing holds the water at ${from + at} m`,
        undefined,
      );
    const depthAt = (x: number): number => below.depthAt(length - x);
    if (above !== null && at > 0) jumps.push(jumpOf(flow, from + at, above.depthAt(at), depthAt(at)));
    runs.push({ flow, reachFrom: from, reachLength: length, from: at, to: length, depthAt });
    y = null;
  }
  if (y !== null && downstream !== undefined) unused.push("downstream");
  return { runs, jumps, unused };
}
