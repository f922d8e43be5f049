/** What a check finds: plain data, said in words by messages.ts. */

import type { Cast } from "../drift/index.js";
import type { Pieces, Stop } from "../setup/index.js";
import type { Tippet } from "../tackle/index.js";
import type {
  Celsius,
  Kilograms,
  Metres,
  MetresPerSecond,
  Newtons,
  Radians,
  Seconds,
} from "../units/index.js";
import type { RuleFacts } from "./rules.js";
import type { Wade } from "./wading.js";

/** stop: do not fish it so · fix: change it first · watch: it fishes, with a weakness · note: something to know or to say. */
export type Severity = "stop" | "fix" | "watch" | "note";

/** Every code, the gravest of each question first. */
export const findingCodes = [
  "dry-drowns",
  "dry-overloaded",
  "dry-barely-carries",
  "dry-pulled-under",
  "dry-floats-by-film",
  "nymph-leans",
  "nymph-towed",
  "nymph-on-bed",
  "nymph-near-bed",
  "dropper-longer-than-water",
  "nymph-above-fish",
  "nymph-below-fish",
  "run-ends-first",
  "settles-late",
  "dropper-outlasts-leader",
  "line-order-close",
  "tippet-coarse",
  "tippet-fine",
  "splash-shows",
  "nymph-in-slower-lane",
  "nymph-lands-below",
  "drag-before-settled",
  "drag-before-end",
  "wading-beyond-limit",
  "wading-near-limit",
  "water-too-warm",
  "water-nearly-too-warm",
  "water-warm",
  "rule-forbids",
  "rule-unknown",
  "rules-not-stated",
  "temperature-not-stated",
  "bed-not-stated",
  "run-not-stated",
  "fish-not-stated",
  "surface-not-stated",
  "leader-not-stated",
  "cast-not-stated",
  "slack-not-stated",
] as const;
export type FindingCode = (typeof findingCodes)[number];

interface MeasureOf<Kind extends string, Q> {
  readonly name: string;
  /** What it measures and the size of unit it is best said in: a `size` is small, a `strength` large. */
  readonly kind: Kind;
  readonly value: Q;
}

/** A named number with its dimension. */
export type Measure =
  | MeasureOf<"length", Metres>
  | MeasureOf<"dropper", Metres>
  | MeasureOf<"size", Metres>
  | MeasureOf<"speed", MetresPerSecond>
  | MeasureOf<"time", Seconds>
  | MeasureOf<"force", Newtons>
  | MeasureOf<"strength", Newtons>
  | MeasureOf<"mass", Kilograms>
  | MeasureOf<"angle", Radians>
  | MeasureOf<"temperature", Celsius>
  | MeasureOf<"number", number>;

/** A word of the message that is no number. */
export interface Parameter {
  readonly name: string;
  readonly value: string;
}

/** What a remedy does to the number that the finding turns on, where it turns on one; `left` is the severity that stays, null where the finding is gone. */
export interface Effect {
  readonly before: Measure | null;
  readonly after: Measure | null;
  readonly left: Severity | null;
}

/** What can be done without tying anything. */
export type FishingAct = "hold" | "cast" | "soften" | "run" | "slack" | "obey" | "stand" | "wait";

/** What a caller can still say. */
export type InputName =
  | "rules"
  | "temperature"
  | "bed"
  | "runLength"
  | "fish"
  | "surface"
  | "leader"
  | "cast"
  | "slack"
  | keyof RuleFacts;

/** The smallest change found that removes the finding, or else lowers it. `none`: nothing tried did. */
export type Remedy =
  | {
      readonly kind: "retie";
      readonly part: keyof Pieces;
      readonly from: string | Measure;
      readonly to: string | Measure;
      readonly pieces: Pieces;
      readonly effect: Effect;
    }
  | {
      readonly kind: "fish";
      readonly act: FishingAct;
      /** What to hold, land, run or give, where that is a number. */
      readonly to: Measure | null;
      readonly stop: CheckStop;
      readonly effect: Effect;
    }
  | { readonly kind: "supply"; readonly input: InputName }
  | { readonly kind: "none"; readonly tried: number };

export interface Finding {
  readonly code: FindingCode;
  readonly severity: Severity;
  /** What the limit rests on, `stated` for a rule of the caller; the numbers themselves rest on the grounds of the answer. */
  readonly basis: "published" | "practice" | "assumption" | "stated";
  /** The first is the number that the finding turns on. */
  readonly numbers: readonly Measure[];
  readonly parameters: readonly Parameter[];
  readonly remedy: Remedy;
}

/** What the dry is tied to. */
export interface Leader {
  /** The last length of it; its strength by material and diameter unless `breakingForce` is given. */
  readonly tippet?: Tippet;
  /** Without a knot. */
  readonly breakingForce?: Newtons;
  /** Share of its strength that its knot leaves, 0.8 unless given. */
  readonly knotShare?: number;
}

/** A stop as a check needs it. What is left out becomes a note. */
export interface CheckStop
  extends Omit<Stop, "box" | "top" | "inHand" | "leaderStrength">,
    Pick<Wade, "wader" | "footing"> {
  readonly leader?: Leader;
  /** Share of its strength that the weaker knot of the dropper leaves, 0.8 unless given. */
  readonly knotShare?: number;
  readonly cast?: Partial<Cast>;
  /** Slack of leader on the water, and how much quicker or slower its lane is than the dry's. */
  readonly slack?: Metres;
  readonly laneDifference?: MetresPerSecond;
  /** Steady upstream pull that the dry is held with; none unless given. */
  readonly held?: Newtons;
  /** What rules ask about; flies, hooks and weight come from the rig unless given. */
  readonly facts?: RuleFacts;
  /** Whether anybody stands in the water, true unless given. */
  readonly wades?: boolean;
  /** Places on the way to the stop. */
  readonly route?: readonly Pick<Wade, "depth" | "speed">[];
}
