/** The single change worth making: judged with several rigs and waters of the posterior, not with the most likely one alone. */

import { waterColumn } from "../column/index.js";
import { holdInStep, type Settled, settle } from "../drift/index.js";
import { hypot } from "../elementary/index.js";
import { fishWindow, type LieObservation } from "../lie/index.js";
import { type Rig, rig } from "../rig/index.js";
import { changeBetween, type Judgement, judge, type Pieces } from "../setup/index.js";
import { buildDry, buildNymph, buildTippet } from "../tackle/index.js";
import { metres, type Newtons, newtons, seconds } from "../units/index.js";
import { pieceChanges } from "./adjust-candidates.js";
import { type Factors, observationWith, type Prior, piecesWith, treatmentWith } from "./adjust-prior.js";
import type { AdjustQuestion, RigChange } from "./adjust-types.js";

/** Changes judged in full: the best by their settled rigs. */
const judgedInFull = 2;
/** Seconds that one drift may last at most, as in ranking. */
const longest = 60;

interface Candidate {
  readonly part: RigChange["part"];
  readonly to: Pieces;
  readonly held: Newtons | null;
}

/** A water and a state of the rig out of the posterior. */
interface Draw {
  readonly factors: Factors;
  readonly treatment: number;
  readonly needs: Parameters<typeof judge>[0];
}

export interface Advice {
  readonly next: RigChange | null;
  readonly settled: number;
  readonly judged: number;
  readonly changes: number;
}

/** The best single change over equally likely draws: all by their settled rigs, the best two and the rig in hand judged in full. A nymph on
 *  the bed counts for nothing, and a change must leave the dry the least margin in half of the draws, or no less than it has.
 *  Throws QuantityError for a box that allows too many changes. */
export function adviseChange(question: AdjustQuestion, prior: Prior, factors: readonly Factors[]): Advice {
  const draws = factors.map((f) => drawOf(question, prior, f));
  const present: Candidate = { part: "dropper", to: question.inHand, held: null };
  const candidates = candidatesOf(question, draws);
  const own = draws.map((draw) => steadily(draw, present));
  const gainOf = (candidate: Candidate): number => {
    const then = draws.map((draw) => steadily(draw, candidate));
    const least = question.leastMargin ?? 1.5;
    const bears = then.filter(({ margin }, i) => margin >= Math.min(least, own[i]!.margin)).length;
    return 2 * bears < draws.length ? 0 : meanOf(then.map((one, i) => one.seconds - own[i]!.seconds));
  };
  const screened = candidates
    .map((candidate) => ({ candidate, gain: gainOf(candidate) }))
    .filter(({ gain }) => gain > 0)
    .sort((a, b) => b.gain - a.gain)
    .slice(0, judgedInFull);
  const before = screened.length === 0 ? [] : draws.map((draw) => judgeIn(draw, present));
  const [best] = screened
    .map(({ candidate }) => changeOf(draws, before, candidate))
    .filter(({ gain }) => gain > 0.01)
    .sort((a, b) => b.gain - a.gain);
  return {
    next: best ?? null,
    settled: (candidates.length + 1) * draws.length,
    judged: before.length * (1 + screened.length),
    changes: candidates.length,
  };
}

function drawOf(question: AdjustQuestion, prior: Prior, factors: Factors): Draw {
  const column = waterColumn(observationWith(prior, question.observation, factors));
  const { cast, wind, lie, runLength, excessScale } = question;
  return {
    factors,
    treatment: treatmentWith(prior, factors),
    needs: {
      stop: { column, ...(cast === undefined ? {} : { cast }), ...(wind === undefined ? {} : { wind }) },
      window: fishWindow(column, lieWith(lie, factors.depth)),
      runLength: runLength ?? 6,
      excessScale: excessScale ?? 0.3,
    },
  };
}

/** A stated holding height keeps its share of the depth. */
function lieWith(lie: LieObservation = {}, factor: number): LieObservation {
  const { holdingHeight } = lie;
  return holdingHeight === undefined ? lie : { ...lie, holdingHeight: metres(holdingHeight * factor) };
}

/** One change of a piece, the dry dressed anew, and where it helps the hold that brings the nymph in step in the middle draw. */
function candidatesOf(question: AdjustQuestion, draws: readonly Draw[]): readonly Candidate[] {
  const { inHand, cast = {} } = question;
  // where the flies land is stated: the dropper has to reach that far (0.6 of it upstream and 0.8 across, unless stated)
  const across = Math.abs(cast.sinkerAcross ?? 0);
  const apart = cast.sinkerDownstream === undefined ? across / 0.8 : hypot(cast.sinkerDownstream, across);
  const pieces = pieceChanges(question)
    .filter(({ to }) => to.dropper === inHand.dropper || to.dropper >= apart)
    .map((change): Candidate => ({ ...change, held: null }));
  const dressed: Candidate = { part: "dressing", to: dressedAnew(inHand), held: null };
  const middle = draws[draws.length >> 1]!;
  const { column, wind } = middle.needs.stop;
  const made = rigIn(middle, { ...dressed, part: "dropper", to: inHand });
  const free = settle(made, column, wind === undefined ? {} : { wind });
  const hold = holdInStep(made, column, free, newtons(0.02), wind);
  if (hold.reach !== "held") return [...pieces, dressed];
  return [...pieces, dressed, { part: "hold", to: inHand, held: hold.point.force }];
}

function dressedAnew(pieces: Pieces): Pieces {
  const { dry } = pieces;
  return { ...pieces, dry: { ...dry, measured: { ...dry.measured, treatment: 1 } } };
}

/** The pieces of a candidate as they fish in a draw: with its drag on the nymph, and its treatment unless they are dressed anew. */
function piecesIn({ factors, treatment }: Draw, { part, to }: Candidate): Pieces {
  return piecesWith(to, factors, part === "dressing" ? 1 : treatment);
}

function rigIn(draw: Draw, candidate: Candidate): Rig {
  const { dry, nymph, tippet, dropper } = piecesIn(draw, candidate);
  const line = buildTippet(tippet, dropper).body;
  return rig(buildDry(dry).body, { line, sinker: buildNymph(nymph).body });
}

function judgeIn(draw: Draw, candidate: Candidate): Judgement {
  const held = candidate.held === null ? {} : { held: candidate.held };
  return judge({ ...draw.needs, ...held }, piecesIn(draw, candidate));
}

/** Effective seconds of a whole run with the rig settled from the start: what a change can gain at most, for a twentieth of a judged drift. */
function steadily(draw: Draw, candidate: Candidate): { readonly seconds: number; readonly margin: number } {
  const { stop, window, runLength, excessScale } = draw.needs;
  const pulls = {
    ...(stop.wind === undefined ? {} : { wind: stop.wind }),
    ...(candidate.held === null ? {} : { held: candidate.held }),
  };
  const settled = settle(rigIn(draw, candidate), stop.column, pulls);
  const lowest = settled.sinkers.at(-1);
  const inside =
    lowest !== undefined && lowest.heightAboveBed >= window.low && lowest.heightAboveBed <= window.high;
  const fishes = inside && hangs(settled) && settled.driftSpeed > 0;
  const weight = 1 / (1 + ((lowest?.excess ?? 0) / excessScale) ** 2);
  const ran = fishes ? Math.min(longest, runLength / settled.driftSpeed) * weight : 0;
  return { seconds: ran, margin: settled.floatMargin };
}

/** What is no piece costs effort. */
const costs: Readonly<Partial<Record<RigChange["part"], string>>> = {
  dressing: "the time it takes, again and again",
  hold: "a steady hand for the whole drift",
};

function hangs({ regime }: Settled): boolean {
  return regime === "hanging" || regime === "slack-water";
}

function changeOf(
  draws: readonly Draw[],
  before: readonly Judgement[],
  { part, to, held }: Candidate,
): RigChange {
  const then = draws.map((draw) => judgeIn(draw, { part, to, held }));
  const counted = (judged: Judgement): number =>
    judged.settled.regime === "on-bed" ? 0 : judged.effectiveSeconds;
  const gains = then.map((judged, i) => counted(judged) - counted(before[i]!));
  const middle = draws.length >> 1;
  return {
    part,
    to,
    held,
    gain: seconds(meanOf(gains)),
    gainsIn: gains.filter((gain) => gain > 0).length / gains.length,
    cost: costs[part] ?? changeBetween(before[middle]!, then[middle]!, "dropper").cost,
  };
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
