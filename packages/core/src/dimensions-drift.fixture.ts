/** A rig, settled, held and drifting. */

import { columnOf } from "./dimensions-column.fixture.js";
import { forceOf, free, rigOf } from "./dimensions-rig.fixture.js";
import { force, type Kernel, kernels, none, speed } from "./dimensions-scaling.fixture.js";
import {
  type DriftOptions,
  drift,
  effectiveSecondsOf,
  heightAboveBed,
  hold,
  holdInStep,
  metres,
  slowerThanFoam,
} from "./index.js";

const inStep = (target: ReturnType<typeof holdInStep>) => (target.reach === "held" ? target.point : null);

/** The pull in step is searched to 1 nN. */
export const heldKernels: readonly Kernel[] = [
  ...kernels(holdInStep, [
    "pull",
    force,
    (run, s) => inStep(run(rigOf(s), columnOf(s), free(s), forceOf(s, 0.02)))?.force ?? 0,
  ]),
  ...kernels(hold, [
    "speed in step",
    speed,
    (run, s) =>
      inStep(run(rigOf(s), columnOf(s), { greatest: forceOf(s, 0.02), points: 2 }).inStep)?.driftSpeed ?? 0,
  ]),
  ...kernels(slowerThanFoam, [
    "speed in step",
    speed,
    (run, s) => run(inStep(holdInStep(rigOf(s), columnOf(s), free(s), forceOf(s, 0.02)))!),
  ]),
];

const options: DriftOptions = {
  runLength: metres(2),
  segments: 3,
  instants: 8,
  window: { low: heightAboveBed(0), high: heightAboveBed(0.6) },
};

/** A float answers to its load over a time of its own: of a drift only the unit of mass is free. */
export const driftKernels: readonly Kernel[] = [
  ...kernels(
    drift,
    ["time", none, (run, s) => run(rigOf(s), columnOf(s), options).duration],
    [
      "tension at the float",
      { M: 1 },
      (run, s) => run(rigOf(s), columnOf(s), options).path.at(-1)?.tensionAtFloat ?? 0,
    ],
  ),
  ...kernels(effectiveSecondsOf, ["time", none, (run, s) => run(rigOf(s), columnOf(s), options)]),
];
