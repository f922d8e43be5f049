/** Sweeps of the laws of friction in a rectangle 5 m wide: speed, growth of conveyance, friction slope. */
import {
  conveyance,
  cubicMetresPerSecond,
  type Friction,
  frictionSlope,
  metres,
  rectangularSection,
  squareMetresPerSecond,
  uniformVelocity,
} from "@plumbdrift/core";
import { cell, type Row, type Sweep } from "./sweep.js";

const section = rectangularSection(metres(5));
const laws = ["Chezy", "Darcy", "Rough", "Smooth", "Transitional", "Manning"] as const;

export const frictionSweeps: readonly Sweep[] = [
  {
    relation: "uniform flow by five laws of friction",
    file: "resistance.csv",
    by: "the printed formulas in Python",
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
];

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
