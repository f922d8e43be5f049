/** Sweep of a surveyed section with flats: its geometry, its one roughness by four methods, how unevenly it carries. */
import {
  type CompositeMethod,
  type CrossSection,
  compositeRoughness,
  conveyance,
  type Metres,
  metres,
  sectionGeometry,
  surveyedSection,
  velocityCoefficients,
} from "@plumbdrift/core";
import { cell, type Row, type Sweep } from "./sweep.js";

export const compoundSweeps: readonly Sweep[] = [
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
      "dDivided",
      "dHorton",
    ],
    evaluate: composite,
    tolerance: 1e-9,
  },
];

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
    dDivided: growth(compound, y, "divided"),
    dHorton: growth(compound, y, "horton-einstein"),
  };
}

function growth(section: CrossSection, depth: Metres, method: CompositeMethod): number {
  return conveyance({ section, friction: { law: "manning-zones", method }, slope: 0.001 }, depth).perDepth;
}
