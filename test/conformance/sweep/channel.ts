/** Sweeps of the channel: five sections, Manning's speed, normal, critical and conjugate depths. */
import {
  type CrossSection,
  circularSection,
  conjugateDepths,
  criticalDepth,
  cubicMetresPerSecond,
  type DepthsFor,
  froudeNumber,
  metres,
  normalDepth,
  parabolicSection,
  rectangularSection,
  sectionGeometry,
  specificEnergy,
  trapezoidalSection,
  triangularSection,
  uniformVelocity,
} from "@plumbdrift/core";
import { cell, type Row, type Sweep } from "./sweep.js";

const by = "scipy 1.10.1, brentq on the definitions in channel.py";

export const channelSweeps: readonly Sweep[] = [
  {
    relation: "area, perimeter, width and first moment of five sections",
    file: "channel.csv",
    by: "the textbook formulas in channel.py",
    outputs: ["area", "perimeter", "width", "moment"],
    evaluate: (row) => {
      const wet = sectionGeometry(sectionOf(row), metres(cell(row, "y")));
      const { area, wettedPerimeter: perimeter, topWidth: width, firstMoment: moment } = wet;
      return { area, perimeter, width, moment };
    },
    tolerance: 1e-9,
  },
  {
    relation: "speed by Manning's formula",
    file: "channel.csv",
    by: "fluids 1.0.22, V_Manning",
    outputs: ["velocity"],
    evaluate: (row) => ({ velocity: uniformVelocity(channelOf(row), metres(cell(row, "y"))) }),
    tolerance: 1e-9,
  },
  {
    relation: "normal and critical depth, energy and Froude number",
    file: "channel.csv",
    by,
    outputs: ["normal", "critical", "energy", "froude"],
    evaluate: depths,
    tolerance: 1e-9,
  },
  {
    relation: "conjugate depth",
    file: "conjugate-depths.csv",
    by,
    outputs: ["conjugate"],
    evaluate: (row) => {
      const found = conjugateDepths(flowOf(row), metres(cell(row, "y")));
      return { conjugate: found.kind === "found" ? (found.depths[0] ?? Number.NaN) : Number.NaN };
    },
    tolerance: 1e-9,
  },
];

function sectionOf(row: Row): CrossSection {
  const b = metres(cell(row, "b"));
  const [left, right] = [cell(row, "m1"), cell(row, "m2")];
  switch (cell(row, "shape")) {
    case 1:
      return rectangularSection(b);
    case 2:
      return triangularSection(left, right);
    case 3:
      return trapezoidalSection(b, left, right);
    case 4:
      return circularSection(b);
    default:
      return parabolicSection(b, metres(cell(row, "yp")));
  }
}

function flowOf(row: Row) {
  return { section: sectionOf(row), discharge: cubicMetresPerSecond(cell(row, "Q")) };
}

function channelOf(row: Row) {
  const friction = { law: "manning", n: cell(row, "n") } as const;
  return { section: sectionOf(row), friction, slope: cell(row, "S") };
}

function depths(row: Row): Row {
  const flow = flowOf(row);
  const normal = normalDepth(channelOf(row), flow.discharge);
  const y = metres(cell(row, "y"));
  return {
    normal: normal.kind === "no-slope" ? Number.NaN : lowest(normal),
    critical: lowest(criticalDepth(flow)),
    energy: specificEnergy(flow, y),
    froude: froudeNumber(flow, y),
  };
}

function lowest(found: DepthsFor): number {
  return found.kind === "found" ? (found.depths[0] ?? Number.NaN) : Number.NaN;
}
