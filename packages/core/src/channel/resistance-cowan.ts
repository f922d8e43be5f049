/** Manning's n put together from what is seen: a base for the material and additions for what disturbs the flow. */

import { QuantityError } from "../units/index.js";

/** Least, middle and greatest value that a table gives. */
export interface RoughnessRange {
  readonly min: number;
  readonly normal: number;
  readonly max: number;
}

export type CowanMaterial = "earth" | "rock cut" | "fine gravel" | "coarse gravel";
export type CowanIrregularity = "smooth" | "minor" | "moderate" | "severe";
export type CowanVariation = "gradual" | "alternating occasionally" | "alternating frequently";
export type CowanObstructions = "negligible" | "minor" | "appreciable" | "severe";
export type CowanVegetation = "low" | "medium" | "high" | "very high";
/** Sinuosity below 1.2, to 1.5, above. */
export type CowanMeandering = "minor" | "appreciable" | "severe";

export interface CowanChoice {
  readonly material: CowanMaterial;
  readonly irregularity: CowanIrregularity;
  readonly variation: CowanVariation;
  readonly obstructions: CowanObstructions;
  readonly vegetation: CowanVegetation;
  readonly meandering: CowanMeandering;
}

type Row<Word extends string> = Readonly<Record<Word, RoughnessRange>>;

export interface CowanTable {
  readonly material: Row<CowanMaterial>;
  readonly irregularity: Row<CowanIrregularity>;
  readonly variation: Row<CowanVariation>;
  readonly obstructions: Row<CowanObstructions>;
  readonly vegetation: Row<CowanVegetation>;
  readonly meandering: Row<CowanMeandering>;
}

const between = (min: number, max: number): RoughnessRange => ({ min, normal: (min + max) / 2, max });
const exactly = (n: number): RoughnessRange => ({ min: n, normal: n, max: n });

/** Cowan's table: n0 of the material, n1 to n4 added, and the factor of the meanders (sinuosity below 1.2, to 1.5, above). [Cowan1956] as quoted. */
export const cowanTable: CowanTable = {
  material: {
    earth: exactly(0.02),
    "rock cut": exactly(0.025),
    "fine gravel": exactly(0.024),
    "coarse gravel": exactly(0.028),
  },
  irregularity: { smooth: exactly(0), minor: exactly(0.005), moderate: exactly(0.01), severe: exactly(0.02) },
  variation: {
    gradual: exactly(0),
    "alternating occasionally": exactly(0.005),
    "alternating frequently": between(0.01, 0.015),
  },
  obstructions: {
    negligible: exactly(0),
    minor: between(0.01, 0.015),
    appreciable: between(0.02, 0.03),
    severe: between(0.04, 0.06),
  },
  vegetation: {
    low: between(0.005, 0.01),
    medium: between(0.01, 0.025),
    high: between(0.025, 0.05),
    "very high": between(0.05, 0.1),
  },
  meandering: { minor: exactly(1), appreciable: exactly(1.15), severe: exactly(1.3) },
};

/** n = (n0 + n1 + n2 + n3 + n4) m5 with the least, middle and greatest of every entry. Hydraulic radius below 15 ft (4.572 m). [Cowan1956]
 *  Throws QuantityError for a word that is not in the table.
 *  @example cowanRoughness({ material: "rock cut", irregularity: "minor", variation: "alternating occasionally", obstructions: "minor", vegetation: "medium", meandering: "appreciable" }).normal // => 0.07475 */
export function cowanRoughness(choice: CowanChoice): RoughnessRange {
  const parts = [
    entry("material", cowanTable.material, choice.material),
    entry("irregularity", cowanTable.irregularity, choice.irregularity),
    entry("variation of the section", cowanTable.variation, choice.variation),
    entry("obstructions", cowanTable.obstructions, choice.obstructions),
    entry("vegetation", cowanTable.vegetation, choice.vegetation),
  ];
  const { normal: factor } = entry("meandering", cowanTable.meandering, choice.meandering);
  const sum = (bound: keyof RoughnessRange): number =>
    factor * parts.reduce((total, part) => total + part[bound], 0);
  return { min: sum("min"), normal: sum("normal"), max: sum("max") };
}

function entry(
  quantity: string,
  table: Readonly<Record<string, RoughnessRange>>,
  word: string,
): RoughnessRange {
  const found = Object.hasOwn(table, word) ? table[word] : undefined;
  if (found === undefined) throw new QuantityError(quantity, `one of ${Object.keys(table).join(", ")}`, word);
  return found;
}
