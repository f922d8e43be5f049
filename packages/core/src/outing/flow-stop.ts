/** A stop whose discharge changes: what is asked and what a method answers. */

import {
  type Channel,
  type DepthsFor,
  geometryExponents,
  type NormalDepth,
  type StreamValue,
} from "../channel/index.js";
import type { Observation } from "../column/index.js";
import { exp, ln } from "../elementary/index.js";
import { studentQuantile } from "../numerics/index.js";
import type { Assumption, Caveat, SourceKey } from "../sources/index.js";
import type { CubicMetresPerSecond, Metres, MetresPerSecond } from "../units/index.js";

/** What someone noted at the same stop at another discharge of the same gauge. */
export interface StopPair {
  readonly discharge: CubicMetresPerSecond;
  readonly depth: Metres;
  readonly surfaceSpeed?: MetresPerSecond;
  readonly width?: Metres;
}

/** How to get from one discharge to the other. */
export type FlowMethod =
  /** Mean exponents of many streams. */
  | { readonly by: "published-exponents" }
  /** Powers fitted to one's own notes at the stop, which is one more of them: three or more in all. */
  | { readonly by: "pairs"; readonly pairs: readonly StopPair[] }
  /** Uniform flow in a section; the stop is the deepest lane unless its station is given. */
  | { readonly by: "section"; readonly channel: Channel; readonly station?: Metres };

export interface FlowQuestion {
  /** The stop as it was measured. */
  readonly observation: Observation;
  readonly width?: Metres;
  /** At the gauge, when the stop was measured. */
  readonly measuredAt: CubicMetresPerSecond;
  /** At the gauge, now or as forecast. */
  readonly now: CubicMetresPerSecond;
  readonly method: FlowMethod;
  /** Share of the cases that the intervals are to hold, 0.9 unless given. */
  readonly confidence?: number;
}

/** What a method says: depth, speed and width, and what it rests on. */
export interface FlowEstimate {
  readonly depth: StreamValue<Metres>;
  readonly surfaceSpeed: StreamValue<MetresPerSecond>;
  readonly width: StreamValue<Metres> | null;
  readonly relations: readonly SourceKey[];
  readonly assumptions: readonly Assumption[];
  readonly caveats: readonly Caveat[];
}

/** What the section has no answer for. */
export type NoFlow =
  /** The water has left the spot: it would have to fall by more than the depth there. */
  | { readonly kind: "dry"; readonly fall: Metres }
  /** The section does not carry this discharge in uniform flow. */
  | { readonly kind: "not-carried"; readonly discharge: CubicMetresPerSecond; readonly why: WhyNotCarried };

export type WhyNotCarried = Exclude<NormalDepth["kind"] | DepthsFor["kind"], "found">;

/** The question with its defaults filled in. */
export interface MeasuredStop extends FlowQuestion {
  readonly confidence: number;
  readonly surfaceSpeed: MetresPerSecond;
}

/** How far single streams scatter about the mean exponents, as a standard deviation. An assumption. */
export const exponentScatter = 0.1;

/** A published power of the ratio of discharges, with the interval that the scatter of its exponent leaves. [LeopoldMaddock1953] */
export function geometryScaled<Q extends number>(
  { now, measuredAt, confidence }: MeasuredStop,
  power: "width" | "meanDepth" | "meanSpeed",
  measured: Q,
  make: (value: number) => Q,
): StreamValue<Q> {
  const logRatio = ln(now / measuredAt);
  const value = measured * exp(geometryExponents["at a station"][power] * logRatio);
  const spread = exp(normalQuantile(confidence) * exponentScatter * Math.abs(logRatio));
  return { value: make(value), interval: { min: make(value / spread), max: make(value * spread) } };
}

/** How many standard deviations hold a share of a normal distribution: Student's t with very many degrees of freedom, to 1e-5. */
export function normalQuantile(confidence: number): number {
  return studentQuantile((1 + confidence) / 2, 1e5);
}
