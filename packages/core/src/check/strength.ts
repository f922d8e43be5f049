/** What breaks first, and whether the tippet suits the fly. */

import { tippetStrength } from "../tackle/index.js";
import { inches, type Newtons, newtons, ratio, requirePositive, requireWithin } from "../units/index.js";
import type { CheckStop } from "./finding.js";
import { type Question, readingOf } from "./question.js";

/** Share of a line's strength that its knot leaves. Common practice, no source, from memory: 0.7 to 0.95 by knot and hand. */
export const usualKnotShare = 0.8;
/** A dropper that bears more than this share of the leader may outlast it: strengths scatter by a tenth and more. Our assumption. */
export const closeShare = 0.9;
/** X rating over hook size, and how far off still suits. Common practice, no source. */
export const xPerHookSize: number = 1 / 3;
export const suitsWithin = 1.5;

/** What the leader bears at its knot, null where nobody said. Throws QuantityError for a share outside 0.1 to 1. */
export function leaderStrength({ leader }: CheckStop): Newtons | null {
  const share = knotShare("share that the knot of the leader leaves", leader?.knotShare);
  const bears = leader?.breakingForce ?? (leader?.tippet && tippetStrength(leader.tippet));
  if (bears === undefined) return null;
  requirePositive("strength of the leader", bears, "N");
  return newtons(share * bears);
}

function knotShare(name: string, given: number | undefined): number {
  const share = given ?? usualKnotShare;
  requireWithin(name, share, 0.1, 1);
  return share;
}

/** The dropper has to break first: then a snag costs one fly. */
const order: Question = {
  levers: ["tippet"],
  ask: ({ pieces, stop }) => {
    const leader = leaderStrength(stop);
    const share = knotShare("share that the knots of the dropper leave", stop.knotShare);
    if (leader === null) return null;
    const dropper = newtons(share * tippetStrength(pieces.tippet));
    const over = ratio(dropper, leader);
    return readingOf(
      {
        basis: "practice",
        numbers: [
          { name: "strengthRatio", kind: "number", value: over },
          { name: "dropper", kind: "strength", value: dropper },
          { name: "leader", kind: "strength", value: leader },
        ],
      },
      { when: over > 1, severity: "fix", code: "dropper-outlasts-leader" },
      { when: over > closeShare, severity: "watch", code: "line-order-close" },
    );
  },
};

/** X of a diameter, off the scale too. */
export function xOf(diameter: number): number {
  return 11 - (1000 * diameter) / inches(1);
}

const tippet: Question = {
  levers: ["tippet"],
  ask: ({ pieces }) => {
    const x = xOf(pieces.tippet.diameter);
    const suits = xPerHookSize * pieces.nymph.size;
    return readingOf(
      {
        basis: "practice",
        numbers: [
          { name: "xOff", kind: "number", value: Math.abs(x - suits) },
          { name: "x", kind: "number", value: x },
          { name: "suits", kind: "number", value: suits },
          { name: "hook", kind: "number", value: pieces.nymph.size },
          { name: "bears", kind: "strength", value: tippetStrength(pieces.tippet) },
        ],
      },
      { when: x < suits - suitsWithin - 1e-9, severity: "watch", code: "tippet-coarse" },
      { when: x > suits + suitsWithin + 1e-9, severity: "watch", code: "tippet-fine" },
    );
  },
};

export const strengthQuestions: readonly Question[] = [order, tippet];
