/** From every candidate of a box to the few worth judging in full. */

import { type DriftOptions, effectiveSecondsOf, type SettleOptions, settle } from "../drift/index.js";
import {
  type Float,
  type FloatKernel,
  floatKernel,
  type Line,
  type Sinker,
  terminalSpeed,
} from "../forces/index.js";
import type { FishWindow } from "../lie/index.js";
import { type Rig, rig } from "../rig/index.js";
import { type Box, buildDry, buildNymph, buildTippet, tippetStrength } from "../tackle/index.js";
import { metres, metresPerSecond, seconds } from "../units/index.js";
import { type HungCurve, hungCurve, meetFloat, readCurve } from "./hung-curve.js";
import type { RefusalReason, Stop } from "./stop.js";

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
/** Candidates on the shortlist with one pair of flies. */
const perPair = 3;

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
  /** Effective seconds, with what settling costs taken from a coarse drift of the same nymph on its dropper; -1 where a hard limit refuses it. */
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
  const weight = new Float64Array(count);
  /** Seconds lost before a nymph on its dropper has settled, whatever the dry. */
  const lost = new Float64Array(hungs).fill(Number.NaN);
  const refused = new Map<RefusalReason, number>();
  const refuse = (reason: RefusalReason, many: number): void => {
    if (many > 0) refused.set(reason, (refused.get(reason) ?? 0) + many);
  };
  const ideal = new Float64Array(count);
  const margin = new Float64Array(count);
  const leastFloat = bodies.kernels.reduce((a, b) => (b.dragAt(1, b.height) < a.dragAt(1, a.height) ? b : a));
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
    const curve = hungCurve(leastFloat, line, sinker, stop.column);
    curves++;
    const soonest = freeFall(needs, sinker);
    for (let dry = 0; dry < size.dry; dry++) {
      const index = hung * size.dry + dry;
      const judged = curve === null ? null : judgeSettled(needs, curve, dry);
      if (judged === null) refuse("never-in-window", 1);
      else if (judged.margin < nearMargin * needs.leastMargin) refuse("float-margin", 1);
      else {
        margin[index] = judged.margin;
        weight[index] = judged.weight;
        ideal[index] = judged.seconds * judged.weight;
        bound[index] = boundOf(judged, soonest);
      }
    }
  }
  /** Settles a candidate whose interpolated margin is close to the limit, once, and refuses it if it is below. */
  const checkMargin = (index: number): void => {
    margin[index] = settle(rigOf(bodies, candidateAt(index)), stop.column, windOf(stop)).floatMargin;
    if (margin[index] >= needs.leastMargin) margin[index] = Number.POSITIVE_INFINITY;
    else {
      bound[index] = -1;
      refuse("float-margin", 1);
    }
  };
  const estimate = (index: number): number => {
    if (bound[index]! >= 0 && margin[index]! < needs.leastMargin / nearMargin) checkMargin(index);
    if (bound[index]! < 0) return -1;
    const hung = Math.floor(index / size.dry);
    if (Number.isNaN(lost[hung]!)) {
      drifts++;
      const low = coarseSeconds(needs, candidateAt(index));
      const likely = low + raised * Math.max(0, bound[index]! - low);
      lost[hung] = (ideal[index]! - likely) / weight[index]!;
    }
    return Math.max(0, ideal[index]! - lost[hung]! * weight[index]!);
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
    estimate,
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

interface FreeFall {
  /** Seconds from just under the surface to the top of the window, without a line: sooner than any line allows. */
  readonly soonest: number;
  readonly speed: number;
}

function freeFall({ stop, window }: Needs, sinker: Sinker): FreeFall {
  const speed = terminalSpeed(sinker, stop.column.water);
  return { soonest: Math.max(0, stop.column.depth - window.high - entryDepth) / speed, speed };
}

/** More effective seconds than the drift can have: from the soonest moment on in the window, in perfect step until it has settled (twice as
 *  long as free fall to that height), then as settled. */
function boundOf({ seconds, weight, fall }: SettledJudgement, { soonest, speed }: FreeFall): number {
  const inStep = Math.min(seconds - soonest, Math.max(0, (2 * fall) / speed - soonest));
  return Math.max(0, inStep + (seconds - soonest - inStep) * weight);
}

/** Depth in which a sinker loses its speed of entry, m: a nymph does within a few of its lengths. */
const entryDepth = 0.03;

interface SettledJudgement {
  readonly margin: number;
  /** Time to the end of the run at the settled speed, s. */
  readonly seconds: number;
  readonly weight: number;
  /** Depth of the settled sinker, m. */
  readonly fall: number;
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
    fall: stop.column.depth - height,
  };
}

/** Interpolation may miss the margin by this share: what is close to the limit is settled to decide. */
const nearMargin = 0.97;
/** Interpolation may miss the height by this much, m. */
const nearWindow = 0.005;

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

/** The candidates most worth a full judgement, at most three of one pair of flies: estimated by falling bound until no bound can reach the
 *  last place. */
export function shortlist(field: Field, places: number): readonly number[] {
  const order = Array.from({ length: field.count }, (_, index) => index)
    .filter((index) => field.bound[index]! > 0)
    .sort((a, b) => field.bound[b]! - field.bound[a]! || a - b);
  let best: { readonly index: number; readonly pair: number; readonly estimate: number }[] = [];
  for (const index of order) {
    const last = best[places - 1];
    if (last !== undefined && field.bound[index]! <= last.estimate) break;
    const pair = field.pairOf(index);
    const twins = best.filter((other) => other.pair === pair);
    const out = twins.length >= perPair ? twins.at(-1) : last;
    const toBeat = out?.estimate ?? -1;
    if (field.bound[index]! <= toBeat) continue;
    const estimate = field.estimate(index);
    if (estimate <= toBeat) continue;
    best = [...best.filter((other) => other !== out), { index, pair, estimate }];
    best.sort((a, b) => b.estimate - a.estimate);
  }
  return best.map(({ index }) => index);
}
