/** From every candidate of a box to the few worth judging in full. */

import { type DriftOptions, effectiveSecondsOf } from "../drift/index.js";
import {
  type Float,
  type FloatKernel,
  floatKernel,
  type Line,
  type Sinker,
  terminalSpeed,
} from "../forces/index.js";
import type { FishWindow } from "../lie/index.js";
import { rig } from "../rig/index.js";
import { type Box, buildDry, buildNymph, buildTippet, tippetStrength } from "../tackle/index.js";
import { metres, metresPerSecond, seconds } from "../units/index.js";
import { type HungCurve, hungCurve, meetFloat, readCurve } from "./hung-curve.js";
import type { RefusalReason, Stop } from "./stop.js";

/** Seconds that one drift may last at most. */
export const longestDrift = 60;
/** A whole drift by a few long steps: a fifteenth of the cost, about 2 % low, and so for all alike. */
export const coarse: Fidelity = {
  segments: 2,
  timeStep: seconds(0.05),
  stationary: metresPerSecond(3e-3),
  instants: 0,
};

type Fidelity = Pick<DriftOptions, "segments" | "timeStep" | "stationary" | "instants">;

/** The bodies of a box, each built once. */
export interface Bodies {
  readonly floats: readonly Float[];
  readonly kernels: readonly FloatKernel[];
  readonly reserves: Float64Array;
  readonly sinkers: readonly Sinker[];
  /** By tippet, then by dropper length. */
  readonly lines: readonly (readonly Line[])[];
  readonly strengths: readonly number[];
}

export function buildBodies(box: Box, { column }: Stop): Bodies {
  const floats = box.dries.map((dry) => buildDry(dry).body);
  const kernels = floats.map((float) => floatKernel(float, column.water));
  return {
    floats,
    kernels,
    reserves: Float64Array.from(kernels, (k) => Math.max(0, k.buoyantReserve + k.film)),
    sinkers: box.nymphs.map((nymph) => buildNymph(nymph).body),
    lines: box.tippets.map((tippet) => box.dropperLengths.map((length) => buildTippet(tippet, length).body)),
    strengths: box.tippets.map((tippet) => tippetStrength(tippet)),
  };
}

/** A candidate by the places of its pieces in the box; also the sizes of a box. */
export interface Candidate {
  readonly dry: number;
  readonly nymph: number;
  readonly tippet: number;
  readonly dropper: number;
}

/** Everything the ranking knows of a box at a stop; candidates by number. */
export interface Field {
  readonly count: number;
  readonly size: Candidate;
  readonly candidateAt: (index: number) => Candidate;
  readonly indexOf: (candidate: Candidate) => number;
  /** A number for the two flies of a candidate. */
  readonly pairOf: (index: number) => number;
  /** No candidate can earn more effective seconds than this; -1 where a hard limit refuses it. */
  readonly bound: Float64Array;
  /** Effective seconds by a coarse drift of a rig of the same nymph and dropper; at most the bound. */
  readonly estimate: (index: number) => number;
  readonly refused: ReadonlyMap<RefusalReason, number>;
  readonly work: () => { readonly curves: number; readonly drifts: number };
}

/** What every part of a ranking needs. */
export interface Needs {
  readonly stop: Stop;
  readonly box: Box;
  readonly bodies: Bodies;
  readonly window: FishWindow;
  readonly runLength: number;
  readonly excessScale: number;
  readonly leastMargin: number;
}

/** Judges every candidate of the box by its settled drift alone, hard limits first. */
export function surveyBox(needs: Needs): Field {
  const { stop, box, bodies } = needs;
  const size = sizesOf(box);
  const hungs = size.nymph * size.tippet * size.dropper;
  const count = hungs * size.dry;
  const bound = new Float64Array(count).fill(-1);
  const losses = new Float64Array(hungs).fill(Number.NaN);
  const refused = new Map<RefusalReason, number>();
  const refuse = (reason: RefusalReason, many: number): void => {
    if (many > 0) refused.set(reason, (refused.get(reason) ?? 0) + many);
  };
  const ideal = new Float64Array(count);
  let curves = 0;
  let drifts = 0;
  const candidateAt = (index: number): Candidate => {
    const hung = Math.floor(index / size.dry);
    const line = Math.floor(hung / size.dropper);
    return {
      dry: index % size.dry,
      dropper: hung % size.dropper,
      tippet: line % size.tippet,
      nymph: Math.floor(line / size.tippet),
    };
  };
  for (let hung = 0; hung < hungs; hung++) {
    const { nymph, tippet, dropper } = candidateAt(hung * size.dry);
    const line = bodies.lines[tippet]![dropper]!;
    const limit = hardLimit(needs, line, bodies.strengths[tippet]!);
    if (limit !== null) {
      refuse(limit, size.dry);
      continue;
    }
    const sinker = bodies.sinkers[nymph]!;
    const curve = hungCurve(bodies.kernels[0]!, line, sinker, stop.column);
    curves++;
    const soonest = soonestInWindow(needs, sinker);
    for (let dry = 0; dry < size.dry; dry++) {
      const index = hung * size.dry + dry;
      const judged = curve === null ? null : judgeSettled(needs, curve, dry);
      if (judged === null) refuse("never-in-window", 1);
      else if (judged.margin < needs.leastMargin) refuse("float-margin", 1);
      else {
        ideal[index] = judged.seconds * judged.weight;
        bound[index] = Math.max(0, (judged.seconds - soonest) * judged.weight);
      }
    }
  }
  /** What settling costs a rig in effective seconds: the settled drift over the whole run less a coarse drift of it. */
  const lossOf = (index: number): number => {
    const hung = Math.floor(index / size.dry);
    const known = losses[hung]!;
    if (!Number.isNaN(known)) return known;
    drifts++;
    const loss = Math.max(
      ideal[index]! - bound[index]!,
      ideal[index]! - coarseSeconds(needs, candidateAt(index)),
    );
    losses[hung] = loss;
    return loss;
  };
  return {
    count,
    size,
    candidateAt,
    indexOf: ({ dry, nymph, tippet, dropper }) =>
      ((nymph * size.tippet + tippet) * size.dropper + dropper) * size.dry + dry,
    pairOf: (index) => {
      const { dry, nymph } = candidateAt(index);
      return nymph * size.dry + dry;
    },
    bound,
    estimate: (index) => (bound[index]! < 0 ? bound[index]! : Math.max(0, ideal[index]! - lossOf(index))),
    refused,
    work: () => ({ curves, drifts }),
  };
}

function sizesOf({ dries, nymphs, tippets, dropperLengths }: Box): Candidate {
  return { dry: dries.length, nymph: nymphs.length, tippet: tippets.length, dropper: dropperLengths.length };
}

function hardLimit({ stop }: Needs, line: Line, strength: number): RefusalReason | null {
  if (line.length >= stop.column.depth) return "dropper-longer-than-depth";
  if (stop.leaderStrength !== undefined && strength > stop.leaderStrength) return "dropper-outlasts-leader";
  return null;
}

/** Free fall from just under the surface to the top of the window, without a line: sooner than any line allows. */
function soonestInWindow({ stop, window }: Needs, sinker: Sinker): number {
  const fall = stop.column.depth - window.high - entryDepth;
  return fall > 0 ? fall / terminalSpeed(sinker, stop.column.water) : 0;
}

/** Depth in which a sinker loses its speed of entry, m: a nymph does within a few of its lengths. */
const entryDepth = 0.03;

interface SettledJudgement {
  readonly margin: number;
  /** Time to the end of the run at the settled speed, s. */
  readonly seconds: number;
  readonly weight: number;
}

/** Null where the rig settles outside the window. */
function judgeSettled(
  { stop, bodies, window, runLength, excessScale }: Needs,
  curve: HungCurve,
  dry: number,
): SettledJudgement | null {
  const speed = meetFloat(curve, bodies.kernels[dry]!, stop.column.surfaceSpeed, stop.wind ?? null);
  const height = readCurve(curve, curve.support, speed);
  if (height < window.low - nearWindow || height > window.high + nearWindow) return null;
  const excess = (speed - curve.speedAt(height)) / excessScale;
  return {
    margin: bodies.reserves[dry]! / readCurve(curve, curve.load, speed),
    seconds: speed > 0 ? Math.min(longestDrift, runLength / speed) : longestDrift,
    weight: 1 / (1 + excess * excess),
  };
}

/** Interpolation may miss the height by this much, m. */
const nearWindow = 0.005;

function coarseSeconds(needs: Needs, { dry, nymph, tippet, dropper }: Candidate): number {
  const { bodies, stop } = needs;
  const line = bodies.lines[tippet]![dropper]!;
  const made = rig(bodies.floats[dry]!, { line, sinker: bodies.sinkers[nymph]! });
  return effectiveSecondsOf(made, stop.column, { ...driftOptions(needs), ...coarse });
}

/** The drift that ranking judges by. */
export function driftOptions({
  stop,
  window,
  runLength,
  excessScale,
}: Pick<Needs, "stop" | "window" | "runLength" | "excessScale">): DriftOptions {
  return {
    ...(stop.wind === undefined ? {} : { wind: stop.wind }),
    ...(stop.cast === undefined ? {} : { cast: stop.cast }),
    runLength: metres(runLength),
    duration: seconds(longestDrift),
    window: { low: window.low, high: window.high },
    excessScale: metresPerSecond(excessScale),
  };
}

/** The candidates most worth a full judgement, best first, one for each pair of flies: taken by falling bound, estimated, until no bound
 *  can reach the last place. */
export function shortlist(field: Field, places: number): readonly number[] {
  const order = Array.from({ length: field.count }, (_, index) => index)
    .filter((index) => field.bound[index]! > 0)
    .sort((a, b) => field.bound[b]! - field.bound[a]! || a - b);
  let best: { readonly index: number; readonly pair: number; readonly estimate: number }[] = [];
  for (const index of order) {
    const last = best[places - 1];
    if (last !== undefined && field.bound[index]! <= last.estimate) break;
    const pair = field.pairOf(index);
    const twin = best.find((other) => other.pair === pair);
    const threshold = twin ?? last;
    if (threshold !== undefined && field.bound[index]! <= threshold.estimate) continue;
    const estimate = field.estimate(index);
    if (threshold !== undefined && estimate <= threshold.estimate) continue;
    best = [...best.filter((other) => other !== twin), { index, pair, estimate }]
      .sort((a, b) => b.estimate - a.estimate)
      .slice(0, places);
  }
  return best.map(({ index }) => index);
}
