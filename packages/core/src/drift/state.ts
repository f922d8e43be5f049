/** What a settled rig is: plain data that the solver returns and everything after it reads. */

import type { Grounds } from "../sources/index.js";
import type {
  DepthBelowSurface,
  HeightAboveBed,
  Metres,
  MetresPerSecond,
  Newtons,
  Radians,
} from "../units/index.js";

/** hanging: clear of the bed · on-bed: the lowest sinker touches · drowned: the load is beyond the reserve of the float · slack-water: no shear, it hangs plumb. */
export type Regime = "hanging" | "on-bed" | "drowned" | "slack-water";

export interface SinkerState {
  readonly heightAboveBed: HeightAboveBed;
  readonly depthBelowSurface: DepthBelowSurface;
  /** Where it is along the stream, from the float, positive downstream. */
  readonly downstreamOfFloat: Metres;
  /** Drift speed less the speed of its own water: positive when it is towed. */
  readonly excess: MetresPerSecond;
  /** Tension of the line just above it. */
  readonly tension: Newtons;
}

export interface LinePoint {
  readonly downstreamOfFloat: Metres;
  readonly heightAboveBed: HeightAboveBed;
  readonly tension: Newtons;
}

/** What the bed does to a rig that touches it. */
export interface BedContact {
  /** Upward push on everything that touches. */
  readonly reaction: Newtons;
  /** Friction on it, positive downstream. */
  readonly friction: Newtons;
  /** True when friction holds it still. */
  readonly anchored: boolean;
  /** Line that lies on the bed. */
  readonly lyingLine: Metres;
}

export interface Settled {
  readonly regime: Regime;
  readonly driftSpeed: MetresPerSecond;
  /** Drift speed less the surface speed: negative when the float rides slower than the foam. */
  readonly slip: MetresPerSecond;
  /** Angle of the chord from float to lowest sinker against the vertical, positive when the sinker trails upstream. */
  readonly lean: Radians;
  /** From the top down. */
  readonly sinkers: readonly SinkerState[];
  /** The line from the float down. */
  readonly shape: readonly LinePoint[];
  /** Pull of the line on the float: downward load, and tow (positive when the float pulls the line downstream). */
  readonly load: Newtons;
  readonly tow: Newtons;
  readonly draft: Metres;
  /** What the float can carry before it drowns, and that over the load. */
  readonly reserve: Newtons;
  readonly floatMargin: number;
  readonly bed: BedContact | null;
  /** Another steady state that the same rig also has, where one was found. */
  readonly alternative: Regime | null;
  /** What is left of the equations: force at the float, and length of the line against the depth. */
  readonly residual: { readonly force: Newtons; readonly length: Metres };
  /** Integrations of the line that the solver took. */
  readonly iterations: number;
  readonly grounds: Grounds;
}
