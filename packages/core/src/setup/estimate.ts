/** What a candidate is worth by a drift that costs a tenth of a judged one. */

import { type DriftOptions, effectiveSecondsOf, type SettleOptions, settle } from "../drift/index.js";
import { type Rig, rig } from "../rig/index.js";
import { metres, metresPerSecond, seconds } from "../units/index.js";
import type { RefusalReason, Stop } from "./stop.js";
import type { Bodies, Candidate, Field, Needs, SettledJudgement } from "./survey.js";

/** Seconds that one drift may last at most. */
export const longestDrift = 60;
/** A whole drift by a few long steps: a tenth of the cost of a judged one, late where the line is long and light, since a link cannot curve. */
const coarse: Fidelity = {
  segments: 2,
  timeStep: seconds(0.05),
  stationary: metresPerSecond(5e-3),
  instants: 0,
};
/** So a coarse drift is low: it is raised by this share of its distance to the bound before anything is passed over for it. */
const raised = 0.6;
type Fidelity = Pick<DriftOptions, "segments" | "timeStep" | "stationary" | "instants">;

/** Interpolation may miss the margin by this share: what is close to the limit is settled to decide. */
export const nearMargin = 0.985;
export interface Survey {
  readonly judged: (SettledJudgement | null)[];
  readonly bound: Float64Array;
  readonly refuse: (reason: RefusalReason) => void;
  readonly work: { drifts: number };
}

/** Estimates by coarse drifts, one for each nymph and length of dropper, remembered. */
export function estimator(
  needs: Needs,
  numbers: Pick<Field, "count" | "size" | "candidateAt">,
  survey: Survey,
): Field["estimate"] {
  const { judged, bound, refuse, work } = survey;
  /** Seconds lost before a nymph on a length of dropper has settled, whatever the tippet and the dry. */
  const lost = new Float64Array(numbers.size.nymph * numbers.size.dropper).fill(Number.NaN);
  const decided = new Set<number>();
  /** Settles a candidate whose interpolated margin is close to the limit, and refuses it if it is below. */
  const decide = (index: number): void => {
    decided.add(index);
    const rig = rigOf(needs.bodies, numbers.candidateAt(index));
    if (settle(rig, needs.stop.column, windOf(needs.stop)).floatMargin >= needs.leastMargin) return;
    bound[index] = -1;
    refuse("float-margin");
  };
  return (index) => {
    const here = judged[index] ?? null;
    if (here === null || bound[index]! < 0) return -1;
    if (here.margin < needs.leastMargin / nearMargin && !decided.has(index)) decide(index);
    if (bound[index]! < 0) return -1;
    const ideal = here.seconds * here.weight;
    const { nymph, dropper } = numbers.candidateAt(index);
    const family = nymph * numbers.size.dropper + dropper;
    if (Number.isNaN(lost[family]!)) {
      work.drifts++;
      const low = coarseSeconds(needs, numbers.candidateAt(index));
      const likely = low + raised * Math.max(0, bound[index]! - low);
      lost[family] = (ideal - likely) / here.weight;
    }
    return Math.max(0, ideal - lost[family]! * here.weight);
  };
}

function coarseSeconds(needs: Needs, candidate: Candidate): number {
  const made = rigOf(needs.bodies, candidate);
  return effectiveSecondsOf(made, needs.stop.column, { ...driftOptions(needs), ...coarse });
}

function rigOf(bodies: Bodies, { dry, nymph, tippet, dropper }: Candidate): Rig {
  return rig(bodies.floats[dry]!, { line: bodies.lines[tippet]![dropper]!, sinker: bodies.sinkers[nymph]! });
}

function windOf({ wind }: Stop): SettleOptions {
  return wind === undefined ? {} : { wind };
}

/** The drift that ranking judges by. */
export function driftOptions({
  stop,
  window,
  runLength,
  excessScale,
}: Pick<Needs, "stop" | "window" | "runLength" | "excessScale">): DriftOptions {
  return {
    ...windOf(stop),
    ...(stop.cast === undefined ? {} : { cast: stop.cast }),
    runLength: metres(runLength),
    duration: seconds(longestDrift),
    window: { low: window.low, high: window.high },
    excessScale: metresPerSecond(excessScale),
  };
}
