/** The laws of resistance as data: what each needs, what it covers, and the range that its source gives. */

import type { SourceKey } from "../sources/index.js";
import type { Metres } from "../units/index.js";
import { type ChowChannel, chowRoughness } from "./resistance-chow.js";
import { type CowanChoice, cowanRoughness, type RoughnessRange } from "./resistance-cowan.js";
import {
  bathurstRatio,
  brayRatio,
  fergusonRatio,
  griffithsRatio,
  heyRatio,
  jarrettRoughness,
  keuleganRatio,
  leopoldWolmanRatio,
  limerinosRatio,
  maynordRoughness,
  rickenmannReckingRatio,
  stricklerRoughness,
} from "./resistance-laws.js";

/** What is known of a bed. Each size, slope or description more lets more laws speak. */
export interface Bed {
  readonly hydraulicRadius: Metres;
  /** Mean depth of the flow, the hydraulic radius unless given (a wide channel). */
  readonly depth?: Metres;
  readonly slope?: number;
  readonly d50?: Metres;
  readonly d84?: Metres;
  readonly d90?: Metres;
  /** Equivalent sand roughness ks. */
  readonly roughness?: Metres;
  readonly cowan?: CowanChoice;
  readonly chow?: ChowChannel;
}

/** One law. `says` gives V/u* as a number, or n as a range, or null where the bed does not tell what it needs. */
export interface ResistanceLaw {
  readonly law: string;
  readonly relation: SourceKey;
  readonly covers: "grains" | "reach";
  readonly says: (bed: Bed) => number | RoughnessRange | null;
  readonly limits: readonly ResistanceLimit[];
}

/** A range of the source with how to read its quantity from a bed; undefined where it is not known. */
export interface ResistanceLimit {
  readonly quantity: string;
  readonly min: number;
  readonly max: number;
  readonly of: (bed: Bed) => number | undefined;
}

const limit = (
  quantity: string,
  min: number,
  max: number,
  of: (bed: Bed) => number | undefined,
): ResistanceLimit => ({ quantity, min, max, of });
const radius = (bed: Bed): number => bed.hydraulicRadius;
const depthOf = (bed: Bed): number => bed.depth ?? bed.hydraulicRadius;
const over = (length: number, size: number | undefined): number | undefined => size && length / size;
const single = (n: number): RoughnessRange => ({ min: n, normal: n, max: n });
/** A law of one ratio: null where the size is not known. */
const ratioLaw =
  (law: (x: number) => number, x: (bed: Bed) => number | undefined): ResistanceLaw["says"] =>
  (bed) => {
    const value = x(bed);
    return value === undefined ? null : law(value);
  };

export const resistanceLaws: readonly ResistanceLaw[] = [
  {
    law: "Limerinos",
    relation: "Limerinos1970",
    covers: "reach",
    says: ratioLaw(limerinosRatio, (bed) => over(radius(bed), bed.d84)),
    limits: [
      limit("hydraulic radius over D84", 0.9, 69, (bed) => over(radius(bed), bed.d84)),
      limit("hydraulic radius, m", 0.31, 3.32, radius),
      limit("D84, m", 0.019, 0.747, (bed) => bed.d84),
    ],
  },
  {
    law: "Bathurst",
    relation: "Bathurst1985",
    covers: "reach",
    says: ratioLaw(bathurstRatio, (bed) => over(depthOf(bed), bed.d84)),
    limits: [
      limit("depth over D84", 0, 10, (bed) => over(depthOf(bed), bed.d84)),
      limit("slope", 0.004, 0.04, (bed) => bed.slope),
      limit("depth, m", 0.102, 1.6, depthOf),
      limit("D84, m", 0.113, 0.74, (bed) => bed.d84),
    ],
  },
  {
    law: "Hey",
    relation: "Hey1979",
    covers: "reach",
    says: ratioLaw(heyRatio, (bed) => over(radius(bed), bed.d84)),
    limits: [],
  },
  {
    law: "Ferguson",
    relation: "Ferguson2007",
    covers: "reach",
    says: ratioLaw(fergusonRatio, (bed) => over(radius(bed), bed.d84)),
    limits: [],
  },
  {
    law: "Rickenmann and Recking",
    relation: "RickenmannRecking2011",
    covers: "reach",
    says: ratioLaw(rickenmannReckingRatio, (bed) => over(depthOf(bed), bed.d84)),
    limits: [],
  },
  {
    law: "Leopold and Wolman",
    relation: "LeopoldWolman1957",
    covers: "reach",
    says: ratioLaw(leopoldWolmanRatio, (bed) => over(radius(bed), bed.d84)),
    limits: [],
  },
  {
    law: "Griffiths",
    relation: "Griffiths1981",
    covers: "reach",
    says: ratioLaw(griffithsRatio, (bed) => over(radius(bed), bed.d50)),
    limits: [],
  },
  {
    law: "Bray",
    relation: "Bray1979",
    covers: "reach",
    says: ratioLaw(brayRatio, (bed) => over(radius(bed), bed.d90)),
    limits: [],
  },
  {
    law: "Keulegan",
    relation: "Keulegan1938",
    covers: "grains",
    says: ratioLaw(keuleganRatio, (bed) => over(radius(bed), bed.roughness)),
    limits: [],
  },
  {
    law: "Strickler",
    relation: "Strickler1923",
    covers: "grains",
    says: (bed) => (bed.d50 === undefined ? null : single(stricklerRoughness(bed.d50))),
    limits: [limit("hydraulic radius over D50", 4, 500, (bed) => over(radius(bed), bed.d50))],
  },
  {
    law: "Maynord",
    relation: "Maynord1991",
    covers: "grains",
    says: (bed) => (bed.d90 === undefined ? null : single(maynordRoughness(bed.d90))),
    limits: [limit("D90, m", 0.00457, 0.134, (bed) => bed.d90)],
  },
  {
    law: "Jarrett",
    relation: "Jarrett1984",
    covers: "reach",
    says: (bed) => (bed.slope === undefined ? null : single(jarrettRoughness(bed.slope, radius(bed)))),
    limits: [
      limit("slope", 0.002, 0.04, (bed) => bed.slope),
      limit("hydraulic radius, m", 0.15, 2.1, radius),
    ],
  },
  {
    law: "Cowan",
    relation: "Cowan1956",
    covers: "reach",
    says: ({ cowan }) => (cowan === undefined ? null : cowanRoughness(cowan)),
    limits: [limit("hydraulic radius, m", 0, 4.572, radius)],
  },
  {
    law: "Chow",
    relation: "Chow1959",
    covers: "reach",
    says: ({ chow }) => (chow === undefined ? null : chowRoughness(chow)),
    limits: [],
  },
];
