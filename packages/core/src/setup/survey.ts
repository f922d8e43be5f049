/** Every candidate of a box by its settled drift alone: hard limits, and a bound on what the whole drift can be worth. */

import {
  type Float,
  type FloatKernel,
  floatKernel,
  type Line,
  type Sinker,
  terminalSpeed,
} from "../forces/index.js";
import type { FishWindow } from "../lie/index.js";
import { type Box, buildDry, buildNymph, buildTippet, tippetStrength } from "../tackle/index.js";
import { estimator, longestDrift, nearMargin } from "./estimate.js";
import { type HungCurve, hungCurve, meetFloat, readCurve } from "./hung-curve.js";
import type { RefusalReason, Stop } from "./stop.js";

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
  /** Effective seconds, with what settling costs taken from a coarse drift of the same nymph and length; -1 where a hard limit refuses it. */
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
  const numbers = numbering(needs.box);
  const judged: (SettledJudgement | null)[] = Array.from({ length: numbers.count }, () => null);
  const bound = new Float64Array(numbers.count).fill(-1);
  const refused = new Map<RefusalReason, number>();
  const refuse = (reason: RefusalReason): void => void refused.set(reason, (refused.get(reason) ?? 0) + 1);
  const work = { curves: 0, drifts: 0 };
  const leastFloat = needs.bodies.kernels.reduce((a, b) =>
    b.dragAt(1, b.height) < a.dragAt(1, a.height) ? b : a,
  );
  let like: HungCurve | null = null;
  for (let first = 0; first < numbers.count; first += numbers.size.dry) {
    const hung = surveyHung(needs, numbers.candidateAt(first), leastFloat, like);
    if (hung.curve !== undefined) work.curves++;
    like = hung.curve ?? like;
    for (let dry = 0; dry < numbers.size.dry; dry++) {
      const found = hung.judge(dry);
      if (typeof found === "string") refuse(found);
      else {
        judged[first + dry] = found;
        bound[first + dry] = boundOf(found, hung.fall);
      }
    }
  }
  const estimate = estimator(needs, numbers, { judged, bound, refuse, work });
  return { ...numbers, bound, estimate, refused, work: () => work };
}

/** Candidates by number: all dries of one hung nymph stand together. */
function numbering(box: Box): Pick<Field, "count" | "size" | "candidateAt" | "indexOf" | "pairOf"> {
  const { dries, nymphs, tippets, dropperLengths } = box;
  const size = {
    dry: dries.length,
    nymph: nymphs.length,
    tippet: tippets.length,
    dropper: dropperLengths.length,
  };
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
  return {
    count: size.dry * size.nymph * size.tippet * size.dropper,
    size,
    candidateAt,
    indexOf: ({ dry, nymph, tippet, dropper }) =>
      ((nymph * size.tippet + tippet) * size.dropper + dropper) * size.dry + dry,
    pairOf: (index) => {
      const { dry, nymph } = candidateAt(index);
      return nymph * size.dry + dry;
    },
  };
}

interface SurveyedHung {
  /** Null where the line cannot hang; undefined where a limit spared the curve. */
  readonly curve: HungCurve | null | undefined;
  readonly fall: FreeFall;
  readonly judge: (dry: number) => SettledJudgement | RefusalReason;
}

/** One nymph on its dropper, ready to be judged under every dry. */
function surveyHung(
  needs: Needs,
  { nymph, tippet, dropper }: Candidate,
  leastFloat: FloatKernel,
  like: HungCurve | null,
): SurveyedHung {
  const { bodies, stop, leastMargin } = needs;
  const line = bodies.lines[tippet]![dropper]!;
  const sinker = bodies.sinkers[nymph]!;
  const fall = freeFall(needs, sinker);
  const limit = hardLimit(needs, line, bodies.strengths[tippet]!);
  if (limit !== null) return { curve: undefined, fall, judge: () => limit };
  const curve = hungCurve(leastFloat, line, sinker, stop.column, like);
  const judge = (dry: number): SettledJudgement | RefusalReason => {
    const judged = curve === null ? null : judgeSettled(needs, curve, dry);
    if (judged === null) return "never-in-window";
    return judged.margin < nearMargin * leastMargin ? "float-margin" : judged;
  };
  return { curve, fall, judge };
}

/** What needs no curve: also a line too short to reach the window even hanging plumb. */
function hardLimit({ stop, window }: Needs, line: Line, strength: number): RefusalReason | null {
  if (line.length >= stop.column.depth) return "dropper-longer-than-depth";
  if (stop.column.depth - line.length > window.high + nearWindow) return "never-in-window";
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

export interface SettledJudgement {
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
  const height = readCurve(curve.speeds, curve.support, speed);
  if (height < window.low - nearWindow || height > window.high + nearWindow) return null;
  const excess = (speed - curve.speedAt(height)) / excessScale;
  return {
    margin: bodies.reserves[dry]! / readCurve(curve.speeds, curve.load, speed),
    seconds: speed > 0 ? Math.min(longestDrift, runLength / speed) : longestDrift,
    weight: 1 / (1 + excess * excess),
    fall: stop.column.depth - height,
  };
}

/** Interpolation may miss the height by this much, m. */
const nearWindow = 0.005;
