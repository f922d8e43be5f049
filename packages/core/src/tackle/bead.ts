/** Beads, split shot and wire: metal by density and by the share of a sphere that is left. */

import { raise } from "../elementary/index.js";
import {
  type Kilograms,
  type KilogramsPerCubicMetre,
  kilograms,
  kilogramsPerCubicMetre,
  type Metres,
  requireWithin,
  rowOf,
} from "../units/index.js";

export type BeadMaterial = "tungsten" | "brass" | "glass";
/** A slotted bead has a hole and a slot from the hole to one side, for a jig hook; a drilled one a hole only. */
export type BeadCut = "slotted" | "drilled";

export interface Bead {
  readonly diameter: Metres;
  readonly material: BeadMaterial;
  /** Slotted for tungsten, drilled for brass and glass, unless given. Common practice, no source. */
  readonly cut?: BeadCut;
}

/** Diameters that beads are sold in, mm. Common practice, no source; any diameter from 1 to 8 mm is taken. */
export const beadMillimetres: readonly number[] = [2.0, 2.3, 2.8, 3.3, 3.8, 4.6];

/** Density of each material. Tungsten beads are sintered with a binder: 17,000 to 18,500, from memory, against 19,250 for the
 *  element. Brass 8,400 to 8,730, soda-lime glass 2,500: handbook values. */
export const beadDensity: Readonly<Record<BeadMaterial, KilogramsPerCubicMetre>> = {
  tungsten: kilogramsPerCubicMetre(18000),
  brass: kilogramsPerCubicMetre(8500),
  glass: kilogramsPerCubicMetre(2500),
};

/** Share of its sphere that a bead has lost. Hole and slot 0.3 diameters wide: 1 − (1 − 0.3²)^(3/2) = 0.13 for the hole,
 *  0.29 with the slot; countersinks add a little. An assumption. */
export const lostShare: Readonly<Record<BeadCut, number>> = { slotted: 0.3, drilled: 0.15 };

/** Relative half-width of the mass of a bead: density, lost share and diameter together. An assumption. */
export const beadMassSpread = 0.1;

/** Mass of a bead: ρ π d³/6 (1 − lost share), ±10 % (beadMassSpread). Throws QuantityError for a diameter outside 1 to 8 mm.
 *  @example beadMass({ diameter: millimetres(2.8), material: "tungsten" }) // => 0.00014482 */
export function beadMass(bead: Bead): Kilograms {
  requireWithin("bead diameter", bead.diameter, 1e-3, 8e-3, "m");
  const density = rowOf("bead material", beadDensity, bead.material);
  const cut = bead.cut ?? (bead.material === "tungsten" ? "slotted" : "drilled");
  const left = 1 - rowOf("bead cut", lostShare, cut);
  return kilograms(((density * Math.PI) / 6) * raise(bead.diameter, 3) * left);
}
