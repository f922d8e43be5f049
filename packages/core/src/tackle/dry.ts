/** Dry flies by what floats them: closed foam, yarn, hollow hair, hackle on the film, or the film alone. */

import { type Float, float } from "../forces/index.js";
import { kilograms, rowOf, times } from "../units/index.js";
import { type Built, built, inGrams, inMillimetres, type Tabulated } from "./built.js";
import { hook, hookLengthSpread, hookMass, hookMassSpread } from "./hook.js";

export type DryStyle = "foam" | "yarn" | "hair" | "hackle" | "low-profile";

export interface Dry {
  readonly name: string;
  /** Hook size, even, 6 to 20. */
  readonly size: number;
  readonly style: DryStyle;
  /** Values that take the place of the tabulated ones, each by itself: the others stay as tabulated. */
  readonly measured?: Partial<Float>;
}

/** A style in proportions of its hook. */
export interface DryProportions {
  /** What the water touches: length in shanks, width and height in gapes. */
  readonly length: number;
  readonly width: number;
  readonly height: number;
  /** Share of the filled volume that keeps water out: what is solid and what air it holds. */
  readonly buoyantShare: number;
  /** Relative half-width of that share. */
  readonly shareSpread: number;
  /** Mass of foam, fibre and thread per filled volume, kg/m³. */
  readonly dressing: number;
}

/** Common practice for the lengths, no source; assumptions for share and dressing, argued in docs/tackle.md. */
export const dryStyles: Readonly<Record<DryStyle, DryProportions>> = {
  foam: { length: 1.5, width: 1, height: 0.8, buoyantShare: 0.8, shareSpread: 0.2, dressing: 200 },
  yarn: { length: 1.2, width: 1.2, height: 0.8, buoyantShare: 0.35, shareSpread: 0.4, dressing: 170 },
  hair: { length: 1.4, width: 1.4, height: 0.9, buoyantShare: 0.4, shareSpread: 0.3, dressing: 110 },
  hackle: { length: 1.5, width: 2, height: 0.6, buoyantShare: 0.08, shareSpread: 0.5, dressing: 40 },
  "low-profile": { length: 1.1, width: 0.5, height: 0.4, buoyantShare: 0.2, shareSpread: 0.5, dressing: 260 },
};

/** Film support of a fished fly over that of a freshly dressed one: half of it is soaked. An assumption. */
export const fishedTreatment = 0.5;

const sizeSpread = hookLengthSpread + 0.05;
const dressingSpread = 0.5;

/** A dry fly as a float. The buoyancy of the hook's own steel (about 4 mm³ at size 12) is left out.
 *  Throws QuantityError for an unknown size or style, or an impossible measured value.
 *  @example buildDry({ name: "foam dry 12", size: 12, style: "foam" }).body.length // => 0.0165 */
export function buildDry(dry: Dry): Built<Float> {
  const style = rowOf("style of the dry", dryStyles, dry.style);
  const dryHook = hook(dry.size);
  const length = times(dryHook.shank, style.length);
  const width = times(dryHook.gape, style.width);
  const height = times(dryHook.gape, style.height);
  const steel = hookMass(dryHook, "fine");
  const dressing = style.dressing * (Math.PI / 4) * length * width * height;
  const mass = kilograms(steel + dressing);
  const spread = (steel * hookMassSpread + dressing * dressingSpread) / mass;
  const tabulated = {
    length,
    width,
    height,
    mass,
    buoyantShare: style.buoyantShare,
    treatment: fishedTreatment,
  };
  const body = float({ ...tabulated, ...dry.measured });
  return built(body, dry.measured, [
    { field: "mass", name: `mass of ${dry.name}`, value: inGrams(mass), spread, basis: "practice" },
    ...(["length", "width", "height"] as const).map(
      (field): Tabulated => ({
        field,
        name: `${field} of ${dry.name}`,
        value: inMillimetres(tabulated[field]),
        spread: sizeSpread,
        basis: "practice",
      }),
    ),
    ...shares(dry.style, style),
  ]);
}

/** "foam dry 12: 16.5 × 5.0 × 4.0 mm, 0.081 g" in one line. */
export function describeDry(dry: Dry): string {
  const { length, width, height, mass } = buildDry(dry).body;
  const sides = [length, width, height].map((side) => (1000 * side).toFixed(1)).join(" × ");
  return `${dry.name}: ${sides} mm, ${inGrams(mass)}`;
}

function shares(style: DryStyle, { buoyantShare, shareSpread }: DryProportions): readonly Tabulated[] {
  return [
    {
      field: "buoyantShare",
      name: `buoyant share of a ${style} dry`,
      value: `${buoyantShare}`,
      spread: shareSpread,
      basis: "assumption",
    },
    {
      field: "treatment",
      name: "film support of a fished dry",
      value: `${fishedTreatment}`,
      spread: 0.5,
      basis: "assumption",
    },
    { field: "drag", name: "drag coefficient of a dry", value: "1.1", spread: 0.3, basis: "assumption" },
  ];
}
