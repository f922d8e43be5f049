/** Tippet: nylon or fluorocarbon by diameter or X rating, and what it bears. */

import { type Line, line } from "../forces/index.js";
import {
  inches,
  type KilogramsPerCubicMetre,
  kilogramsPerCubicMetre,
  type Metres,
  type Newtons,
  newtons,
  ratio,
  requireWithin,
  rowOf,
} from "../units/index.js";
import { type Built, built, inMillimetres } from "./built.js";

export type TippetMaterial = "nylon" | "fluorocarbon";

export interface Tippet {
  readonly name?: string;
  readonly material: TippetMaterial;
  readonly diameter: Metres;
  /** As tested or as printed on the spool; by material and diameter (tippetStrength) unless given. */
  readonly breakingForce?: Newtons;
}

/** Nylon (PA 6 and 6,6) 1,120 to 1,150, PVDF 1,780 kg/m³: handbook values. */
export const tippetDensity: Readonly<Record<TippetMaterial, KilogramsPerCubicMetre>> = {
  nylon: kilogramsPerCubicMetre(1140),
  fluorocarbon: kilogramsPerCubicMetre(1780),
};

/** Stress at which unknotted tippet breaks, Pa. Common practice, no source: spools of 5X (0.152 mm) print 15 to 21 N,
 *  which is 800 to 1,150 MPa, thicker ones less; fluorocarbon bears a little less than nylon. */
export const tippetStress: Readonly<Record<TippetMaterial, number>> = { nylon: 900e6, fluorocarbon: 850e6 };

/** Relative half-width of the breaking force. Common practice, no source. */
export const tippetStrengthSpread = 0.35;

/** Diameter of an X rating: 0.011 in − X/1000, X from 0 to 8. Common practice, no source; spools are off by up to 10 %.
 *  @example tippetDiameter(5) // => 0.0001524 */
export function tippetDiameter(x: number): Metres {
  requireWithin("X rating", x, 0, 8);
  return inches((11 - x) / 1000);
}

/** What a tippet bears without a knot: stress × π d²/4, ±35 %, or its own breaking force where that is known. A knot takes some of it.
 *  @example tippetStrength({ material: "nylon", diameter: tippetDiameter(5) }) // => 16.417 */
export function tippetStrength(tippet: Tippet): Newtons {
  if (tippet.breakingForce !== undefined) {
    requireWithin("breaking force of the tippet", tippet.breakingForce, 0.1, 1000, "N");
    return tippet.breakingForce;
  }
  const stress = rowOf("tippet material", tippetStress, tippet.material);
  return newtons((stress * Math.PI * tippet.diameter ** 2) / 4);
}

/** A length of tippet as a line. Throws QuantityError for an unknown material or an impossible size. */
export function buildTippet(tippet: Tippet, length: Metres): Built<Line> {
  const density = rowOf("tippet material", tippetDensity, tippet.material);
  requireWithin("tippet diameter", tippet.diameter, 3e-5, 1e-3, "m");
  return built(line({ length, diameter: tippet.diameter, density }), {}, [
    {
      field: "density",
      name: `density of ${tippet.material}`,
      value: `${density} kg/m³`,
      spread: 0.02,
      basis: "practice",
    },
    {
      field: "diameter",
      name: `diameter of ${describeTippet(tippet)}`,
      value: inMillimetres(tippet.diameter, 3),
      spread: 0.1,
      basis: "practice",
    },
  ]);
}

/** "5X fluorocarbon" for a diameter on the X scale, "0.190 mm nylon" for another; its own name where it has one. */
export function describeTippet(tippet: Tippet): string {
  if (tippet.name !== undefined) return tippet.name;
  const x = 11 - 1000 * ratio(tippet.diameter, inches(1));
  const whole = Math.round(x);
  const onScale = Math.abs(x - whole) < 1e-6 && whole >= 0 && whole <= 8;
  return `${onScale ? `${whole}X` : inMillimetres(tippet.diameter, 3)} ${tippet.material}`;
}
