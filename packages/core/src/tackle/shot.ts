/** Split shot: a bare bead pinched on the line. */

import { raise } from "../elementary/index.js";
import { type Sinker, sinker } from "../forces/index.js";
import {
  type CubicMetres,
  cubicMetres,
  type Kilograms,
  type KilogramsPerCubicMetre,
  kilograms,
  kilogramsPerCubicMetre,
  type Metres,
  requireWithin,
  rowOf,
} from "../units/index.js";
import { type Built, built, inGrams } from "./built.js";

/** Some waters forbid lead: ask the local rules. */
export type ShotMaterial = "lead" | "tin";

export interface Shot {
  readonly diameter: Metres;
  readonly material: ShotMaterial;
  readonly measured?: { readonly mass?: Kilograms; readonly volume?: CubicMetres };
}

/** Lead 11,340 and tin 7,280 kg/m³: handbook values. */
export const shotDensity: Readonly<Record<ShotMaterial, KilogramsPerCubicMetre>> = {
  lead: kilogramsPerCubicMetre(11340),
  tin: kilogramsPerCubicMetre(7280),
};

/** Share of its sphere that a pinched shot has lost to its split. An assumption. */
export const shotLostShare = 0.1;
const spread = 0.15;

/** A split shot as a sinker: ρ π d³/6 × 0.9, ±15 %. Throws QuantityError for a diameter outside 1 to 12 mm. */
export function buildShot(shot: Shot): Built<Sinker> {
  requireWithin("shot diameter", shot.diameter, 1e-3, 0.012, "m");
  const density = rowOf("shot material", shotDensity, shot.material);
  const volume = cubicMetres((Math.PI / 6) * raise(shot.diameter, 3) * (1 - shotLostShare));
  const mass = kilograms(density * volume);
  const name = `${shot.material} shot of ${(1000 * shot.diameter).toFixed(1)} mm`;
  return built(sinker({ mass, volume, ...shot.measured, bead: shot.diameter }), shot.measured, [
    { field: "mass", name: `mass of a ${name}`, value: inGrams(mass), spread, basis: "assumption" },
  ]);
}
