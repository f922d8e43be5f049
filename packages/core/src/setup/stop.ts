/** What a ranking is asked and what it answers: plain data. */

import type { Column } from "../column/index.js";
import type { Cast, Drift, HoldTarget, Settled, Settling } from "../drift/index.js";
import type { FishWindow, LieObservation } from "../lie/index.js";
import type { Rig } from "../rig/index.js";
import type { Grounds } from "../sources/index.js";
import type { Box, Dry, Nymph, Tippet } from "../tackle/index.js";
import type { Metres, MetresPerSecond, Newtons, Seconds } from "../units/index.js";

/** How the surface shows a splash. Common practice, no source. */
export type SurfaceState = "glassy" | "rippled" | "broken";

/** Four pieces that make a rig. */
export interface Pieces {
  readonly dry: Dry;
  readonly nymph: Nymph;
  readonly tippet: Tippet;
  /** Length of tippet between the flies. */
  readonly dropper: Metres;
}

/** A stop of the day: the water, the fish, the box, and how the drift is made. */
export interface Stop {
  readonly column: Column;
  readonly lie?: LieObservation;
  /** The general box unless given. */
  readonly box?: Box;
  /** Length of the drift, 6 m unless given. */
  readonly runLength?: Metres;
  readonly cast?: Partial<Cast>;
  /** rippled unless given. */
  readonly surface?: SurfaceState;
  /** Least reserve over load, 1.5 unless given. An assumption. */
  readonly leastMargin?: number;
  /** Excess at which a second counts half, 0.3 m/s unless given. */
  readonly excessScale?: MetresPerSecond;
  readonly wind?: MetresPerSecond;
  /** Breaking force of what the dry is tied to; the dropper has to break first. */
  readonly leaderStrength?: Newtons;
  /** The rig someone has on: judged and placed among the others. */
  readonly inHand?: Pieces;
  /** Setups to return, 5 unless given. */
  readonly top?: number;
}

export type CautionCode =
  | "two-flies-rule-unknown"
  | "leader-strength-unknown"
  | "margin-below-least"
  | "margin-thin"
  | "leans-far"
  | "towed-fast"
  | "splash-on-glassy-water"
  | "does-not-settle"
  | "touches-bed"
  | "drowns"
  | "close-to-bed"
  | "longer-than-deep"
  | "outside-window"
  | "dropper-may-outlast-leader";

export interface Caution {
  readonly code: CautionCode;
  /** Without lengths or strengths, so that it reads in any system of units. */
  readonly text: string;
}

export type ForceName = "sinker-weight" | "sinker-drag" | "line-drag" | "float-drag";

export interface Why {
  readonly dominant: ForceName;
  /** Size of each force on the settled rig, the greatest first. */
  readonly forces: readonly { readonly name: ForceName; readonly size: Newtons }[];
  /** Forces in mN, angles in degrees: everyday units at this size in any system. */
  readonly text: string;
}

/** The single change of one piece that would gain most. */
export interface Change {
  readonly part: keyof Pieces;
  /** The pieces once it is made. */
  readonly to: Pieces;
  /** Effective seconds gained. */
  readonly gain: Seconds;
  readonly cost: string;
}

/** One rig judged for one stop. */
export interface Judgement extends Pieces {
  readonly rig: Rig;
  readonly outcome: Drift["outcome"];
  readonly settled: Settled;
  readonly settling: Settling;
  readonly secondsInWindow: Seconds;
  readonly effectiveSeconds: Seconds;
  readonly floatMargin: number;
  /** Mass that hits the water times its entry speed, kg m/s. */
  readonly splash: number;
  readonly grounds: Grounds;
}

export interface Setup extends Judgement {
  /** 1 is the best. */
  readonly place: number;
  /** False where the place of the rig in hand is by estimate, below the setups judged in full. */
  readonly placeIsExact: boolean;
  readonly hold: HoldTarget;
  /** How far upstream of the fish the dry has to land so that the nymph has settled when it gets there; null where it never settles. */
  readonly landAbove: Metres | null;
  readonly cautions: readonly Caution[];
  readonly why: Why;
  readonly next: Change | null;
}

export type RefusalReason =
  | "float-margin"
  | "dropper-longer-than-depth"
  | "dropper-outlasts-leader"
  | "never-in-window";

export interface Ranking {
  readonly setups: readonly Setup[];
  readonly inHand: Setup | null;
  readonly candidates: number;
  readonly refused: readonly { readonly reason: RefusalReason; readonly count: number }[];
  readonly window: FishWindow;
  /** For everyone at the water, whatever the setup. */
  readonly cautions: readonly string[];
  /** Solver runs that the answer took. */
  readonly work: { readonly curves: number; readonly settled: number; readonly drifts: number };
  readonly grounds: Grounds;
}
