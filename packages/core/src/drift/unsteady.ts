/** From the landing of the cast to the end of the run: where every body goes. Model §5; the scheme is in docs/unsteady.md. */

import type { Column } from "../column/index.js";
import { floatReserve } from "../forces/index.js";
import type { Rig } from "../rig/index.js";
import { metres, seconds } from "../units/index.js";
import { settle } from "./settled.js";
import { buildChain, type Chain } from "./unsteady-chain.js";
import { groundsOfDrift } from "./unsteady-grounds.js";
import { instantOf } from "./unsteady-path.js";
import { type Plan, planOf } from "./unsteady-plan.js";
import { compileStepper, type Stepper } from "./unsteady-step.js";
import { compileTally, type Tally } from "./unsteady-tally.js";
import type { Drift, DriftOptions } from "./unsteady-types.js";

export * from "./unsteady-types.js";

/** Time over which the float answers to its load: it goes under when the pull averaged so exceeds its reserve. Our assumption. */
export const loadMemory = 0.2;

/** The drift of a rig from its landing to the end of the run. First order in the time step, second in the length of a segment.
 *  Line by the cross-flow principle [Hoerner1965], added mass [Lamb1932]. Left out: turbulence, bending, the line's ride in the film,
 *  and the pull of water that speeds up along a body's path.
 *  Throws QuantityError for options outside their range, for a sinker or a line that floats, and for a sinker that lands farther off than the line is long. */
export function drift(rig: Rig, column: Column, options: DriftOptions = {}): Drift {
  const plan = planOf(rig, column, options);
  const settled = options.settled ?? settle(rig, column, plan.settleOptions);
  const chain = buildChain(rig, column.water, plan.segments);
  land(chain, plan);
  const stepper = compileStepper(chain, plan.stream);
  const lowest = settled.regime === "drowned" ? undefined : settled.sinkers.at(-1);
  const tally = compileTally(chain, plan.stream, { ...plan, settledHeight: lowest?.heightAboveBed ?? null });
  const { outcome, steps } = run(stepper, tally, plan, settled.reserve);
  const at = outcome === "drowned" ? null : tally.settledAt();
  const first = tally.firstInWindow();
  return {
    outcome,
    duration: seconds(tally.time()),
    distance: metres(chain.position[0]!),
    settling: at
      ? { settles: true, time: seconds(at.time), distance: metres(at.distance) }
      : { settles: false },
    secondsInWindow: seconds(tally.secondsInWindow()),
    effectiveSeconds: seconds(tally.effectiveSeconds()),
    firstInWindow: first === null ? null : seconds(first),
    path: tally.path().map(instantOf),
    settled,
    lengthError: stepper.lengthError(),
    steps,
    grounds: groundsOfDrift(settled.grounds, options, plan),
  };
}

/** Only the effective seconds of a drift, without its settled state: what a first estimate needs. */
export function effectiveSecondsOf(rig: Rig, column: Column, options: DriftOptions): number {
  const plan = planOf(rig, column, options);
  const chain = buildChain(rig, column.water, plan.segments);
  land(chain, plan);
  const tally = compileTally(chain, plan.stream, { ...plan, settledHeight: null });
  run(compileStepper(chain, plan.stream), tally, plan, floatReserve(rig.float, column.water));
  return tally.effectiveSeconds();
}

/** Lays the chain on the surface along the chord, everything moving with its own water, the sinkers also downwards. */
export function land(chain: Chain, { stream, cast }: Pick<Plan, "stream" | "cast">): void {
  let total = 0;
  for (const rest of chain.rest) total += rest;
  let along = 0;
  const surface = stream.speed(stream.depth);
  for (let i = 0; i < chain.nodes; i++) {
    if (i > 0) along += chain.rest[i - 1]! / total;
    const across = along * cast.sinkerAcross;
    chain.position.set([along * cast.sinkerDownstream, across, stream.depth], 3 * i);
    const down = chain.sinkerOf[i]! < 0 ? 0 : -cast.entrySpeed;
    chain.velocity.set([surface * Math.max(0, 1 + stream.laneShare * across), 0, down], 3 * i);
  }
}

interface Run {
  readonly outcome: Drift["outcome"];
  readonly steps: number;
}

function run(stepper: Stepper, tally: Tally, plan: Plan, reserve: number): Run {
  const { position, velocity } = stepper.chain;
  let load = 0;
  let steps = 0;
  let mended = 0;
  const next = (): number => plan.mends[mended]?.at ?? Number.POSITIVE_INFINITY;
  while (plan.duration - tally.time() > 1e-9) {
    while (next() <= tally.time() + 1e-9) plan.stream.hold.force = plan.mends[mended++]?.held ?? 0;
    const step = Math.min(plan.timeStep, plan.duration - tally.time(), next() - tally.time());
    const speedBefore = velocity[0]!;
    stepper.advance(step, load);
    steps++;
    const pull = pullOnFloat(stepper.chain);
    load += (step / (loadMemory + step)) * (pull - load);
    const beyond = position[0]! - plan.runLength;
    if (beyond >= 0) {
      const back = Math.min(step, beyond / velocity[0]!);
      for (let k = 0; k < position.length; k++) position[k]! -= back * velocity[k]!;
      tally.add(step - back);
      return { outcome: "run-ended", steps };
    }
    tally.add(step);
    if (load > reserve) return { outcome: "drowned", steps };
    const change = Math.abs(velocity[0]! - speedBefore) / step;
    const waits = mended < plan.mends.length;
    if (!waits && pull <= reserve && isStationary(stepper.chain, change, plan.stationary)) {
      return { outcome: extend(stepper.chain, tally, plan), steps };
    }
  }
  return { outcome: "time-ended", steps };
}

/** What the line pulls down on the float, N. */
function pullOnFloat({ position, tension, rest }: Chain): number {
  return (tension[0]! * (position[2]! - position[5]!)) / rest[0]!;
}

/** Everything moves with the float, which gains less than ten times the tolerance each second. */
function isStationary({ velocity }: Chain, change: number, tolerance: number): boolean {
  if (change >= 10 * tolerance) return false;
  for (let k = 3; k < velocity.length; k++) {
    if (Math.abs(velocity[k]! - (k % 3 === 0 ? velocity[0]! : k % 3 === 1 ? velocity[1]! : 0)) >= tolerance) {
      return false;
    }
  }
  return true;
}

/** The rest of a run in which nothing changes any more. */
function extend({ position, velocity }: Chain, tally: Tally, plan: Plan): Drift["outcome"] {
  const left = plan.duration - tally.time();
  const distance = plan.runLength - position[0]!;
  const ends = distance < left * velocity[0]!;
  tally.extend(ends ? distance / velocity[0]! : left);
  return ends ? "run-ended" : "time-ended";
}
