/** Sweeps of resistance: ratios of published laws, laws of friction, means of a vertical. */
import {
  bathurstRatio,
  brayRatio,
  type Friction,
  fergusonRatio,
  griffithsRatio,
  heyRatio,
  jarrettRoughness,
  keuleganRatio,
  leopoldWolmanRatio,
  limerinosRatio,
  manningOf,
  maynordRoughness,
  metres,
  metresPerSecond,
  rectangularSection,
  rickenmannReckingRatio,
  rickenmannReckingSpeed,
  sectionGeometry,
  squareMetresPerSecond,
  stricklerRoughness,
  uniformVelocity,
  verticalMean,
} from "@plumbdrift/core";
import { cell, type Row, type Sweep } from "./sweep.js";

const by = "the printed formulas in Python";
const section = rectangularSection(metres(5));

export const resistanceSweeps: readonly Sweep[] = [
  {
    relation: "ratios of speed to shear velocity, ten laws",
    file: "resistance.csv",
    by,
    outputs: [
      "limerinos",
      "bathurst",
      "hey",
      "ferguson",
      "rickenmannRecking",
      "rickenmannReckingSpeed",
      "keulegan",
      "griffiths",
      "bray",
      "leopoldWolman",
    ],
    evaluate: ratios,
    tolerance: 1e-9,
    because: "relative to 1 at least: some laws cross zero",
    scale: () => 1,
  },
  {
    relation: "Manning's n of grains and streams",
    file: "resistance.csv",
    by,
    outputs: ["strickler", "maynord", "jarrett", "manningOf"],
    evaluate: (row) => ({
      strickler: stricklerRoughness(cell(row, "d")),
      maynord: maynordRoughness(cell(row, "d")),
      jarrett: jarrettRoughness(cell(row, "S"), radiusOf(row)),
      manningOf: manningOf(cell(row, "x"), radiusOf(row)),
    }),
    tolerance: 1e-9,
  },
  {
    relation: "uniform flow by five laws of friction",
    file: "resistance.csv",
    by,
    outputs: ["chezy", "darcy", "rough", "smooth", "transitional"],
    evaluate: frictions,
    tolerance: 1e-9,
  },
  {
    relation: "mean of a vertical from three, five and one point",
    file: "resistance.csv",
    by,
    outputs: ["threePoint", "fivePoint", "surface"],
    evaluate: means,
    tolerance: 1e-9,
  },
];

function radiusOf(row: Row) {
  return sectionGeometry(section, metres(cell(row, "y"))).hydraulicRadius;
}

function ratios(row: Row): Row {
  const x = cell(row, "x");
  return {
    limerinos: limerinosRatio(x),
    bathurst: bathurstRatio(x),
    hey: heyRatio(x),
    ferguson: fergusonRatio(x),
    rickenmannRecking: rickenmannReckingRatio(x),
    rickenmannReckingSpeed: rickenmannReckingSpeed(cell(row, "q")),
    keulegan: keuleganRatio(x),
    griffiths: griffithsRatio(x),
    bray: brayRatio(x),
    leopoldWolman: leopoldWolmanRatio(x),
  };
}

function frictions(row: Row): Row {
  const roughness = metres(cell(row, "ks"));
  const viscosity = squareMetresPerSecond(cell(row, "nu"));
  const speed = (friction: Friction): number =>
    uniformVelocity({ section, friction, slope: cell(row, "S") }, metres(cell(row, "y")));
  return {
    chezy: speed({ law: "chezy", c: cell(row, "c") }),
    darcy: speed({ law: "darcy", f: cell(row, "f") }),
    rough: speed({ law: "rough", roughness }),
    smooth: speed({ law: "smooth", viscosity }),
    transitional: speed({ law: "transitional", roughness, viscosity }),
  };
}

function means(row: Row): Row {
  const u = [0, 1, 2, 3, 4].map((i) => metresPerSecond(cell(row, `u${i}`)));
  const [atSurface, at20, at60, at80, atBed] = u;
  if (!(atSurface && at20 && at60 && at80 && atBed)) throw new TypeError("five speeds are needed");
  return {
    threePoint: verticalMean({ method: "three-point", at20, at60, at80 }).speed,
    fivePoint: verticalMean({ method: "five-point", atSurface, at20, at60, at80, atBed }).speed,
    surface: verticalMean({ method: "surface", atSurface }).speed,
  };
}
