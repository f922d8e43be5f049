/** Surfaces and lanes of a river, and the resistance of its bed. */

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
} from "./dimensions-scaling.fixture.js";
import { channelOf } from "./dimensions-section.fixture.js";
import {
  bathurstRatio,
  brayRatio,
  directStep,
  fergusonRatio,
  griffithsRatio,
  heyRatio,
  keuleganRatio,
  lateralFlow,
  leopoldWolmanRatio,
  limerinosRatio,
  manningOf,
  maynordRoughness,
  profileClass,
  type ReachFlow,
  rectangularSection,
  resistanceOf,
  rickenmannReckingRatio,
  rickenmannReckingSpeed,
  shearVelocityOf,
  stricklerRoughness,
  surfaceProfile,
  velocityRatioOf,
} from "./index.js";

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
