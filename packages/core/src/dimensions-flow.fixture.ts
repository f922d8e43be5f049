/** Uniform and critical flow, energy and jumps. Gravity is an argument: every unit is free. */

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
  stress,
} from "./dimensions-scaling.fixture.js";
import {
  channelOf,
  density,
  depth,
  firstOf,
  flowOf,
  frictions,
  survey,
} from "./dimensions-section.fixture.js";
import {
  alternateDepths,
  bedShear,
  type Channel,
  conjugateDepths,
  conveyance,
  criticalDepth,
  criticalSlope,
  frictionSlope,
  froudeNumber,
  hydraulicJump,
  minimumEnergy,
  normalDepth,
  specificEnergy,
  specificForce,
  uniformDischarge,
  uniformVelocity,
} from "./index.js";

const uniformKernels: readonly Kernel[] = Object.entries(frictions).flatMap(([law, friction]) => {
  const channel = (s: Scale): Channel => channelOf(s, friction(s));
  return [
    ...kernels(uniformDischarge, [law, discharge, (run, s) => run(channel(s), depth(s))]),
    ...kernels(uniformVelocity, [law, speed, (run, s) => run(channel(s), depth(s))]),
    ...kernels(
      conveyance,
      [law, discharge, (run, s) => run(channel(s), depth(s)).conveyance],
      [`${law}, per depth`, { L: 2, T: -1 }, (run, s) => run(channel(s), depth(s)).perDepth],
    ),
    ...kernels(frictionSlope, [law, none, (run, s) => run(channel(s), depth(s), dischargeOf(s, 6))]),
    ...kernels(normalDepth, [law, length, (run, s) => firstOf(run(channel(s), dischargeOf(s, 6)))]),
    ...kernels(criticalSlope, [
      law,
      none,
      (run, s) => {
        const critical = run({ ...flowOf(s), section: survey(s) }, friction(s));
        return critical.kind === "found" ? critical.slope : Number.NaN;
      },
    ]),
  ];
});

const jump = (run: typeof hydraulicJump, s: Scale) => {
  const found = run(flowOf(s), lengthOf(s, 0.3), density(s));
  return found.kind === "jump" ? found : null;
};

export const flowKernels: readonly Kernel[] = [
  ...uniformKernels,
  ...kernels(
    bedShear,
    ["mean", stress, (run, s) => run(channelOf(s), depth(s), density(s)).mean],
    ["greatest", stress, (run, s) => run(channelOf(s), depth(s), density(s)).greatest],
    ["shear velocity", speed, (run, s) => run(channelOf(s), depth(s), density(s)).shearVelocity],
  ),
  ...kernels(criticalDepth, ["depth", length, (run, s) => firstOf(run(flowOf(s)))]),
  ...kernels(froudeNumber, ["number", none, (run, s) => run(flowOf(s), depth(s))]),
  ...kernels(specificEnergy, ["energy", length, (run, s) => run(flowOf(s), depth(s))]),
  ...kernels(
    minimumEnergy,
    ["energy", length, (run, s) => run(flowOf(s)).energy],
    ["depth", length, (run, s) => run(flowOf(s)).depth],
  ),
  ...kernels(alternateDepths, ["first depth", length, (run, s) => firstOf(run(flowOf(s), depth(s)))]),
  ...kernels(specificForce, ["volume", { L: 3 }, (run, s) => run(flowOf(s), depth(s))]),
  ...kernels(conjugateDepths, ["first depth", length, (run, s) => firstOf(run(flowOf(s), depth(s)))]),
  ...kernels(
    hydraulicJump,
    ["depth after", length, (run, s) => jump(run, s)?.after ?? Number.NaN],
    ["loss of head", length, (run, s) => jump(run, s)?.headLoss ?? Number.NaN],
    ["power", { L: 2, M: 1, T: -3 }, (run, s) => jump(run, s)?.power ?? Number.NaN],
  ),
];
