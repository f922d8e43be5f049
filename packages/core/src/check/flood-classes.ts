/** What classifications of floods say of water of a depth and a speed. Drawn for streets, cars and houses, and for people below dams, none of
 *  whom chose to stand there: to somebody who wades they may be a warning and never a permission. */

import type { SourceKey } from "../sources/index.js";
import { type Metres, type MetresPerSecond, type UnitDischarge, unitDischarge } from "../units/index.js";

/** Water somewhere: its depth, and its speed, mean over the depth. */
export interface Flood {
  readonly depth: Metres;
  readonly speed: MetresPerSecond;
}

/** Its classes, mildest first, each up to its limits; the last has none. */
interface Classification {
  readonly source: SourceKey;
  /** Before the number of a class. */
  readonly letter?: string;
  /** What its first limits are of, m²/s: depth times speed unless it has a rating. */
  readonly rates?: (flood: Flood) => UnitDischarge;
  readonly rated: readonly number[];
  readonly deep?: readonly number[];
  readonly quick?: readonly number[];
  /** Whether a limit is already of the class above it. */
  readonly open?: boolean;
  /** How many classes the source leaves to all, and to small people, up to 50 m kg of height times mass. */
  readonly all: number;
  readonly small?: number;
}

/** What one classification says. */
export interface FloodVerdict {
  readonly source: SourceKey;
  /** beyond: in a class that the source keeps such people out of · silent: in a milder one, which permits nothing. */
  readonly level: "beyond" | "silent";
  readonly rests: "depth-times-speed" | "depth" | "speed";
  /** Depth times speed from which on it keeps them out, at this depth; 0 where the depth alone does. */
  readonly limit: UnitDischarge;
  /** Its place, and for whom the source says it is not. */
  readonly class: string;
}

/** Hazard rating d (v + 0.5) + DF, m²/s; DF is 0 to 1 for debris in the water, 0 unless given. [Defra2006] From memory.
 *  @example hazardRating({ depth: metres(0.5), speed: metresPerSecond(1) }) // => 0.75 */
export function hazardRating({
  depth,
  speed,
  debris = 0,
}: Flood & { readonly debris?: number }): UnitDischarge {
  return unitDischarge(depth * (speed + 0.5) + debris);
}

/** [AIDR2017] and [Defra2006] from memory. [FOWG2002] speaks of cars, tents and houses; only its last class, in which those in massive houses are in
 *  danger, can be read for somebody afoot. */
const classifications: readonly Classification[] = [
  {
    source: "AIDR2017",
    letter: "H",
    rated: [0.3, 0.6, 0.6, 1, 4],
    deep: [0.3, 0.5, 1.2, 2, 4],
    quick: [2, 2, 2, 2, 4],
    all: 3,
    small: 2,
  },
  { source: "FOWG2002", rated: [0.5, 1, 2], deep: [0.5, 1, 2], all: 3 },
  { source: "Defra2006", rates: hazardRating, rated: [0.75, 1.25, 2], open: true, all: 2, small: 1 },
];

/** The class of each classification, for a person of so much height times mass, m kg. [AIDR2017] [FOWG2002] [Defra2006]
 *  @example floodVerdicts({ depth: metres(1.3), speed: metresPerSecond(0.1) }, 130)[0].class // => "H4 of 6: not for people" */
export function floodVerdicts(flood: Flood, heightMass: number): readonly FloodVerdict[] {
  const { depth, speed } = flood;
  return classifications.map(({ source, letter = "", rates, rated, deep, quick, open, all, small = all }) => {
    const product = depth * speed;
    const rating = rates?.(flood) ?? product;
    const past = (value: number, limits: readonly number[] = []): number =>
      limits.filter((limit) => value > limit || (open && value === limit)).length;
    const [deeper, quicker] = [past(depth, deep), past(speed, quick)];
    const place = Math.max(past(rating, rated), deeper, quicker);
    const left = heightMass > 50 ? all : small;
    // a rating adds as much to depth times speed at its line as here
    const limit = Math.max(0, rated[left - 1]! - rating + product);
    const whom = place < small ? "" : `: not for ${place < all ? "children and the elderly" : "people"}`;
    return {
      source,
      level: place < left ? "silent" : "beyond",
      rests: limit === 0 || deeper >= left ? "depth" : quicker >= left ? "speed" : "depth-times-speed",
      limit: unitDischarge(limit),
      class: `${letter}${place + 1} of ${rated.length + 1}${whom}`,
    };
  });
}
