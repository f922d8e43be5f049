/** What is read from a river: surfaces, gaugings, ratings, powers of discharge, lanes, the resistance of a bed. */
import {
  bathurstRatio,
  brayRatio,
  directStep,
  dischargeUncertainty,
  fergusonRatio,
  fitGeometry,
  geometryOf,
  griffithsRatio,
  heyRatio,
  keuleganRatio,
  lateralFlow,
  leopoldWolmanRatio,
  limerinosRatio,
  manningOf,
  maynordRoughness,
  meanSection,
  midSection,
  profileClass,
  type ReachFlow,
  ratedDischarge,
  rateStage,
  rectangularSection,
  resistanceOf,
  rickenmannReckingRatio,
  rickenmannReckingSpeed,
  shearVelocityOf,
  streamAt,
  stricklerRoughness,
  surfaceProfile,
  type Vertical,
  velocityRatioOf,
  verticalMean,
} from "../index.js";
import {
  discharge,
  dischargeOf,
  gravityOf,
  type Kernel,
  kernels,
  length,
  lengthOf,
  manning,
  none,
  type Scale,
  speed,
  speedOf,
} from "./scaling.fixture.js";
import { channelOf } from "./section.fixture.js";

const reachOf = (s: Scale): ReachFlow => ({
  section: rectangularSection(lengthOf(s, 3)),
  friction: { law: "darcy", f: 0.08 },
  slope: 0.002,
  discharge: dischargeOf(s, 5),
  gravity: gravityOf(s),
});
/** From a gate over a level reach, through a jump, to a pool. */
const surfaceOf = (run: typeof surfaceProfile, s: Scale) =>
  run({
    ...reachOf(s),
    reaches: [{ length: lengthOf(s, 60), slope: 0.002, friction: { law: "darcy", f: 0.08 } }],
    upstream: { depth: lengthOf(s, 0.25) },
    downstream: { depth: lengthOf(s, 1.2) },
    pointsPerReach: 5,
  });
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
const submergence = (s: Scale): number => lengthOf(s, 0.6) / lengthOf(s, 0.1);
const ratio = (run: (x: number) => number): readonly Kernel[] =>
  kernels(run, ["V/u*", none, (law, s) => law(submergence(s))]);

/** Gravity is an argument or has no part: every unit is free. */
export const riverKernels: readonly Kernel[] = [
  ...kernels(profileClass, [
    "a curve keeps its name",
    none,
    (run, s) => Number(run(reachOf(s), lengthOf(s, 2)).curve === "M1"),
  ]),
  ...kernels(
    directStep,
    ["distance", length, (run, s) => run(reachOf(s), [lengthOf(s, 2), lengthOf(s, 1.8)])[1]?.distance ?? 0],
    [
      "friction slope",
      none,
      (run, s) => run(reachOf(s), [lengthOf(s, 2), lengthOf(s, 1.8)])[1]?.frictionSlope ?? 0,
    ],
  ),
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
  ...kernels(
    lateralFlow,
    ["speed of a lane", speed, (run, s) => laneOf(run, s)?.meanSpeed ?? 0],
    ["discharge of a lane", discharge, (run, s) => laneOf(run, s)?.discharge ?? 0],
  ),
  ...[
    bathurstRatio,
    brayRatio,
    griffithsRatio,
    keuleganRatio,
    leopoldWolmanRatio,
    limerinosRatio,
    rickenmannReckingRatio,
  ].flatMap(ratio),
  ...kernels(heyRatio, ["V/u*", none, (law, s) => law(submergence(s))]),
  ...kernels(fergusonRatio, ["V/u*", none, (law, s) => law(submergence(s))]),
  ...kernels(rickenmannReckingSpeed, [
    "U/√(g S D84)",
    none,
    (law, s) =>
      law(dischargeOf(s, 2) / lengthOf(s, 1) / Math.sqrt(gravityOf(s) * 0.01 * lengthOf(s, 0.1) ** 3)),
  ]),
];

function laneOf(run: typeof lateralFlow, s: Scale) {
  const flow = run(channelOf(s), dischargeOf(s, 6), 9);
  return flow.kind === "found" ? flow.lanes[4] : undefined;
}

/** Surfaces are integrated, and the stage of zero flow is searched, each to its own tolerance. */
export const solvedKernels: readonly Kernel[] = [
  ...kernels(
    surfaceProfile,
    ["depth of a point", length, (run, s) => surfaceOf(run, s).points[1]?.depth ?? 0],
    ["place of the jump", length, (run, s) => surfaceOf(run, s).jumps[0]?.distance ?? 0],
    ["loss in the jump", length, (run, s) => surfaceOf(run, s).jumps[0]?.headLoss ?? 0],
  ),
  ...kernels(rateStage, [
    "stage of zero flow, found",
    length,
    (run, s) => run(gaugings(s), { from: lengthOf(s, -1), to: lengthOf(s, 0.45) }).zeroFlowStage,
  ]),
];

/** Gravity is written in: n of a V/u*, and the n of the grains, D^(1/6) with a constant that holds 1/√g. */
export const resistanceKernels: readonly Kernel[] = [
  ...kernels(manningOf, ["n", manning, (run, s) => run(7.2, lengthOf(s, 1))]),
  ...kernels(velocityRatioOf, ["V/u*", none, (run, s) => run((0.04 * s.T) / Math.cbrt(s.L), lengthOf(s, 1))]),
  ...kernels(shearVelocityOf, ["u*", speed, (run, s) => run(lengthOf(s, 1), 0.01)]),
  ...kernels(stricklerRoughness, ["n", manning, (run, s) => run(lengthOf(s, 0.1))]),
  ...kernels(maynordRoughness, ["n", manning, (run, s) => run(lengthOf(s, 0.1))]),
  ...kernels(
    resistanceOf,
    ["middle n", manning, (run, s) => estimateOf(run, s)?.n.median ?? 0],
    ["f of one law", none, (run, s) => estimateOf(run, s)?.estimates[0]?.frictionFactor ?? 0],
  ),
];

/** Without a slope: Jarrett's n is left out. */
function estimateOf(run: typeof resistanceOf, s: Scale) {
  const answer = run({
    hydraulicRadius: lengthOf(s, 0.6),
    depth: lengthOf(s, 0.7),
    d50: lengthOf(s, 0.05),
    d84: lengthOf(s, 0.1),
    d90: lengthOf(s, 0.12),
    roughness: lengthOf(s, 0.3),
  });
  return answer.kind === "estimated" ? answer : null;
}
