/** What was taken, and what it says: plain data. */

import type { Grounds } from "../sources/index.js";
import type { Seconds } from "../units/index.js";

/** What one fly brought. A missed take is one that did not hook. */
export interface FlyTakes {
  readonly takes: number;
  /** Takes that did not hook, beside `takes`; 0 unless given. */
  readonly missed?: number;
}

/** How long, or through how many drifts, each fly was fished. */
export type Effort =
  | { readonly kind: "time"; readonly dry: Seconds; readonly nymph: Seconds }
  | { readonly kind: "drifts"; readonly dry: number; readonly nymph: number };

export interface Takes {
  readonly dry: FlyTakes;
  readonly nymph: FlyTakes;
  /** Equal for both flies unless given: they drift on one line. */
  readonly effort?: Effort;
  /** Whether a missed take counts as one, true unless given: the fish chose, the hook did not. */
  readonly countMisses?: boolean;
  /** Ratio of dry to nymph above which the dropper comes off, 3 unless given. Common practice, no source. */
  readonly threshold?: number;
  /** Probability at which a verdict is given, 0.9 unless given. */
  readonly confidence?: number;
  /** Takes that count as seen beforehand, without effort: 1/2 and 1/2 unless given. */
  readonly prior?: { readonly dry: number; readonly nymph: number };
}

export type TakesVerdict = "keep" | "cut" | "too-early";

/** How much more would decide, if both flies are fished on and takes keep coming at their present rates. */
export type MoreTakes =
  | { readonly kind: "decided" }
  | { readonly kind: "nothing-seen" }
  | { readonly kind: "beyond"; readonly takes: number }
  | {
      readonly kind: "more";
      readonly towards: "keep" | "cut";
      /** Further takes on both flies together. */
      readonly takes: number;
      /** How long that takes at the present pace, where the effort was given as time. */
      readonly time: Seconds | null;
      /** The same in drifts. */
      readonly drifts: number | null;
    };

export interface WeighedTakes {
  readonly verdict: TakesVerdict;
  readonly text: string;
  /** Probability that the true ratio is above the threshold. */
  readonly probability: number;
  /** Takes for the effort, dry over nymph; null where the nymph had none. */
  readonly observedRatio: number | null;
  /** The true ratio: its median, and the interval that holds it with probability `within`. It lies wholly above the threshold exactly when the
   *  verdict is cut, wholly below exactly when it is keep. */
  readonly ratio: {
    readonly median: number;
    readonly low: number;
    readonly high: number;
    readonly within: number;
  };
  /** What the bare rule says: cut where the observed ratio is above the threshold. */
  readonly ruleOfThumb: "keep" | "cut" | "nothing-seen";
  readonly more: MoreTakes;
  /** The fewest further takes that decide, should all of them come to one fly; null above 10,000. */
  readonly fewest: { readonly toCut: number | null; readonly toKeep: number | null };
  /** For everyone at the water, whatever the verdict. */
  readonly cautions: readonly string[];
  readonly grounds: Grounds;
}
