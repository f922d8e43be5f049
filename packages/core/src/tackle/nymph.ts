/** Nymphs: a hook, perhaps a bead, perhaps a wire underbody, and a dressed body. */

import { type Knot, type Sinker, sinker } from "../forces/index.js";
import {
  type CubicMetres,
  cubicMetres,
  type Kilograms,
  kilograms,
  type Metres,
  metres,
  requireWithin,
  rowOf,
  times,
} from "../units/index.js";
import { type Bead, beadDensity, beadMass, beadMassSpread } from "./bead.js";
import { type Built, built, inGrams, inMillimetres, type Tabulated } from "./built.js";
import { hook, hookLengthSpread, hookMass, hookMassSpread, steelDensity } from "./hook.js";
import { type ShotMaterial, shotDensity } from "./shot.js";

export interface Nymph {
  readonly name: string;
  /** Hook size, even, 6 to 20. */
  readonly size: number;
  readonly bead?: Bead;
  /** Turns of wire round the shank under the dressing. */
  readonly underbody?: {
    readonly diameter: Metres;
    readonly turns: number;
    readonly material: ShotMaterial;
  };
  /** Tight unless given. */
  readonly knot?: Knot;
  /** Values that take the place of the tabulated ones, each by itself: the others stay as tabulated. */
  readonly measured?: {
    readonly mass?: Kilograms;
    readonly volume?: CubicMetres;
    readonly bead?: Metres;
    readonly body?: { readonly length: Metres; readonly diameter: Metres };
    readonly dressing?: number;
  };
}

/** Dressed body over shank: a slim nymph averages 2 mm on a shank of 11 mm. Common practice, no source. */
const bodyPerShank = 0.18;
/** A bead takes its own diameter of the shank, and at most this share of it. Common practice, no source. */
const greatestBeadPerShank = 0.7;
/** Fur and feather (keratin, 1,300 kg/m³, from memory) fill this share of the dressed body; water fills the rest. An assumption. */
const fibreShare = 0.3;
const fibreDensity = 1300;
const fibreSpread = 0.5;

/** Drag of a dressed nymph over that of its bare shapes. Falling across at 0.4 m/s, a 2.8 mm bead and a body of 6.7 × 1.7 mm have
 *  15 mm² of Cd × area; ten fibres of 4 × 0.1 mm at Cd 1.7 add 7 mm²: about 1.5. An assumption, ±30 %. */
export const nymphDressing = 1.5;

const tightKnot: Tabulated = { field: "knot", name: "knot", value: "tight", spread: 0, basis: "default" };

interface Part {
  readonly mass: number;
  readonly volume: number;
  readonly spread: number;
}

/** A nymph as a sinker. Volume is that of metal and fibre; the water held in the dressing (about 6 % of the mass of a beaded fly)
 *  is neither weight nor inertia here. Throws QuantityError for an unknown size or material or a bead too large for its hook.
 *  @example buildNymph({ name: "tungsten nymph 14", size: 14, bead: { diameter: millimetres(2.8), material: "tungsten" } }).body.dressing // => 1.5 */
export function buildNymph(nymph: Nymph): Built<Sinker> {
  const { shank } = hook(nymph.size);
  const bead = nymph.bead?.diameter;
  if (bead !== undefined) {
    requireWithin(`bead diameter on a size ${nymph.size} nymph`, bead, 1e-3, greatestBead(nymph.size), "m");
  }
  const body = { length: metres(shank - (bead ?? 0)), diameter: metres(bodyPerShank * shank) };
  const parts = partsOf(nymph, (Math.PI / 4) * body.diameter ** 2 * body.length);
  const sum = (of: (part: Part) => number): number => parts.reduce((total, part) => total + of(part), 0);
  const mass = kilograms(sum((part) => part.mass));
  const tabulated = {
    mass,
    volume: cubicMetres(sum((part) => part.volume)),
    body,
    ...(bead === undefined ? {} : { bead }),
    dressing: nymphDressing,
    knot: nymph.knot ?? "tight",
  };
  const massSpread = sum((part) => part.mass * part.spread) / mass;
  return built(sinker({ ...tabulated, ...nymph.measured }), nymph.measured, [
    ...assumed(nymph.name, mass, body, massSpread),
    ...(nymph.knot === undefined ? [tightKnot] : []),
  ]);
}

/** The largest bead that leaves room for a body on a hook of a size. @example greatestBead(16) // => 0.0056 */
export function greatestBead(size: number): Metres {
  return times(hook(size).shank, greatestBeadPerShank);
}

/** What to call a nymph that has no name of its own. @example nymphName({ size: 14 }) // => "plain nymph 14" */
export function nymphName({ size, bead }: Pick<Nymph, "size" | "bead">): string {
  if (bead === undefined) return `plain nymph ${size}`;
  return `${bead.material} nymph ${size}, ${inMillimetres(bead.diameter)}`;
}

/** "tungsten nymph 14: 0.18 g, 2.8 mm bead" in one line. */
export function describeNymph(nymph: Nymph): string {
  const { body } = buildNymph(nymph);
  const bead = body.bead === undefined ? "no bead" : `${inMillimetres(body.bead)} bead`;
  return `${nymph.name}: ${inGrams(body.mass)}, ${bead}`;
}

function partsOf(nymph: Nymph, bodyVolume: number): readonly Part[] {
  const wires = hook(nymph.size);
  const hookKilograms = hookMass(wires, "strong");
  const parts: Part[] = [
    { mass: hookKilograms, volume: hookKilograms / steelDensity, spread: hookMassSpread },
    {
      mass: fibreDensity * fibreShare * bodyVolume,
      volume: fibreShare * bodyVolume,
      spread: fibreSpread,
    },
  ];
  if (nymph.bead !== undefined) {
    const mass = beadMass(nymph.bead);
    parts.push({ mass, volume: mass / beadDensity[nymph.bead.material], spread: beadMassSpread });
  }
  if (nymph.underbody !== undefined) {
    const { diameter, turns, material } = nymph.underbody;
    requireWithin("diameter of the underbody wire", diameter, 1e-4, 1e-3, "m");
    requireWithin("turns of the underbody wire", turns, 0, 50);
    const volume = turns * Math.PI * (wires.wire.strong + diameter) * (Math.PI / 4) * diameter ** 2;
    parts.push({ mass: rowOf("underbody material", shotDensity, material) * volume, volume, spread: 0.15 });
  }
  return parts;
}

function assumed(
  name: string,
  mass: number,
  body: { readonly length: number; readonly diameter: number },
  massSpread: number,
): readonly Tabulated[] {
  const shape = `${inMillimetres(body.length)} by ${inMillimetres(body.diameter)}`;
  return [
    { field: "mass", name: `mass of ${name}`, value: inGrams(mass), spread: massSpread, basis: "practice" },
    {
      field: "body",
      name: `dressed body of ${name}`,
      value: shape,
      spread: hookLengthSpread + 0.1,
      basis: "practice",
    },
    {
      field: "dressing",
      name: "dressing factor of a nymph",
      value: `${nymphDressing}`,
      spread: 0.3,
      basis: "assumption",
    },
  ];
}
