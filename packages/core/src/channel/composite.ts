/** A section with zones of different roughness: one n for the whole, and how unevenly the water runs. */

import { cbrt, raise } from "../elementary/index.js";
import { type Metres, QuantityError } from "../units/index.js";
import type { CompositeMethod } from "./friction.js";
import { type CrossSection, requireDepth } from "./section.js";
import { bandAt, type SurveyedSection, tableWet } from "./survey.js";

/** n = (Σ P_i n_i^p / P)^(1/p). */
const meanExponent: Readonly<Record<Exclude<CompositeMethod, "divided">, number>> = {
  "horton-einstein": 1.5,
  pavlovskii: 2,
  felkel: -1,
};

/** K = A R^(2/3)/n in SI in a band, and d ln K/d y. */
export function zonedConveyance(
  section: SurveyedSection,
  band: number,
  depth: number,
  method: CompositeMethod,
): { readonly value: number; readonly rise: number } {
  const t = depth - section.bands[band]!;
  return method === "divided" ? divided(section, band, t) : averaged(section, band, t, meanExponent[method]);
}

/** The conveyances of the zones added. No friction between zones. */
function divided(section: SurveyedSection, band: number, t: number): { value: number; rise: number } {
  let value = 0;
  let slope = 0;
  for (const { manning, table } of section.zones) {
    const { area, perimeter, width, steepening } = tableWet(table, band, t);
    if (area === 0) continue;
    const k = (area * cbrt(area / perimeter) ** 2) / manning;
    value += k;
    slope += (k * ((5 * width) / area - (2 * steepening) / perimeter)) / 3;
  }
  return { value, rise: value === 0 ? Number.POSITIVE_INFINITY : slope / value };
}

/** One n from the wetted perimeters of the zones. */
function averaged(
  section: SurveyedSection,
  band: number,
  t: number,
  p: number,
): { value: number; rise: number } {
  const { area, perimeter, width, steepening } = tableWet(section.whole, band, t);
  if (area === 0) return { value: 0, rise: Number.POSITIVE_INFINITY };
  let sum = 0;
  let growth = 0;
  for (const { manning, table } of section.zones) {
    const power = raise(manning, p);
    sum += power * (table.perimeter[band]! + table.steepening[band]! * t);
    growth += power * table.steepening[band]!;
  }
  const n = raise(sum / perimeter, 1 / p);
  const perPerimeter = steepening / perimeter;
  return {
    value: (area * cbrt(area / perimeter) ** 2) / n,
    rise: ((5 * width) / area - 2 * perPerimeter) / 3 - (growth / sum - perPerimeter) / p,
  };
}

/** One Manning n for the whole section at a depth.
 *  horton-einstein (Σ P n^1.5/P)^(2/3): every zone has the mean speed · pavlovskii √(Σ P n²/P): the forces on the zones add ·
 *  felkel P/Σ(P/n) · divided P R^(5/3)/Σ(P_i R_i^(5/3)/n_i), which is Lotter's: the discharges of the zones add. [Chow1959] § 6-5.
 *  Throws QuantityError for a section without zones, or a depth outside of it. */
export function compositeRoughness(section: CrossSection, depth: Metres, method: CompositeMethod): number {
  const zoned = requireZones(section, depth);
  const { area, perimeter } = tableWet(
    zoned.whole,
    bandAt(zoned, depth),
    depth - zoned.bands[bandAt(zoned, depth)]!,
  );
  return (
    (area * cbrt(area / perimeter) ** 2) / zonedConveyance(zoned, bandAt(zoned, depth), depth, method).value
  );
}

export interface VelocityCoefficients {
  /** α of kinetic energy: Σ(K³/A²) / (K³/A²) over the zones. At least 1. */
  readonly energy: number;
  /** β of momentum: Σ(K²/A) / (K²/A) over the zones. At least 1, and below α. */
  readonly momentum: number;
}

/** How unevenly the water runs between zones, each with its own mean speed (the divided channel). Unevenness within a zone is left out.
 *  [Chow1959] § 6-6. Throws QuantityError for a section without zones, or a depth outside of it. */
export function velocityCoefficients(section: CrossSection, depth: Metres): VelocityCoefficients {
  const zoned = requireZones(section, depth);
  const band = bandAt(zoned, depth);
  const sums = { k: 0, a: 0, energy: 0, momentum: 0 };
  for (const { manning, table } of zoned.zones) {
    const { area, perimeter } = tableWet(table, band, depth - zoned.bands[band]!);
    if (area === 0) continue;
    const k = (area * cbrt(area / perimeter) ** 2) / manning;
    sums.k += k;
    sums.a += area;
    sums.energy += raise(k, 3) / area ** 2;
    sums.momentum += k ** 2 / area;
  }
  return {
    energy: (sums.energy * sums.a ** 2) / raise(sums.k, 3),
    momentum: (sums.momentum * sums.a) / sums.k ** 2,
  };
}

function requireZones(section: CrossSection, depth: Metres): SurveyedSection {
  if (section.shape !== "surveyed" || section.zones.length === 0) {
    throw new QuantityError("section", "surveyed, with zones of roughness", section.shape);
  }
  requireDepth(section, depth);
  return section;
}
