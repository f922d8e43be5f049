/** Sweeps of resistance: ratios of published laws, laws of friction, means of a vertical. */
import {
  bathurstRatio,
  brayRatio,
  compositeRoughness,
  conveyance,
  cubicMetresPerSecond,
  type Friction,
  fergusonRatio,
  frictionSlope,
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
  surveyedSection,
  uniformVelocity,
  velocityCoefficients,
  velocityRatioOf,
  verticalMean,
} from "@plumbdrift/core";
import { cell, type Row, type Sweep } from "./sweep.js";

const by = "the printed formulas in Python";
const section = rectangularSection(metres(5));
const laws = ["Chezy", "Darcy", "Rough", "Smooth", "Transitional", "Manning"] as const;

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
    relation: "uniform flow by five laws of friction",
    file: "resistance.csv",
    by,
    outputs: ["chezy", "darcy", "rough", "smooth", "transitional"],
    evaluate: frictions,
    tolerance: 1e-9,
  },
  {
    relation: "growth of conveyance with depth, six laws of friction",
    file: "resistance.csv",
    by: "complex steps on the formulas in channel.py",
    outputs: laws.map((law) => `d${law}`),
    evaluate: (row) =>
      Object.fromEntries(
        laws.map((law) => {
          const channel = { section, friction: frictionOf(row, law), slope: cell(row, "S") };
          return [`d${law}`, conveyance(channel, metres(cell(row, "y"))).perDepth];
        }),
      ),
    tolerance: 1e-9,
  },
  {
    relation: "friction slope of a flow, six laws: the slope that the flow came from",
    file: "resistance.csv",
    by: "the formulas in channel.py",
    outputs: ["S"],
    evaluate: (row) => ({
      S: farthest(
        laws.map((law) => slopeOf(row, law)),
        cell(row, "S"),
      ),
    }),
    tolerance: 1e-9,
  },
  {
    relation:
      "a surveyed section with flats: geometry, composite roughness by four methods, coefficients of energy and momentum",
    file: "compound-section.csv",
    by: "the textbook sums in channel.py",
    outputs: [
      "area",
      "perimeter",
      "width",
      "moment",
      "divided",
      "horton",
      "pavlovskii",
      "felkel",
      "alpha",
      "beta",
    ],
    evaluate: composite,
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

function frictionOf(row: Row, law: (typeof laws)[number]): Friction {
  const roughness = metres(cell(row, "ks"));
  const viscosity = squareMetresPerSecond(cell(row, "nu"));
  switch (law) {
    case "Chezy":
      return { law: "chezy", c: cell(row, "c") };
    case "Darcy":
      return { law: "darcy", f: cell(row, "f") };
    case "Rough":
      return { law: "rough", roughness };
    case "Smooth":
      return { law: "smooth", viscosity };
    case "Transitional":
      return { law: "transitional", roughness, viscosity };
    case "Manning":
      return { law: "manning", n: 0.03 };
  }
}

function frictions(row: Row): Row {
  const speed = (law: (typeof laws)[number]): number =>
    uniformVelocity(
      { section, friction: frictionOf(row, law), slope: cell(row, "S") },
      metres(cell(row, "y")),
    );
  return {
    chezy: speed("Chezy"),
    darcy: speed("Darcy"),
    rough: speed("Rough"),
    smooth: speed("Smooth"),
    transitional: speed("Transitional"),
  };
}

function slopeOf(row: Row, law: (typeof laws)[number]): number {
  const discharge = cubicMetresPerSecond(cell(row, `Q${law}`));
  return frictionSlope({ section, friction: frictionOf(row, law) }, metres(cell(row, "y")), discharge);
}

/** The value farthest from one that all should have. */
function farthest(values: readonly number[], from: number): number {
  return values.reduce((a, b) => (Math.abs(b - from) > Math.abs(a - from) ? b : a));
}

const ground = [
  [0, 3],
  [1, 1],
  [6, 1],
  [8, 0],
  [12, 0],
  [14, 1],
  [19, 1],
  [20, 3],
] as const;

function composite(row: Row): Row {
  const compound = surveyedSection({
    points: ground.map(([x, z]) => ({ station: metres(x), elevation: metres(z) })),
    zones: [0, 6, 14].map((from, i) => ({ from: metres(from), manning: cell(row, `n${i}`) })),
  });
  const y = metres(cell(row, "y"));
  const { energy, momentum } = velocityCoefficients(compound, y);
  const wet = sectionGeometry(compound, y);
  return {
    area: wet.area,
    perimeter: wet.wettedPerimeter,
    width: wet.topWidth,
    moment: wet.firstMoment,
    divided: compositeRoughness(compound, y, "divided"),
    horton: compositeRoughness(compound, y, "horton-einstein"),
    pavlovskii: compositeRoughness(compound, y, "pavlovskii"),
    felkel: compositeRoughness(compound, y, "felkel"),
    alpha: energy,
    beta: momentum,
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
