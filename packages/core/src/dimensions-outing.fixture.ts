/** A stop whose discharge changes, a gauge between its readings, and a cast over lanes. */

import {
  discharge,
  dischargeOf,
  type Kernel,
  kernels,
  length,
  lengthOf,
  type Scale,
  speed,
  speedOf,
} from "./dimensions-scaling.fixture.js";
import { degrees, present, readGauge, seconds, shiftFlow, weighTakes } from "./index.js";

const stop = (s: Scale, run: typeof shiftFlow) => {
  const shifted = run({
    observation: { depth: lengthOf(s, 0.7), surfaceSpeed: speedOf(s, 0.8) },
    width: lengthOf(s, 11),
    measuredAt: dischargeOf(s, 6),
    now: dischargeOf(s, 9),
    method: {
      by: "pairs",
      pairs: [
        { discharge: dischargeOf(s, 3), depth: lengthOf(s, 0.5) },
        { discharge: dischargeOf(s, 14), depth: lengthOf(s, 1.1) },
      ],
    },
  });
  if (shifted.kind !== "shifted") throw new Error(shifted.kind);
  return shifted;
};

export const outingKernels: readonly Kernel[] = [
  ...kernels(weighTakes, [
    "time that still decides",
    { T: 1 },
    (run, { T }) => {
      const effort = { kind: "time", dry: seconds(900 * T), nymph: seconds(700 * T) } as const;
      const { more } = run({ dry: { takes: 12 }, nymph: { takes: 2 }, effort });
      return more.kind === "more" ? (more.time ?? 0) : 0;
    },
  ]),
  ...kernels(
    shiftFlow,
    ["depth", length, (run, s) => stop(s, run).depth.value],
    ["end of its interval", length, (run, s) => stop(s, run).depth.interval?.max ?? 0],
    ["surface speed", speed, (run, s) => stop(s, run).surfaceSpeed.value],
    ["width", length, (run, s) => stop(s, run).width?.value ?? 0],
  ),
  ...kernels(readGauge, [
    "discharge",
    discharge,
    (run, s) => {
      const reading = (t: number, q: number) => ({ time: seconds(t * s.T), discharge: dischargeOf(s, q) });
      const at = run({ readings: [reading(0, 3), reading(600, 5)], time: seconds(200 * s.T) });
      return at.kind === "read" ? at.discharge : 0;
    },
  ]),
  ...kernels(
    present,
    ["reach of the drift", length, (run, s) => over(s, run).reach],
    ["time without drag", { T: 1 }, (run, s) => over(s, run).dragFree ?? 0],
    ["landing of the nymph", length, (run, s) => over(s, run).cast.sinkerAcross],
    ["gain of the nymph", speed, (run, s) => over(s, run).nymphGain],
  ),
];

const over = (s: Scale, run: typeof present) =>
  run({
    distance: lengthOf(s, 7),
    upstream: degrees(30),
    lanes: [0, 4, 12].map((y) => ({ across: lengthOf(s, y), surfaceSpeed: speedOf(s, 0.3 + 0.06 * y) })),
    dropper: lengthOf(s, 0.5),
    slack: lengthOf(s, 0.4),
  });
