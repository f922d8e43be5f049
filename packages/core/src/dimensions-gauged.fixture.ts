/** What is measured across a river: gaugings, ratings, powers of discharge. */

import {
  discharge,
  dischargeOf,
  type Kernel,
  kernels,
  length,
  lengthOf,
  none,
  type Scale,
  speed,
  speedOf,
} from "./dimensions-scaling.fixture.js";
import {
  dischargeUncertainty,
  fitGeometry,
  geometryOf,
  meanSection,
  midSection,
  ratedDischarge,
  rateStage,
  streamAt,
  type Vertical,
  verticalMean,
} from "./index.js";

const verticals = (s: Scale): readonly Vertical[] =>
  [
    [0, 0, 0],
    [1, 0.5, 0.4],
    [2.5, 0.8, 0.7],
    [4, 0.3, 0.2],
    [5, 0, 0],
  ].map(([x = 0, d = 0, v = 0]) => ({
    station: lengthOf(s, x),
    depth: lengthOf(s, d),
    speed: speedOf(s, v),
  }));
const gaugings = (s: Scale) =>
  [
    [0.5, 0.3],
    [0.8, 1.1],
    [1.2, 2.9],
    [1.7, 6.5],
    [2.3, 14],
  ].map(([h = 0, q = 0]) => ({ stage: lengthOf(s, h), discharge: dischargeOf(s, q) }));
const ratingOf = (s: Scale) => rateStage(gaugings(s), { stage: lengthOf(s, 0.1) });
const days = (s: Scale) =>
  [
    [0.5, 6, 0.2],
    [2, 8, 0.4],
    [9, 13, 0.7],
    [20, 15, 1.2],
  ].map(([q = 0, w = 0, d = 0]) => ({
    discharge: dischargeOf(s, q),
    width: lengthOf(s, w),
    meanDepth: lengthOf(s, d),
  }));
const day = (s: Scale) => ({
  discharge: dischargeOf(s, 2),
  width: lengthOf(s, 10),
  meanDepth: lengthOf(s, 0.4),
});

/** Gravity has no part: every unit is free. */
export const gaugedKernels: readonly Kernel[] = [
  ...kernels(
    midSection,
    ["half spacing", discharge, (run, s) => run(verticals(s), "half-spacing").discharge],
    ["triangle", discharge, (run, s) => run(verticals(s), "triangle").discharge],
    ["area", { L: 2 }, (run, s) => run(verticals(s), "half-spacing").area],
    ["mean speed", speed, (run, s) => run(verticals(s), "half-spacing").meanSpeed],
    ["greatest share", none, (run, s) => run(verticals(s), "half-spacing").greatestShare],
  ),
  ...kernels(meanSection, ["discharge", discharge, (run, s) => run(verticals(s)).discharge]),
  ...kernels(
    verticalMean,
    ["six-tenths", speed, (run, s) => run({ method: "six-tenths", at60: speedOf(s, 0.5) }).speed],
    [
      "two-point",
      speed,
      (run, s) => run({ method: "two-point", at20: speedOf(s, 0.6), at80: speedOf(s, 0.4) }).speed,
    ],
    ["surface", speed, (run, s) => run({ method: "surface", atSurface: speedOf(s, 0.7) }).speed],
    [
      "three-point",
      speed,
      (run, s) =>
        run({
          method: "three-point",
          at20: speedOf(s, 0.6),
          at60: speedOf(s, 0.5),
          at80: speedOf(s, 0.4),
        }).speed,
    ],
    [
      "five-point",
      speed,
      (run, s) =>
        run({
          method: "five-point",
          atSurface: speedOf(s, 0.7),
          at20: speedOf(s, 0.6),
          at60: speedOf(s, 0.5),
          at80: speedOf(s, 0.4),
          atBed: speedOf(s, 0.1),
        }).speed,
    ],
  ),
  ...kernels(dischargeUncertainty, [
    "standard uncertainty",
    discharge,
    (run, s) =>
      run(meanSection(verticals(s)), {
        calibration: 0.01,
        verticals: 0.02,
        width: 0.005,
        depth: 0.01,
        points: 0.05,
        meter: 0.01,
        exposure: 0.03,
        pointsPerVertical: 2,
      }).standard,
  ]),
  ...kernels(
    rateStage,
    ["exponent", none, (run, s) => run(gaugings(s), { stage: lengthOf(s, 0.1) }).exponent],
    ["scatter", none, (run, s) => run(gaugings(s), { stage: lengthOf(s, 0.1) }).scatter],
  ),
  ...kernels(
    ratedDischarge,
    ["curve", discharge, (run, s) => run(ratingOf(s), lengthOf(s, 1)).discharge],
    ["prediction", discharge, (run, s) => run(ratingOf(s), lengthOf(s, 1)).prediction.max],
  ),
  ...kernels(
    fitGeometry,
    ["exponent of width", none, (run, s) => run(days(s)).width.exponent],
    ["exponent of speed", none, (run, s) => run(days(s)).meanSpeed.exponent],
  ),
  ...kernels(geometryOf, [
    "speed at the measured discharge",
    speed,
    (run, s) => streamAt(run(day(s), "downstream"), dischargeOf(s, 2)).meanSpeed.value,
  ]),
  ...kernels(
    streamAt,
    ["width", length, (run, s) => run(fitGeometry(days(s)), dischargeOf(s, 4)).width.value],
    [
      "depth at most",
      length,
      (run, s) => run(fitGeometry(days(s)), dischargeOf(s, 4)).meanDepth.interval?.max ?? 0,
    ],
    ["speed", speed, (run, s) => run(geometryOf(day(s), "at a station"), dischargeOf(s, 4)).meanSpeed.value],
  ),
];

/** The stage of zero flow is searched to a tolerance. */
export const searchedKernels: readonly Kernel[] = [
  ...kernels(rateStage, [
    "stage of zero flow, found",
    length,
    (run, s) => run(gaugings(s), { from: lengthOf(s, -1), to: lengthOf(s, 0.45) }).zeroFlowStage,
  ]),
];
