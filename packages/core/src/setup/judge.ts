/** A rig judged in full at a stop: its settled drift, its path from the cast, and what they mean to the fish. Model §8. */

import { drift, type Settled } from "../drift/index.js";
import { type Rig, rig } from "../rig/index.js";
import { joinGrounds } from "../sources/index.js";
import { buildDry, buildNymph, buildTippet } from "../tackle/index.js";
import { metresPerSecond, type Newtons, seconds } from "../units/index.js";
import { driftOptions } from "./estimate.js";
import type { Judgement, Pieces, SurfaceState } from "./stop.js";
import type { Needs } from "./survey.js";

/** The drift that setups are judged by: links as by default, steps of 0.02 s (effective seconds then are within 0.3 % of ever shorter steps on
 *  usual rigs), and steady from where speeds change by less than a thousandth of a usual stream. */
const full = { timeStep: seconds(0.02), stationary: metresPerSecond(1e-3), instants: 0 } as const;

/** Judges one set of pieces with the drift at full fidelity. */
export function judge(
  needs: Pick<Needs, "stop" | "window" | "runLength" | "excessScale"> & {
    readonly held?: Newtons;
    readonly settled?: Settled;
  },
  pieces: Pieces,
): Judgement {
  const dry = buildDry(pieces.dry);
  const nymph = buildNymph(pieces.nymph);
  const tippet = buildTippet(pieces.tippet, pieces.dropper);
  const made: Rig = rig(dry.body, { line: tippet.body, sinker: nymph.body });
  const held = needs.held === undefined ? {} : { held: needs.held };
  const hung = needs.settled === undefined ? {} : { settled: needs.settled };
  const run = drift(made, needs.stop.column, { ...driftOptions(needs), ...full, ...held, ...hung });
  const { outcome, settled, settling, secondsInWindow, effectiveSeconds } = run;
  return {
    ...pieces,
    rig: made,
    outcome,
    settled,
    settling,
    secondsInWindow,
    effectiveSeconds,
    floatMargin: settled.floatMargin,
    splash: nymph.body.mass * (needs.stop.cast?.entrySpeed ?? 0.5),
    grounds: joinGrounds(run.grounds, dry.grounds, nymph.grounds, tippet.grounds),
  };
}
/** Splash that each state of the surface hides, kg m/s: above it a splash counts. Common practice for the order, our assumption for the sizes. */
export const hiddenSplash: Readonly<Record<SurfaceState, number>> = {
  glassy: 5e-5,
  rippled: 1.5e-4,
  broken: 1e-3,
};

/** Orders judgements: effective seconds in steps of 1 % of the best, then the splash that shows, the shorter dropper, the lesser slip. */
export function inOrder(judgements: readonly Judgement[], surface: SurfaceState): readonly Judgement[] {
  const best = Math.max(...judgements.map((j) => j.effectiveSeconds), 1e-9);
  const step = (j: Judgement): number => Math.round(((best - j.effectiveSeconds) / best) * 100);
  const shows = (j: Judgement): number => Math.max(0, j.splash - hiddenSplash[surface]);
  const slip = (j: Judgement): number => Math.abs(j.settled.slip);
  return [...judgements].sort(
    (a, b) => step(a) - step(b) || shows(a) - shows(b) || a.dropper - b.dropper || slip(a) - slip(b),
  );
}
