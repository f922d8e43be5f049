/** For each operation values that are in range and cannot hold together: of the water, unless it has none. */

import type { Body } from "../api.js";

interface Impossible {
  readonly change: (body: Body) => void;
  /** What is blamed. */
  readonly path: string;
}

const m = (value: number) => ({ value, unit: "m" });

const flatV: Impossible = {
  change: (b) => {
    b.section = { shape: "triangular", leftRun: 0, rightRun: 0 };
  },
  path: "/section",
};

export const impossible: Readonly<Record<string, Impossible>> & { readonly water: Impossible } = {
  water: {
    change: (b) => {
      b.water = { ...b.water, bed: "sand", d84: { value: 1, unit: "mm" } };
    },
    path: "/water/d84",
  },
  weighTakes: {
    change: (b) => {
      b.effort.nymph = { value: 0, unit: "min" };
    },
    path: "/effort/nymph",
  },
  carryFlow: flatV,
  findDepth: flatV,
  readEnergy: flatV,
  jumpFlow: flatV,
  spreadFlow: flatV,
  traceSurface: flatV,
  measureDischarge: {
    change: (b) => {
      b.verticals[2].station = b.verticals[1].station;
    },
    path: "/verticals/2/station",
  },
  fitRating: {
    change: (b) => {
      b.zeroFlow = { kind: "known", stage: m(5000) };
    },
    path: "/gaugings/0/stage",
  },
  scaleStream: {
    change: (b) => {
      b.measurements.push(b.measurements[0]);
    },
    path: "/measurements",
  },
  estimateResistance: {
    change: (b) => {
      for (const known of ["slope", "d50", "d84", "chow"]) delete b[known];
    },
    path: "",
  },
};
