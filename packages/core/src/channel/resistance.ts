/** How much a stony bed resists: every published law that what is known allows, and how far they lie apart. */

import { type Caveat, caveatFor, type SourceKey } from "../sources/index.js";
import { QuantityError, requirePositive } from "../units/index.js";
import type { RoughnessRange } from "./resistance-cowan.js";
import { manningOf, velocityRatioOf } from "./resistance-forms.js";
import { type Bed, type ResistanceLaw, resistanceLaws } from "./resistance-range.js";

export interface Resistance {
  readonly law: string;
  readonly relation: SourceKey;
  /** Whether the law counts the grains alone, or all that holds a reach back. */
  readonly covers: "grains" | "reach";
  /** Manning's n, SI. */
  readonly n: number;
  /** Least and greatest n where the source is a table with a range, else n twice. */
  readonly nRange: { readonly min: number; readonly max: number };
  /** Darcy-Weisbach f. */
  readonly frictionFactor: number;
  /** V/u*. */
  readonly velocityRatio: number;
  readonly caveats: readonly Caveat[];
}

/** Laws that had nothing to say: their logarithm is not positive so far below the tops of the stones. */
export type ResistanceAnswer =
  | {
      readonly kind: "estimated";
      /** In rising order of n. */
      readonly estimates: readonly Resistance[];
      readonly silent: readonly string[];
      readonly n: { readonly min: number; readonly median: number; readonly max: number };
    }
  | { readonly kind: "none"; readonly silent: readonly string[] };

/** Every law that the given sizes, slope and descriptions allow, with n, f and V/u* of each and the spread of n: the spread is the honest answer.
 *  Outside its range a law answers with a caveat. Throws QuantityError for a size or slope that is not above 0, or where nothing is given.
 *  @example resistanceOf({ hydraulicRadius: metres(0.5), d84: metres(0.1) }).estimates.length // => 6 */
export function resistanceOf(bed: Bed): ResistanceAnswer {
  checkBed(bed);
  const estimates: Resistance[] = [];
  const silent: string[] = [];
  for (const law of resistanceLaws) {
    const said = law.says(bed);
    if (said === null) continue;
    const range = rangeOf(said, bed);
    if (range === null) silent.push(law.law);
    else estimates.push(resistance(law, range, bed));
  }
  if (estimates.length + silent.length === 0)
    throw new QuantityError("a stone size, a slope or a description of the bed", "given", undefined);
  if (estimates.length === 0) return { kind: "none", silent };
  estimates.sort((a, b) => a.n - b.n);
  const at = (i: number): number => estimates[i]?.n ?? Number.NaN;
  const middle = (estimates.length - 1) / 2;
  const n = {
    min: Math.min(...estimates.map((e) => e.nRange.min)),
    median: (at(Math.floor(middle)) + at(Math.ceil(middle))) / 2,
    max: Math.max(...estimates.map((e) => e.nRange.max)),
  };
  return { kind: "estimated", estimates, silent, n };
}

/** The n of what a law says, or null where its V/u* is not positive. */
function rangeOf(said: number | RoughnessRange, { hydraulicRadius }: Bed): RoughnessRange | null {
  if (typeof said !== "number") return said;
  if (!(said > 0)) return null;
  const n = manningOf(said, hydraulicRadius);
  return { min: n, normal: n, max: n };
}

function resistance(law: ResistanceLaw, said: RoughnessRange, bed: Bed): Resistance {
  const velocityRatio = velocityRatioOf(said.normal, bed.hydraulicRadius);
  return {
    law: law.law,
    relation: law.relation,
    covers: law.covers,
    n: said.normal,
    nRange: { min: said.min, max: said.max },
    frictionFactor: 8 / velocityRatio ** 2,
    velocityRatio,
    caveats: law.limits.flatMap(({ quantity, min, max, of }) => {
      const received = of(bed);
      return received === undefined
        ? []
        : caveatFor({ relation: law.relation, quantity, min, max }, received);
    }),
  };
}

function checkBed(bed: Bed): void {
  requirePositive("hydraulic radius", bed.hydraulicRadius, "m");
  if (bed.depth !== undefined) requirePositive("depth", bed.depth, "m");
  if (bed.slope !== undefined) requirePositive("slope", bed.slope);
  if (bed.d50 !== undefined) requirePositive("D50", bed.d50, "m");
  if (bed.d84 !== undefined) requirePositive("D84", bed.d84, "m");
  if (bed.d90 !== undefined) requirePositive("D90", bed.d90, "m");
  if (bed.roughness !== undefined) requirePositive("roughness", bed.roughness, "m");
}
