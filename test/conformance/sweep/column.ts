/** Sweeps of the water column: five laws, their means and the height of the mean. */
import {
  type Column,
  heightAboveBed,
  metres,
  metresPerSecond,
  slackBehind,
  speedAt,
  type Water,
  waterColumn,
} from "@plumbdrift/core";
import { cell, type Row, type Sweep } from "./sweep.js";

const laws = ["log", "log-wake", "dip", "power", "mixing-layer"] as const;

/** The column of a row: law 1 to 5, depth, surface speed, the law's length or exponent `a`, wake `b`, channel width. */
export function columnOf(row: Row, water?: Water): Column {
  const law = laws[cell(row, "law") - 1] ?? "log";
  const a = cell(row, "a");
  return waterColumn({
    depth: metres(cell(row, "h")),
    surfaceSpeed: metresPerSecond(cell(row, "us")),
    law,
    ...(water === undefined ? {} : { water }),
    ...(law === "power" ? { exponent: a } : {}),
    ...(law === "mixing-layer" ? { bed: { d84: metres(a) } } : {}),
    ...(law === "log" || law === "log-wake" || law === "dip" ? { roughnessLength: metres(a) } : {}),
    ...(law === "log-wake" ? { wake: cell(row, "b") } : {}),
    ...(law === "dip" ? { channelWidth: metres(cell(row, "width")) } : {}),
  });
}

const means = {
  by: "scipy 1.10.1, quad and brentq",
  outputs: ["ratio", "height"],
  evaluate: (row: Row): Row => {
    const { surfaceRatio, heightOfMean } = columnOf(row);
    return { ratio: surfaceRatio, height: heightOfMean };
  },
} as const;

export const columnSweeps: readonly Sweep[] = [
  {
    relation: "speed at a height, five laws",
    file: "column-speeds.csv",
    by: "the laws in Python",
    outputs: ["speed"],
    evaluate: (row) => ({ speed: speedAt(columnOf(row), heightAboveBed(cell(row, "z"))) }),
    tolerance: 1e-9,
    because: "relative to the surface speed: some heights lie under the roughness",
    scale: (_, row) => cell(row, "us"),
  },
  {
    relation: "depth mean over surface speed and height of the mean, four laws",
    file: "column-means.csv",
    ...means,
    tolerance: 1e-9,
  },
  {
    relation: "the same, dip law",
    file: "column-means-dip.csv",
    ...means,
    tolerance: 1e-9,
  },
  {
    relation: "wake of a boulder: half width and speed",
    file: "wake.csv",
    by: "the printed formula in Python",
    outputs: ["half", "speed"],
    evaluate: (row) => {
      const { halfWidth, speed } = slackBehind({
        width: metres(cell(row, "b")),
        downstream: metres(cell(row, "x")),
        across: metres(cell(row, "y")),
        speed: metresPerSecond(cell(row, "u")),
        dragCoefficient: cell(row, "cd"),
      });
      return { half: halfWidth, speed };
    },
    tolerance: 1e-9,
    because: "relative to the stream's speed: close behind a boulder the water stands",
    scale: (output, row) => (output === "speed" ? cell(row, "u") : 0),
  },
];
