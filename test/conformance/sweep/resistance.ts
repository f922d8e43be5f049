/** Sweeps of resistance: ratios of published laws, Manning's n, means of a vertical. */
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
  type Metres,
  manningOf,
  maynordRoughness,
  metres,
  metresPerSecond,
  rectangularSection,
  rickenmannReckingRatio,
  rickenmannReckingSpeed,
  sectionGeometry,
  stricklerRoughness,
  velocityRatioOf,
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
    outputs: ["strickler", "maynord", "jarrett", "manningOf", "x"],
    evaluate: (row) => ({
      strickler: stricklerRoughness(cell(row, "d")),
      maynord: maynordRoughness(cell(row, "d")),
      jarrett: jarrettRoughness(cell(row, "S"), radiusOf(row)),
      manningOf: manningOf(cell(row, "x"), radiusOf(row)),
      x: velocityRatioOf(cell(row, "manningOf"), radiusOf(row)),
    }),
    tolerance: 1e-9,
  },
  {
    relation: "mean of a vertical from two, three, five and one point",
    file: "resistance.csv",
    by,
    outputs: ["twoPoint", "threePoint", "fivePoint", "surface"],
    evaluate: means,
    tolerance: 1e-9,
  },
];

function radiusOf(row: Row): Metres {
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

function means(row: Row): Row {
  const u = [0, 1, 2, 3, 4].map((i) => metresPerSecond(cell(row, `u${i}`)));
  const [atSurface, at20, at60, at80, atBed] = u;
  if (!(atSurface && at20 && at60 && at80 && atBed)) throw new TypeError("five speeds are needed");
  return {
    twoPoint: verticalMean({ method: "two-point", at20, at80 }).speed,
    threePoint: verticalMean({ method: "three-point", at20, at60, at80 }).speed,
    fivePoint: verticalMean({ method: "five-point", atSurface, at20, at60, at80, atBed }).speed,
    surface: verticalMean({ method: "surface", atSurface }).speed,
  };
}
