/** Where published work says that people lose their footing in moving water, as depth times speed. None of them is a permission. */

import { exp } from "../elementary/index.js";
import {
  type Kilograms,
  type Metres,
  type MetresPerSecond,
  metres,
  metresPerSecond,
  requireWithin,
  rowOf,
  squareFeetPerSecond,
  type UnitDischarge,
  unitDischarge,
} from "../units/index.js";

/** A person by height and mass: their product, in m kg, is what the published limits go by. */
export interface Wader {
  readonly height: Metres;
  readonly mass: Kilograms;
}

/** How well a person stands: good (even bed, light, trained and equipped), normal, or poor (slippery or uneven, dark, alone, tired). */
export type Footing = "good" | "normal" | "poor";

/** Height times mass, m kg. Height 0.5 to 2.5 m, mass 10 to 300 kg, or QuantityError.
 *  @example heightTimesMass({ height: metres(1.75), mass: kilograms(75) }) // => 131.25 */
export function heightTimesMass({ height, mass }: Wader): number {
  requireWithin("height of the wader", height, 0.5, 2.5, "m");
  requireWithin("mass of the wader", mass, 10, 300, "kg");
  return height * mass;
}

/** Depth times speed at which people in a flume lost their footing, on average: 0.0929 (e^(0.001906 L M + 1.09))² m²/s. [Abt1989]
 *  From memory. A mean of what was lost, not a limit to go up to.
 *  @example abtProduct({ height: metres(1.75), mass: kilograms(75) }) // => 1.3554 */
export function abtProduct(wader: Wader): UnitDischarge {
  return unitDischarge(0.0929 * exp(0.001906 * heightTimesMass(wader) + 1.09) ** 2);
}

/** Coefficients of L M and of what is added to it, m²/s. [Karvonen2000], from memory. */
const rescue: Readonly<Record<Footing, { readonly perLM: number; readonly added: number }>> = {
  good: { perLM: 0.006, added: 0.3 },
  normal: { perLM: 0.004, added: 0.2 },
  poor: { perLM: 0.002, added: 0.1 },
};

/** Depth times speed up to which a person manages, by footing: a L M + b m²/s. [Karvonen2000], from memory.
 *  @example karvonenProduct({ height: metres(1.75), mass: kilograms(75) }, "normal") // => 0.725 */
export function karvonenProduct(wader: Wader, footing: Footing): UnitDischarge {
  const { perLM, added } = rowOf("footing", rescue, footing);
  return unitDischarge(perLM * heightTimesMass(wader) + added);
}

/** Least and greatest depth times speed at which people in that study lost their footing. [Karvonen2000] */
export const karvonenObserved: { readonly least: UnitDischarge; readonly greatest: UnitDischarge } = {
  least: unitDischarge(0.64),
  greatest: unitDischarge(1.29),
};

/** Limits of one group of people: up to `low` little hazard, up to `some` dangerous to some, above it to most or all. */
export interface Bands {
  readonly low: UnitDischarge;
  readonly some: UnitDischarge;
  readonly deepest: Metres;
  readonly quickest: MetresPerSecond;
}

const adults: Bands = {
  low: unitDischarge(0.6),
  some: unitDischarge(0.8),
  deepest: metres(1.2),
  quickest: metresPerSecond(3),
};
const children: Bands = {
  low: unitDischarge(0.4),
  some: unitDischarge(0.4),
  deepest: metres(0.5),
  quickest: metresPerSecond(3),
};
const nobody: Bands = {
  low: unitDischarge(0),
  some: unitDischarge(0),
  deepest: metres(0),
  quickest: metresPerSecond(0),
};

/** The bands for a height times mass: adults above 50 m kg, children above 25, nobody up to it. [Cox2010], from memory.
 *  @example coxBands(60).some // => 0.8 */
export function coxBands(heightMass: number): Bands {
  if (heightMass > 50) return adults;
  return heightMass > 25 ? children : nobody;
}

/** Depth in feet times speed in feet a second at which a streamgager never tries to wade: 10, that is 0.929 m²/s. [LaneFay1997]
 *  It lies above the [Cox2010] limit for most people: below it, it says nothing. */
export const streamgagersTen: UnitDischarge = squareFeetPerSecond(10);
