/** Identities of gaugings and of what is fitted to them, as the cases ask for them. SI. */
import * as core from "@plumbdrift/core";
import type { Inputs } from "./case.js";
import { number, numbers, text } from "./inputs.js";

const { cubicMetresPerSecond, metres, metresPerSecond } = core;
const unknown = Number.NaN;

function uncertainty(i: Inputs): core.DischargeUncertainty {
  const none = { calibration: 0, verticals: 0, width: 0, depth: 0, points: 0, meter: 0, exposure: 0 };
  const [a, b] = [3, 4].map((q) => ({
    station: metres(q),
    width: metres(1),
    area: core.squareMetres(q),
    speed: metresPerSecond(1),
    discharge: cubicMetresPerSecond(q),
  }));
  const panels = a && b ? [a, b] : [];
  const stated = text(i, "components")
    .split(" ")
    .map((name) => [name, 0.03]);
  const components = { ...none, ...Object.fromEntries(stated), pointsPerVertical: 4 };
  return core.dischargeUncertainty({ panels, discharge: cubicMetresPerSecond(7) }, components);
}

function pairs(): core.MeasuredDischarge {
  const rows = [
    [0, 0, 0],
    [2, 1, 0.6],
    [6, 3, 1],
    [7, 0, 0],
  ];
  const verticals = rows.map(([x = unknown, d = unknown, v = unknown]) => ({
    station: metres(x),
    depth: metres(d),
    speed: metresPerSecond(v),
  }));
  return core.meanSection(verticals);
}

/** Upper end of the interval over the width itself, logarithm, after three measurements. */
function widthInterval(i: Inputs): number {
  const widths = numbers(i, "widths");
  const measurements = numbers(i, "discharges").map((q, k) => ({
    discharge: cubicMetresPerSecond(q),
    width: metres(widths[k] ?? unknown),
    meanDepth: metres(1),
  }));
  const at = core.streamAt(
    core.fitGeometry(measurements),
    cubicMetresPerSecond(number(i, "discharge")),
    0.95,
  );
  return Math.log((at.width.interval?.max ?? unknown) / at.width.value);
}

/** The n in the middle of the answer over the middle of the list, by sorting and counting from both ends. */
function middleOfLaws(i: Inputs): number {
  const stones = "d50" in i ? { d50: metres(number(i, "d50")) } : {};
  const answer = core.resistanceOf({
    hydraulicRadius: metres(0.6),
    d84: metres(0.1),
    slope: 0.01,
    ...stones,
  });
  if (answer.kind !== "estimated") return unknown;
  const left = answer.estimates.map(({ n }) => n).sort((a, b) => a - b);
  while (left.length > 2) left.splice(0, left.length, ...left.slice(1, -1));
  return answer.n.median / (left.reduce((a, b) => a + b, 0) / left.length);
}

const floats = (i: Inputs): core.Column =>
  core.waterColumn({
    depth: metres(1),
    timedFloats: numbers(i, "speeds").map((v) => ({ distance: metres(6), time: core.seconds(6 / v) })),
  });

export const gaugingEvaluations = {
  "relative uncertainty of a discharge": (i: Inputs): number => uncertainty(i).relative,
  "expanded uncertainty of a discharge, m³/s": (i: Inputs): number => uncertainty(i).expanded,
  "share of the calibration in the variance": (i: Inputs): number => uncertainty(i).shares.calibration,
  "station of a pair of verticals, m": (i: Inputs): number =>
    pairs().panels[number(i, "pair")]?.station ?? unknown,
  "discharge of a pair of verticals, m³/s": (i: Inputs): number =>
    pairs().panels[number(i, "pair")]?.discharge ?? unknown,
  "logarithm of the interval of a width": (i: Inputs): number => widthInterval(i),
  "middle n over the middle of the list": (i: Inputs): number => middleOfLaws(i),
  "speed of timed floats, m/s": (i: Inputs): number => floats(i).surfaceSpeed,
  "standard uncertainty of timed floats, m/s": (i: Inputs): number =>
    floats(i).surfaceSpeedUncertainty ?? unknown,
} as const;
