/** What was seen of a rig on the water, and what it says of both: plain data. */

import type { Column, Observation } from "../column/index.js";
import type { Regime } from "../drift/index.js";
import type { LieObservation } from "../lie/index.js";
import type { Change, Pieces, Stop } from "../setup/index.js";
import type { Grounds } from "../sources/index.js";
import type { HeightAboveBed, Metres, MetresPerSecond, Newtons, Radians, Seconds } from "../units/index.js";

/** One thing that a person saw. */
export type RigSighting =
  /** Ticks of the nymph on the bed, counted over some drifts; none is a sighting too. */
  | { readonly kind: "ticks"; readonly drifts: number; readonly ticks: number }
  /** The dry went under so long after it landed, or floated at least so long. */
  | { readonly kind: "dry"; readonly outcome: "drowned" | "floated"; readonly after: Seconds }
  /** Angle of the dropper off plumb, positive with the nymph upstream of the dry. */
  | { readonly kind: "lean"; readonly lean: Radians }
  /** Where the nymph rode: ahead of the dry (overtaking it), under it, or behind. */
  | { readonly kind: "nymph"; readonly rides: "ahead" | "under" | "behind" }
  /** How long the dry took over a distance. */
  | { readonly kind: "drift-time"; readonly distance: Metres; readonly time: Seconds };

/** Relative spread (standard deviation of the logarithm) of what is uncertain; 0 holds it fixed. */
export interface RigUncertainty {
  /** 0.1 unless given. */
  readonly depth?: number;
  /** That of the timed floats, where there were several, but at least 0.03; 0.1 unless given. */
  readonly surfaceSpeed?: number;
  /** Of the parameter of the law: roughness length 0.7, exponent 0.3, size of the stones 0.35 unless given. Measured points are taken as they are. */
  readonly profile?: number;
  /** Of the drag of the dressed nymph: 0.3 unless given. */
  readonly drag?: number;
  /** Of the exponent e of a treatment t^e about the stated t: 0.7 unless given. */
  readonly treatment?: number;
}

/** What a sighting is worth. Our assumptions, all of them. */
export interface SightingScales {
  /** Ticks per drift of a nymph that just touches: 3. */
  readonly ticksAtBed: number;
  /** Height in which they fall by e: 0.05 m. */
  readonly tickHeight: Metres;
  /** Ticks per drift that are none: 0.02. */
  readonly strayTicks: number;
  /** Mean time in which a dry drowns whose reserve is just its load: 5 s. */
  readonly drowningTime: Seconds;
  /** Float margin in which that time grows by e: 0.25. */
  readonly drowningMargin: number;
  /** Standard error of an angle by eye: 8°. */
  readonly leanError: Radians;
  /** Angle within which a nymph is said to ride under the dry, 5°, and how softly that ends, 3°. */
  readonly underWithin: Radians;
  readonly underError: Radians;
  /** Share of such statements that are random: 0.05. */
  readonly misread: number;
  /** Standard error of a timed drift: this share, 0.05, of the stated surface speed, and beside it 0.02 m/s. */
  readonly speedError: number;
  readonly speedFloor: MetresPerSecond;
}

export interface AdjustQuestion
  extends Pick<Stop, "cast" | "runLength" | "excessScale" | "leastMargin" | "wind" | "box"> {
  /** The water as it was taken to be. */
  readonly observation: Observation;
  /** The rig that was fished. */
  readonly inHand: Pieces;
  /** What was seen, 1 to 20. */
  readonly seen: readonly RigSighting[];
  readonly lie?: LieObservation;
  readonly uncertainty?: RigUncertainty;
  readonly scales?: Partial<SightingScales>;
  /** Settled rigs computed, 400 unless given. */
  readonly samples?: number;
  /** 1 unless given. */
  readonly seed?: number;
}

/** A quantity by its distribution: `lower` to `upper` holds it with probability 0.9. */
export interface Spread<Q extends number = number> {
  readonly mean: Q;
  readonly lower: Q;
  readonly median: Q;
  readonly upper: Q;
}

export interface Revision<Q extends number = number> {
  readonly before: Spread<Q>;
  readonly now: Spread<Q>;
}

export interface RevisedQuantities {
  readonly depth: Revision<Metres>;
  readonly surfaceSpeed: Revision<MetresPerSecond>;
  /** Speed at a fifth of the depth over that of the surface. */
  readonly speedBelow: Revision;
  /** Factor on the drag of the dressed nymph. */
  readonly drag: Revision;
  /** How well the dry repels water. */
  readonly treatment: Revision;
  readonly nymphHeight: Revision<HeightAboveBed>;
  readonly lean: Revision<Radians>;
}

/** A side of a quantity that was likely before and is not now. */
export interface RuledOut {
  readonly quantity: keyof RevisedQuantities;
  readonly side: "above" | "below";
  /** Probability beyond the bound: the end of the interval now. */
  readonly before: number;
  readonly now: number;
  readonly text: string;
}

/** One change of one thing. `dressing` is the same dry dressed anew, `hold` a steady upstream pull. */
export interface RigChange {
  readonly part: keyof Pieces | "dressing" | "hold";
  readonly to: Pieces;
  readonly held: Newtons | null;
  /** Effective seconds gained, the mean over the posterior. */
  readonly gain: Seconds;
  /** Share of the posterior in which it gains at all. */
  readonly gainsIn: number;
  readonly cost: Change["cost"];
}

export interface AdjustedRig {
  readonly quantities: RevisedQuantities;
  /** The water with the medians put in, and its column. */
  readonly revised: Observation;
  readonly column: Column;
  /** The rig with the medians put in. */
  readonly inHand: Pieces;
  readonly regimes: readonly { readonly regime: Regime; readonly before: number; readonly now: number }[];
  readonly ruledOut: readonly RuledOut[];
  /** How well what was seen is explained. */
  readonly fit: {
    /** For each sighting, in order: its likelihood over the greatest it could have, mean over the posterior. */
    readonly sightings: readonly number[];
    /** The same for all together times that of the water and the rig beforehand over its greatest: the best that was tried. */
    readonly best: number;
    /** Mean of their joint likelihood over the prior, so measured: the evidence, as its natural logarithm. */
    readonly logEvidence: number;
    /** By −2 ln of the best against the number n of sightings: strained above n + 2√(2n), contradictory above n + 4√(2n). */
    readonly verdict: "explained" | "strained" | "contradictory";
  };
  /** The single change worth making, or null where none gains a hundredth of a second. */
  readonly next: RigChange | null;
  readonly effectiveSamples: number;
  readonly seed: number;
  readonly work: { readonly settled: number; readonly judged: number; readonly changes: number };
  readonly cautions: readonly string[];
  readonly grounds: Grounds;
}
