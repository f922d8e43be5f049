/** The options of a drift with their defaults, checked, as plain numbers. */

import { type Column, speedProfile } from "../column/index.js";
import { hypot } from "../elementary/index.js";
import { lineLength, type Rig } from "../rig/index.js";
import { QuantityError, requirePositive, requireWithin } from "../units/index.js";
import type { SettleOptions } from "./settled.js";
import type { Stream } from "./unsteady-drag.js";
import type { DriftOptions, Mend } from "./unsteady-types.js";

/** Defaults, all our assumptions: share of the line by which the sinker lands upstream, m/s, 1/s, m, s, m/s, s. */
export const defaults = {
  upstreamShare: 0.6,
  entrySpeed: 0.5,
  laneGradient: 0,
  runLength: 6,
  duration: 60,
  excessScale: 0.3,
  timeStep: 0.01,
  segments: 8,
  stationary: 1e-6,
  instants: 400,
} as const;

/** The most steps and links that one drift may ask for. */
const mostSteps = 100_000;
const mostSegments = 64;

export interface Plan {
  readonly cast: {
    readonly sinkerDownstream: number;
    readonly sinkerAcross: number;
    readonly entrySpeed: number;
  };
  readonly stream: Stream;
  readonly depth: number;
  readonly runLength: number;
  readonly duration: number;
  readonly excessScale: number;
  readonly window: { readonly low: number; readonly high: number } | null;
  readonly timeStep: number;
  readonly segments: number;
  readonly stationary: number;
  readonly instants: number;
  readonly mends: readonly Mend[];
  readonly settleOptions: SettleOptions;
}

/** Throws QuantityError naming the option that is out of range. */
export function planOf(rig: Rig, column: Column, options: DriftOptions): Plan {
  const line = lineLength(rig.sections);
  const cast = {
    sinkerDownstream: options.cast?.sinkerDownstream ?? -defaults.upstreamShare * line,
    sinkerAcross: options.cast?.sinkerAcross ?? 0,
    entrySpeed: options.cast?.entrySpeed ?? defaults.entrySpeed,
  };
  const gradient = options.cast?.laneGradient ?? defaults.laneGradient;
  const chosen = {
    runLength: options.runLength ?? defaults.runLength,
    duration: options.duration ?? defaults.duration,
    excessScale: options.excessScale ?? defaults.excessScale,
    timeStep: options.timeStep ?? defaults.timeStep,
    segments: options.segments ?? defaults.segments,
    stationary: options.stationary ?? defaults.stationary,
    instants: options.instants ?? defaults.instants,
  };
  checkCast(cast, gradient, line);
  checkChosen(chosen);
  const window = options.window ?? null;
  if (window !== null) checkWindow(window, column.depth);
  const held = options.held ?? 0;
  requireWithin("held force", held, 0, 10, "N");
  const mends = options.mends ?? [];
  checkMends(mends);
  const last = mends.at(-1)?.held ?? options.held;
  if (options.wind !== undefined) requireWithin("wind", options.wind, -40, 40, "m/s");
  const settleOptions = {
    ...(last === undefined ? {} : { held: last }),
    ...(options.wind === undefined ? {} : { wind: options.wind }),
  };
  return {
    cast,
    depth: column.depth,
    window,
    ...chosen,
    stream: {
      depth: column.depth,
      speed: speedProfile(column),
      laneShare: column.surfaceSpeed > 0 ? gradient / column.surfaceSpeed : 0,
      wind: options.wind ?? null,
      hold: { force: held },
    },
    mends,
    settleOptions,
  };
}

function checkCast(cast: Plan["cast"], gradient: number, line: number): void {
  requireWithin("entry speed of the sinkers", cast.entrySpeed, 0, 20, "m/s");
  requireWithin("lane gradient", gradient, -100, 100, "1/s");
  const chord = hypot(cast.sinkerDownstream, cast.sinkerAcross);
  if (!(chord <= line * (1 + 1e-9))) {
    throw new QuantityError(
      "distance from the float to the lowest sinker",
      `at most the ${line} m of line`,
      chord,
    );
  }
}

function checkMends(mends: readonly Mend[]): void {
  mends.forEach(({ at, held }, i) => {
    requireWithin(`moment of mend ${i + 1}`, at, mends[i - 1]?.at ?? 0, 1e5, "s");
    requireWithin(`held force of mend ${i + 1}`, held, 0, 10, "N");
  });
}

function checkChosen(
  chosen: Omit<Plan, "cast" | "stream" | "depth" | "window" | "mends" | "settleOptions">,
): void {
  const { runLength, duration, timeStep, excessScale, segments, stationary, instants } = chosen;
  requireWithin("length of the run", runLength, 1e-3, 1e4, "m");
  requireWithin("duration of the drift", duration, 1e-3, 1e5, "s");
  requireWithin("time step", timeStep, 1e-6, 1, "s");
  requireWithin("steps of the drift", duration / timeStep, 0, mostSteps);
  requirePositive("excess scale", excessScale, "m/s");
  requireWithin("segments of each line", segments, 1, mostSegments);
  if (!Number.isInteger(segments))
    throw new QuantityError("segments of each line", "a whole number", segments);
  requireWithin("stationary difference of speed", stationary, 0, 1, "m/s");
  requireWithin("instants of the path", instants, 0, 10_000);
}

function checkWindow({ low, high }: { low: number; high: number }, depth: number): void {
  requireWithin("lower edge of the window", low, 0, depth, "m");
  requireWithin("upper edge of the window", high, low, 50, "m");
}
