/** A box of flies and line to choose from, and a general one for who has none at hand. */

import { inches, type Metres, millimetres } from "../units/index.js";
import type { BeadMaterial } from "./bead.js";
import type { Dry, DryStyle } from "./dry.js";
import { type Nymph, nymphName } from "./nymph.js";
import { type Tippet, type TippetMaterial, tippetDiameter } from "./tippet.js";

export interface Box {
  readonly dries: readonly Dry[];
  readonly nymphs: readonly Nymph[];
  readonly tippets: readonly Tippet[];
  readonly dropperLengths: readonly Metres[];
}

const dry = (style: DryStyle, size: number): Dry => ({ name: `${style} dry ${size}`, size, style });

const beaded = (material: BeadMaterial, size: number, diameter: number): Nymph => {
  const bead = { diameter: millimetres(diameter), material };
  return { name: nymphName({ size, bead }), size, bead };
};

const tippet = (material: TippetMaterial, x: number): Tippet => ({
  name: `${x}X ${material}`,
  material,
  diameter: tippetDiameter(x),
});

/** 12 dries, 12 nymphs, 5 tippets and 6 lengths of dropper: 4,320 setups. Our own choice of common sizes. */
export const generalBox: Box = {
  dries: [
    ...[8, 10, 12, 14].map((size) => dry("foam", size)),
    ...[12, 14].map((size) => dry("yarn", size)),
    ...[10, 12, 14].map((size) => dry("hair", size)),
    ...[12, 14].map((size) => dry("hackle", size)),
    dry("low-profile", 14),
  ],
  nymphs: [
    beaded("tungsten", 10, 3.8),
    beaded("tungsten", 12, 3.8),
    beaded("tungsten", 12, 3.3),
    beaded("tungsten", 14, 3.3),
    beaded("tungsten", 14, 2.8),
    beaded("tungsten", 16, 2.8),
    beaded("tungsten", 16, 2.3),
    beaded("tungsten", 18, 2.3),
    beaded("tungsten", 18, 2.0),
    beaded("brass", 14, 2.8),
    beaded("brass", 16, 2.3),
    { name: nymphName({ size: 14 }), size: 14 },
  ],
  tippets: [
    tippet("nylon", 4),
    tippet("nylon", 5),
    tippet("fluorocarbon", 4),
    tippet("fluorocarbon", 5),
    tippet("fluorocarbon", 6),
  ],
  dropperLengths: [12, 18, 24, 30, 36, 48].map(inches),
};
