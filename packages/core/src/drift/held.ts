/** Holding back: what a steady upstream pull on the float does to the drift, and how much of it brings the nymph in step. Model §6. */

import type { Column } from "../column/index.js";
import { findRoot } from "../numerics/index.js";
import type { Rig } from "../rig/index.js";
import type { Grounds } from "../sources/index.js";
import {
  type HeightAboveBed,
  type Metres,
  type MetresPerSecond,
  metresPerSecond,
  type Newtons,
  newtons,
  type Radians,
  requirePositive,
  requireWithin,
  type Seconds,
  seconds,
} from "../units/index.js";
import { hang } from "./hang.js";
import { type SettleOptions, settle, solve, surroundings } from "./settled.js";
import type { Settled } from "./state.js";

/** A rig under one held force; heights and excess are those of its lowest sinker. */
export interface HeldPoint {
  readonly force: Newtons;
  readonly driftSpeed: MetresPerSecond;
  /** Drift speed less surface speed: how much slower than the foam the float should ride is −slip. */
  readonly slip: MetresPerSecond;
  readonly lean: Radians;
  readonly excess: MetresPerSecond;
  readonly heightAboveBed: HeightAboveBed;
}

/** A hold to aim for: reached at a force, not needed because the drift is there already, or not to be had. */
export type HoldTarget =
  | { readonly reach: "held"; readonly point: HeldPoint }
  | { readonly reach: "unneeded" }
  | { readonly reach: "unreachable"; readonly reason: string };

export interface Held {
  readonly free: Settled;
  /** From no force to half as much again as brings it in step (or the greatest force). */
  readonly curve: readonly HeldPoint[];
  /** The force at which the lowest sinker drifts with its own water. */
  readonly inStep: HoldTarget;
  /** The least force that halves the excess of the free drift. */
  readonly halvedExcess: HoldTarget;
  readonly grounds: Grounds;
}

export interface HoldOptions {
  readonly wind?: MetresPerSecond;
  /** The greatest force to try, 20 mN unless given. */
  readonly greatest?: Newtons;
  /** Points on the curve, 9 unless given. */
  readonly points?: number;
}

/** The curve of drift against held force and its two targets.
 *  Throws QuantityError for a greatest force outside 0 to 1 N, or points outside 2 to 200. */
export function hold(rig: Rig, column: Column, options: HoldOptions = {}): Held {
  const greatest = options.greatest ?? newtons(0.02);
  requireWithin("greatest held force", greatest, 1e-9, 1, "N");
  requireWithin("points of the curve", options.points ?? 9, 2, 200);
  const wind = options.wind === undefined ? {} : { wind: options.wind };
  const at = (force: number): Settled => settle(rig, column, { ...wind, held: newtons(force) });
  const free = at(0);
  const inStep = target({ rig, column, wind }, free, 0, greatest);
  const halvedExcess = target({ rig, column, wind }, free, lowestExcess(free) / 2, greatest);
  const end = inStep.reach === "held" ? Math.min(greatest, 1.5 * inStep.point.force) : greatest;
  const count = Math.round(options.points ?? 9);
  const curve = Array.from({ length: count }, (_, i) => {
    const force = (end * i) / (count - 1);
    return pointOf(at(force), force);
  });
  return { free, curve, inStep, halvedExcess, grounds: free.grounds };
}

/** The hold that brings the lowest sinker in step, alone: what ranking needs. `free` settled in the same wind. */
export function holdInStep(
  rig: Rig,
  column: Column,
  free: Settled,
  greatest: Newtons,
  wind?: MetresPerSecond,
): HoldTarget {
  return target({ rig, column, wind: wind === undefined ? {} : { wind } }, free, 0, greatest);
}

interface HeldRig {
  readonly rig: Rig;
  readonly column: Column;
  readonly wind: Pick<SettleOptions, "wind">;
}

/** Below this excess a drift counts as in step, m/s: a thousandth of a usual stream, far below what turbulence does. */
const inStepBand = 0.001;

function target({ rig, column, wind }: HeldRig, free: Settled, excess: number, greatest: number): HoldTarget {
  if (free.regime === "on-bed") return { reach: "unreachable", reason: "the lowest sinker is on the bed" };
  if (free.regime === "drowned") return { reach: "unreachable", reason: "the float drowns under its load" };
  if (lowestExcess(free) <= inStepBand) return { reach: "unneeded" };
  const compiled = hang(rig, column);
  /** Excess of the lowest sinker over the target. */
  const beyond = (held: number): number => {
    const { driftSpeed, support } = solve(
      compiled,
      surroundings({ ...wind, held: newtons(held) }),
      true,
    ).balance;
    return driftSpeed - compiled.speedAt(Math.max(0, support)) - excess;
  };
  let high = Math.min(greatest, 5e-4);
  while (beyond(high) > 0 && high < greatest) high = Math.min(greatest, 3 * high);
  if (beyond(high) > 0)
    return { reach: "unreachable", reason: `not with ${(greatest * 1000).toPrecision(2)} mN` };
  const force = findRoot(beyond, 0, high, 1e-9).root;
  const settled = settle(rig, column, { ...wind, held: newtons(force) });
  if (settled.regime === "drowned") return { reach: "unreachable", reason: "the float drowns before" };
  // the root of a jump: a rig that leans far has several steady states under one pull, and leaves its own for another
  if (Math.abs(lowestExcess(settled) - excess) > 1e-5 * column.surfaceSpeed) {
    return { reach: "unreachable", reason: `at ${(force * 1000).toPrecision(2)} mN the rig swings over` };
  }
  return { reach: "held", point: pointOf(settled, force) };
}

function lowestExcess(settled: Settled): number {
  return settled.sinkers.at(-1)?.excess ?? 0;
}

function pointOf(settled: Settled, force: number): HeldPoint {
  const lowest = settled.sinkers.at(-1)!;
  const { driftSpeed, slip, lean } = settled;
  return {
    force: newtons(force),
    driftSpeed,
    slip,
    lean,
    excess: lowest.excess,
    heightAboveBed: lowest.heightAboveBed,
  };
}

/** Seconds before slack between angler and float is used up where the two lie in lanes of different speed: slack / difference.
 *  Throws QuantityError when either is not above 0: lanes of one speed never use it up.
 *  @example dragFreeTime(metres(0.9), metresPerSecond(0.3)) // => 3.000 */
export function dragFreeTime(slack: Metres, laneDifference: MetresPerSecond): Seconds {
  requirePositive("slack", slack, "m");
  requirePositive("difference of speed between the lanes", Math.abs(laneDifference), "m/s");
  return seconds(slack / Math.abs(laneDifference));
}

/** How much slower than the drifting foam the float rides at a hold: what the eye can watch for, m/s. */
export function slowerThanFoam(point: HeldPoint): MetresPerSecond {
  return metresPerSecond(-point.slip);
}
