/** What an unsteady drift is asked and what it answers: plain data. */

import type { Grounds } from "../sources/index.js";
import type { HeightAboveBed, Metres, MetresPerSecond, Newtons, PerSecond, Seconds } from "../units/index.js";
import type { Settled } from "./state.js";

/** A place over the bed. Origin: where the float landed, on the bed below it. */
export interface Position {
  readonly downstream: Metres;
  readonly across: Metres;
  readonly heightAboveBed: HeightAboveBed;
}

/** How the rig lands. */
export interface Cast {
  /** Where the lowest sinker lands from the float, positive downstream. -0.6 of the length of line unless given. */
  readonly sinkerDownstream: Metres;
  /** Where it lands across the stream, positive away from the angler. */
  readonly sinkerAcross: Metres;
  /** Downward speed of the sinkers at the surface. */
  readonly entrySpeed: MetresPerSecond;
  /** Surface speed gained per metre across: u(z, y) = u(z) max(0, 1 + gradient y / u_surface). */
  readonly laneGradient: PerSecond;
}

/** Something done with the line on the way: from this moment on the float is held with this force. A mend that frees the dry is a force of 0. */
export interface Mend {
  readonly at: Seconds;
  readonly held: Newtons;
}

export interface DriftOptions {
  readonly cast?: Partial<Cast>;
  /** How far the float drifts, 6 m unless given. */
  readonly runLength?: Metres;
  /** How long at most, 60 s unless given. */
  readonly duration?: Seconds;
  /** Steady upstream pull held on the float, N. */
  readonly held?: Newtons;
  /** Changes of that pull on the way, in order of time. The settled state is that under the last one. */
  readonly mends?: readonly Mend[];
  /** Wind over the ground, positive downstream; no air acts unless given. */
  readonly wind?: MetresPerSecond;
  /** Heights between which the fish takes. Without it no second counts. */
  readonly window?: { readonly low: HeightAboveBed; readonly high: HeightAboveBed };
  /** Excess at which a second counts half, e0 of model §8; 0.3 m/s unless given. */
  readonly excessScale?: MetresPerSecond;
  /** 0.01 s unless given. */
  readonly timeStep?: Seconds;
  /** Links per section, 8 unless given. */
  readonly segments?: number;
  /** The settled state, where it is known already. */
  readonly settled?: Settled;
  /** Differences of speed below which the rest of the run is taken as it is; 0 computes every step. 1e-6 m/s unless given. */
  readonly stationary?: MetresPerSecond;
  /** Most instants of the path, 400 unless given; 0 for none. */
  readonly instants?: number;
}

export interface DriftInstant {
  readonly time: Seconds;
  readonly float: Position;
  readonly sinkers: readonly Position[];
  /** Speed of the lowest sinker less that of its own water, along the stream. */
  readonly excess: MetresPerSecond;
  readonly tensionAtFloat: Newtons;
}

export type Settling =
  | { readonly settles: true; readonly time: Seconds; readonly distance: Metres }
  | { readonly settles: false };

export interface Drift {
  readonly outcome: "run-ended" | "time-ended" | "drowned";
  readonly duration: Seconds;
  /** Travelled by the float. */
  readonly distance: Metres;
  /** When the lowest sinker came within 5 % of its settled depth for good, and how far the float had gone. */
  readonly settling: Settling;
  /** Time with any sinker inside the window. */
  readonly secondsInWindow: Seconds;
  /** Each of them weighted 1/(1 + (excess/e0)²), model §8. */
  readonly effectiveSeconds: Seconds;
  readonly firstInWindow: Seconds | null;
  readonly path: readonly DriftInstant[];
  readonly settled: Settled;
  /** Greatest relative error of a segment that is taut. */
  readonly lengthError: number;
  readonly steps: number;
  readonly grounds: Grounds;
}
