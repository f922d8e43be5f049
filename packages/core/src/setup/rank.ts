/** The main question: from this water, fish and box, what to tie on. Hard limits first, then effective seconds. Model §8. */

import { type HoldTarget, holdInStep } from "../drift/index.js";
import { fishWindow } from "../lie/index.js";
import { joinGrounds } from "../sources/index.js";
import { type Box, generalBox } from "../tackle/index.js";
import {
  type Metres,
  metres,
  newtons,
  QuantityError,
  requirePositive,
  requireWithin,
  seconds,
} from "../units/index.js";
import { hiddenSplash, inOrder, judge } from "./judge.js";
import { cautionsOf, changeBetween, standingCautions, whyOf } from "./reasons.js";
import { shortlist } from "./shortlist.js";
import type { Change, Judgement, Pieces, Ranking, Setup, Stop } from "./stop.js";
import { buildBodies, type Candidate, type Field, type Needs, surveyBox } from "./survey.js";

/** The most candidates that one ranking takes. */
export const mostCandidates = 100_000;
/** Candidates judged in full for each setup returned, so that the estimate's order need not be exact. */
const judgedPerSetup = 4;

/** The best setups of a box at a stop, with reasons, and the rig in hand placed among them.
 *  Every candidate gets its settled drift from a shared curve; the best are estimated by a coarse drift and the shortlist judged in full:
 *  docs/decisions/ranking.md says how honest that is. Throws QuantityError for an empty box, more than 100,000 candidates or limits out of range. */
export function rankSetups(stop: Stop): Ranking {
  const box = stop.box ?? generalBox;
  const top = stop.top ?? 5;
  checkStop(stop, box, top);
  const window = fishWindow(stop.column, stop.lie);
  const needs: Needs = {
    stop,
    box,
    bodies: buildBodies(box, stop),
    window,
    runLength: stop.runLength ?? 6,
    excessScale: stop.excessScale ?? 0.3,
    leastMargin: stop.leastMargin ?? 1.5,
  };
  const field = surveyBox(needs);
  const listed = shortlist(field, judgedPerSetup * top);
  const judged = listed.map((index) => judge(needs, piecesAt(box, field.candidateAt(index))));
  const within = judged.filter(({ floatMargin }) => floatMargin >= needs.leastMargin);
  const ordered = bestOfPairs(inOrder(within, stop.surface ?? "rippled"));
  const setups = ordered.slice(0, top).map((judgement, i) => {
    const neighbours = neighboursOf(field, listed[judged.indexOf(judgement)]!, box);
    return dress(needs, judgement, {
      place: i + 1,
      placeIsExact: true,
      next: nextOf(needs, judgement, neighbours),
    });
  });
  const inHand =
    stop.inHand === undefined ? null : placeInHand(needs, field, ordered, judge(needs, stop.inHand));
  const { curves, drifts } = field.work();
  return {
    setups,
    inHand,
    candidates: field.count,
    refused: [...field.refused].map(([reason, count]) => ({ reason, count })),
    window,
    cautions: standingCautions,
    work: { curves, settled: listed.length, drifts: drifts + listed.length },
    grounds: joinGrounds(
      stop.column.grounds,
      window.grounds,
      ...setups.map((s) => s.grounds),
      ...(inHand === null ? [] : [inHand.grounds]),
    ),
  };
}

/** The first of each pair of flies. */
function bestOfPairs(ordered: readonly Judgement[]): readonly Judgement[] {
  return ordered.filter((a, i) => ordered.findIndex((b) => b.dry === a.dry && b.nymph === a.nymph) === i);
}

function checkStop(stop: Stop, box: Box, top: number): void {
  let count = 1;
  for (const [name, list] of Object.entries(box)) {
    if (list.length === 0) throw new QuantityError(`${name} of the box`, "at least one", 0);
    count *= list.length;
  }
  requireWithin("candidates of the box", count, 1, mostCandidates);
  requireWithin("setups to return", top, 1, 50);
  requireWithin("length of the run", stop.runLength ?? 6, 0.1, 1000, "m");
  requireWithin("least float margin", stop.leastMargin ?? 1.5, 0, 100);
  requirePositive("excess scale", stop.excessScale ?? 0.3, "m/s");
  requirePositive("strength of the leader", stop.leaderStrength ?? 1, "N");
}

function piecesAt(box: Box, { dry, nymph, tippet, dropper }: Candidate): Pieces {
  return {
    dry: box.dries[dry]!,
    nymph: box.nymphs[nymph]!,
    tippet: box.tippets[tippet]!,
    dropper: box.dropperLengths[dropper]!,
  };
}

/** The rig in hand among all: exact where it is as good as the last setup judged in full, else by the estimates. */
function placeInHand(needs: Needs, field: Field, ordered: readonly Judgement[], hand: Judgement): Setup {
  const place = inOrder([...ordered, hand], needs.stop.surface ?? "rippled").indexOf(hand) + 1;
  const next = nextOf(needs, hand, neighboursOfHand(needs, hand));
  if (place <= ordered.length) return dress(needs, hand, { place, placeIsExact: true, next });
  // bounds overstate by what settling costs: scale them by what the shortlist shows
  const scale = shortlistScale(field, ordered.length);
  let better = 0;
  for (const bound of field.bound) if (bound * scale > hand.effectiveSeconds) better++;
  return dress(needs, hand, { place: Math.max(place, better + 1), placeIsExact: false, next });
}

function shortlistScale(field: Field, places: number): number {
  const listed = shortlist(field, places);
  const shares = listed.map((index) => field.estimate(index) / field.bound[index]!);
  return shares.length === 0 ? 1 : shares.reduce((a, b) => a + b, 0) / shares.length;
}

function dress(
  needs: Needs,
  judgement: Judgement,
  standing: Pick<Setup, "place" | "placeIsExact" | "next">,
): Setup {
  const { stop, window, leastMargin, excessScale } = needs;
  const limits = { leastMargin, excessScale, hiddenSplash: hiddenSplash[stop.surface ?? "rippled"] };
  return {
    ...judgement,
    ...standing,
    hold: holdFor(judgement, stop),
    landAbove: landAbove(judgement),
    cautions: cautionsOf(judgement, stop, window, limits),
    why: whyOf(judgement, stop),
  };
}

function holdFor({ rig, settled }: Judgement, { column, wind }: Stop): HoldTarget {
  return holdInStep(rig, column, settled, newtons(0.02), wind);
}

/** The dry lands this far upstream, so that the nymph, trailing or leading, passes the fish as it settles. */
function landAbove({ settling, settled }: Judgement): Metres | null {
  if (!settling.settles) return null;
  return metres(Math.max(0, settling.distance + (settled.sinkers.at(-1)?.downstreamOfFloat ?? 0)));
}

/** A rig one change away, with its estimate. */
interface Neighbour {
  readonly part: keyof Pieces;
  readonly pieces: Pieces;
  readonly estimate: number;
}

const parts: readonly (keyof Pieces)[] = ["dry", "nymph", "tippet", "dropper"];

/** For each piece of a candidate, the best other one in the box. */
function neighboursOf(field: Field, index: number, box: Box): readonly Neighbour[] {
  const here = field.candidateAt(index);
  const own = field.estimate(index);
  return parts.flatMap((part) => {
    const others = Array.from({ length: field.size[part] }, (_, i) => field.indexOf({ ...here, [part]: i }));
    const best = bestOf(field, others, own);
    return best === null
      ? []
      : [{ part, pieces: piecesAt(box, field.candidateAt(best.index)), estimate: best.estimate }];
  });
}

/** The same for a rig that need not come from the box. */
function neighboursOfHand(needs: Needs, { dry, nymph, tippet, dropper }: Pieces): readonly Neighbour[] {
  const alone: Box = { dries: [dry], nymphs: [nymph], tippets: [tippet], dropperLengths: [dropper] };
  const lists = { dry: "dries", nymph: "nymphs", tippet: "tippets", dropper: "dropperLengths" } as const;
  return parts.flatMap((part) => {
    const box: Box = { ...alone, [lists[part]]: needs.box[lists[part]] };
    const field = surveyBox({ ...needs, box, bodies: buildBodies(box, needs.stop) });
    const best = bestOf(
      field,
      Array.from({ length: field.count }, (_, i) => i),
      0,
    );
    return best === null
      ? []
      : [{ part, pieces: piecesAt(box, field.candidateAt(best.index)), estimate: best.estimate }];
  });
}

function bestOf(
  field: Field,
  indices: readonly number[],
  least: number,
): { readonly index: number; readonly estimate: number } | null {
  let best: { readonly index: number; readonly estimate: number } | null = null;
  for (const index of [...indices].sort((a, b) => field.bound[b]! - field.bound[a]!)) {
    const toBeat = best?.estimate ?? least;
    if (field.bound[index]! <= toBeat) break;
    const estimate = field.estimate(index);
    if (estimate > toBeat) best = { index, estimate };
  }
  return best;
}

/** The single change of one piece that gains most, judged in full; null where none gains a hundredth of a second. */
function nextOf(needs: Needs, from: Judgement, neighbours: readonly Neighbour[]): Change | null {
  if (neighbours.length === 0) return null;
  const best = neighbours.reduce((a, b) => (b.estimate > a.estimate ? b : a));
  const to = judge(needs, best.pieces);
  const gain = to.effectiveSeconds - from.effectiveSeconds;
  return gain > 0.01 && to.floatMargin >= needs.leastMargin
    ? { ...changeBetween(from, to, best.part), gain: seconds(gain) }
    : null;
}
