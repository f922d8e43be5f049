/** Columns of water over a spot, from a float or from a channel, and where a fish holds in them. */

import {
  dischargeOf,
  type Kernel,
  kernels,
  length,
  lengthOf,
  none,
  type Scale,
  speed,
  speedOf,
  waterOf,
} from "./dimensions-scaling.fixture.js";
import { channelOf } from "./dimensions-section.fixture.js";
import {
  type Column,
  captureReach,
  columnInChannel,
  columnOfMean,
  fishWindow,
  heightAboveBed,
  metres,
  type Observation,
  roughnessLengthOf,
  seconds,
  shapeOf,
  slackBehind,
  speedAt,
  speedProfile,
  turbulenceIntensity,
  waterColumn,
} from "./index.js";

export const columnOf = (
  s: Scale,
  more: Partial<Observation> = { roughnessLength: lengthOf(s, 0.004) },
): Column =>
  waterColumn({ depth: lengthOf(s, 0.9), surfaceSpeed: speedOf(s, 0.8), water: waterOf(s), ...more });
const height = (s: Scale, z = 0.3) => heightAboveBed(z * s.L);
const points = (s: Scale) => [
  { heightAboveBed: height(s, 0.1), speed: speedOf(s, 0.2) },
  { heightAboveBed: height(s, 0.5), speed: speedOf(s, 0.6) },
];
/** What makes each law the one that is chosen. */
const laws: Readonly<Record<string, (s: Scale) => Partial<Observation>>> = {
  log: (s) => ({ roughnessLength: lengthOf(s, 0.004) }),
  "smooth bed": () => ({ roughness: metres(0) }),
  "log-wake": (s) => ({ roughness: lengthOf(s, 0.1), wake: 0.3 }),
  dip: (s) => ({ roughness: lengthOf(s, 0.1), channelWidth: lengthOf(s, 4) }),
  "mixing layer": (s) => ({ bed: { d84: lengthOf(s, 0.3) } }),
  power: () => ({ exponent: 6 }),
  measured: (s) => ({ points: points(s) }),
};

/** Gravity has no part: every unit is free. */
export const columnKernels: readonly Kernel[] = [
  ...Object.entries(laws).flatMap(([law, of]) => [
    ...kernels(speedProfile, [law, speed, (run, s) => run(columnOf(s, of(s)))(0.3 * s.L)]),
    ...kernels(
      waterColumn,
      [`mean speed, ${law}`, speed, (run, s) => run(observed(s, of(s))).meanSpeed],
      [`height of the mean, ${law}`, length, (run, s) => run(observed(s, of(s))).heightOfMean],
      [`shear velocity, ${law}`, speed, (run, s) => run(observed(s, of(s))).shearVelocity],
    ),
  ]),
  ...kernels(waterColumn, [
    "surface speed of timed floats",
    speed,
    (run, s) => {
      const floats = [5, 6].map((t) => ({ distance: lengthOf(s, 4), time: seconds(t * s.T) }));
      return run({ depth: lengthOf(s, 0.9), timedFloats: floats, water: waterOf(s) }).surfaceSpeed;
    },
  ]),
  ...kernels(speedAt, ["speed", speed, (run, s) => run(columnOf(s), height(s))]),
  ...kernels(shapeOf, [
    "mean over surface",
    none,
    (run, s) => {
      const shape = run({ law: "log", roughnessLength: lengthOf(s, 0.004) }, lengthOf(s, 0.9));
      return shape.mean / shape.surface;
    },
  ]),
  ...kernels(columnOfMean, [
    "surface speed",
    speed,
    (run, s) =>
      run({ depth: lengthOf(s, 1), roughness: metres(0), water: waterOf(s) }, speedOf(s, 0.7)).surfaceSpeed,
  ]),
  ...kernels(roughnessLengthOf, ["z0", length, (run, s) => run(8, lengthOf(s, 1))]),
  ...kernels(turbulenceIntensity, ["σ along", speed, (run, s) => run(speedOf(s, 0.07), 0.4).along]),
  ...kernels(
    slackBehind,
    ["speed in the wake", speed, (run, s) => run(behind(s)).speed],
    ["half of its width", length, (run, s) => run(behind(s)).halfWidth],
  ),
  ...kernels(fishWindow, [
    "upper edge",
    length,
    (run, s) => run(columnOf(s), { holdingHeight: lengthOf(s, 0.3), reach: lengthOf(s, 0.2) }).high,
  ]),
  // its lengths are in mm and cm of prey and fish: only the speeds are free
  ...kernels(captureReach, [
    "reach, by the ratio of two speeds",
    none,
    (run, s) =>
      run(
        { preyLength: metres(0.006), fishLength: metres(0.2), greatestSpeed: speedOf(s, 0.9) },
        speedOf(s, 0.3),
      ),
  ]),
];

function observed(s: Scale, more: Partial<Observation>): Observation {
  return { depth: lengthOf(s, 0.9), surfaceSpeed: speedOf(s, 0.8), water: waterOf(s), ...more };
}

function behind(s: Scale) {
  return {
    width: lengthOf(s, 1),
    downstream: lengthOf(s, 4),
    across: lengthOf(s, 0.3),
    speed: speedOf(s, 1),
  };
}

/** √(g h) and √(g h S) of a column are of standard gravity. */
export const weighedColumnKernels: readonly Kernel[] = [
  ...kernels(
    waterColumn,
    ["Froude number", none, (run, s) => run(observed(s, { exponent: 6 })).froude],
    ["shear velocity of a slope", speed, (run, s) => run(observed(s, { slope: 0.002 })).shearVelocity],
  ),
  ...kernels(
    columnInChannel,
    ["surface speed", speed, (run, s) => spot(run, s)?.column.surfaceSpeed ?? 0],
    ["shear velocity", speed, (run, s) => spot(run, s)?.column.shearVelocity ?? 0],
    ["gradient across", { T: -1 }, (run, s) => spot(run, s)?.laneGradient ?? 0],
  ),
];

function spot(run: typeof columnInChannel, s: Scale) {
  const found = run({ channel: channelOf(s), discharge: dischargeOf(s, 6), station: lengthOf(s, 4) });
  return "column" in found ? found : null;
}
