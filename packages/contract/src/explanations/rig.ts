/** How a settled rig hangs. */

import {
  type Column,
  type Drift,
  type Held,
  type HeldPoint,
  type Observation,
  type Rig,
  type Settled,
  speedAt,
  sphereDrag,
  waterColumn,
} from "@plumbdrift/core";
import { type Step, si, step } from "../explain.js";
import { columnSteps } from "./column.js";

/** The column, then the drift against it: slip, excess and lean of the lowest sinker, the drag of its bead, the margin of the float. */
export function settledSteps(settled: Settled, rig: Rig, observation: Observation): readonly Step[] {
  const column = waterColumn(observation);
  const { driftSpeed, slip, load, reserve, floatMargin } = settled;
  return [
    ...columnSteps(column, observation),
    step("s = V - us", undefined, {
      s: si("speed", slip),
      V: si("speed", driftSpeed),
      us: si("speed", column.surfaceSpeed),
    }),
    ...sinkerSteps(settled, rig, column),
    ...(load > 0
      ? [step("M = R / L", undefined, { M: floatMargin, R: si("force", reserve), L: si("force", load) })]
      : []),
  ];
}

function sinkerSteps({ sinkers, driftSpeed, lean }: Settled, rig: Rig, column: Column): readonly Step[] {
  const lowest = sinkers.at(-1)!;
  const e = si("speed", lowest.excess);
  return [
    step("e = V - u", undefined, {
      e,
      V: si("speed", driftSpeed),
      u: si("speed", speedAt(column, lowest.heightAboveBed)),
    }),
    step("lean = atan2(-x, d)", undefined, {
      lean: si("angle", lean),
      x: si("length", lowest.downstreamOfFloat),
      d: si("length", lowest.depthBelowSurface),
    }),
    ...beadSteps(rig.sections.at(-1)?.sinker, lowest.excess, column),
  ];
}

/** The drag law of the bead at its excess: the bare sphere, before dressing and body. */
function beadSteps(
  sinker: Rig["sections"][number]["sinker"] | undefined,
  excess: number,
  { water }: Column,
): readonly Step[] {
  if (sinker?.bead === undefined || sinker.beadDrag !== "standard" || excess === 0) return [];
  const Re = (Math.abs(excess) * sinker.bead) / water.kinematicViscosity;
  return [
    step("Re = abs(e) * b / nu", undefined, {
      Re,
      e: si("speed", excess),
      b: si("length", sinker.bead),
      nu: si("unitDischarge", water.kinematicViscosity),
    }),
    step("Cd = 24 / Re * (1 + 0.150 * Re^0.681) + 0.407 / (1 + 8710 / Re)", "BrownLawler2003", {
      Cd: sphereDrag(Re),
      Re,
    }),
  ];
}

/** A drift in full: the rig as it settles, then what the run and the window made of it. */
export function driftSteps(
  { settled, settling, secondsInWindow, effectiveSeconds }: Drifted,
  rig: Rig,
  observation: Observation,
): readonly Step[] {
  return [
    ...settledSteps(settled, rig, observation),
    ...(settling.settles && settling.time > 0
      ? [
          step("Vs = xs / ts", undefined, {
            Vs: si("speed", settling.distance / settling.time),
            xs: si("length", settling.distance),
            ts: si("time", settling.time),
          }),
        ]
      : []),
    ...(secondsInWindow > 0
      ? [
          step("w = te / tw", undefined, {
            w: effectiveSeconds / secondsInWindow,
            te: si("time", effectiveSeconds),
            tw: si("time", secondsInWindow),
          }),
        ]
      : []),
  ];
}

type Drifted = Pick<Drift, "settled" | "settling" | "secondsInWindow" | "effectiveSeconds">;

/** The rig with nothing held, then how much slower than the foam it rides where the hold does what is asked. */
export function heldSteps(held: Held, rig: Rig, observation: Observation): readonly Step[] {
  const { free, inStep, halvedExcess } = held;
  const excess = free.sinkers.at(-1)!.excess;
  const us = waterColumn(observation).surfaceSpeed;
  return [
    ...settledSteps(free, rig, observation),
    ...(inStep.reach === "held" ? slipStep("1", inStep.point, us) : []),
    ...(halvedExcess.reach === "held" && excess !== 0
      ? [
          ...slipStep("2", halvedExcess.point, us),
          step("half = e2 / e", undefined, {
            half: halvedExcess.point.excess / excess,
            e2: si("speed", halvedExcess.point.excess),
            e: si("speed", excess),
          }),
        ]
      : []),
  ];
}

function slipStep(mark: string, { slip, driftSpeed }: HeldPoint, us: number): readonly Step[] {
  return [
    step(`s${mark} = V${mark} - us`, undefined, {
      [`s${mark}`]: si("speed", slip),
      [`V${mark}`]: si("speed", driftSpeed),
      us: si("speed", us),
    }),
  ];
}
