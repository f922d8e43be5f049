/** Is the dropper of a length for this water and this fish, and does the nymph get there in time? */

import { type Metres, metres, ratio } from "../units/index.js";
import { type Question, readingOf } from "./question.js";

/** A nymph nearer the bed than this catches the higher stones. Our assumption. */
export const nearBed: Metres = metres(0.05);
/** Share of the run from which settling counts as late. Our assumption. */
export const lateShare = 0.75;

const bed: Question = {
  levers: ["dropper", "bead"],
  ask: ({ settled, stop, pieces }) => {
    const height = settled.sinkers.at(-1)!.heightAboveBed;
    return readingOf(
      {
        basis: "assumption",
        numbers: [
          { name: "heightAboveBed", kind: "length", value: height },
          { name: "dropper", kind: "dropper", value: pieces.dropper },
          { name: "depth", kind: "length", value: stop.column.depth },
        ],
      },
      { when: settled.bed !== null, severity: "fix", code: "nymph-on-bed" },
      { when: height < nearBed, severity: "watch", code: "nymph-near-bed" },
    );
  },
};

/** In quick water such a rig may hang clear on a slant, and lies on the bed wherever the stream slackens. */
const length: Question = {
  levers: ["dropper"],
  ask: ({ stop, pieces }) =>
    readingOf(
      {
        basis: "practice",
        numbers: [
          { name: "shareOfDepth", kind: "number", value: ratio(pieces.dropper, stop.column.depth) },
          { name: "dropper", kind: "dropper", value: pieces.dropper },
          { name: "depth", kind: "length", value: stop.column.depth },
        ],
      },
      { when: pieces.dropper >= stop.column.depth, severity: "fix", code: "dropper-longer-than-water" },
    ),
};

const fish: Question = {
  levers: ["dropper", "bead"],
  ask: ({ settled, window, stop }) => {
    const height = settled.sinkers.at(-1)!.heightAboveBed;
    return readingOf(
      {
        basis: stop.lie?.capture === undefined ? "practice" : "published",
        numbers: [
          { name: "heightAboveBed", kind: "length", value: height },
          { name: "low", kind: "length", value: window.low },
          { name: "high", kind: "length", value: window.high },
          { name: "holding", kind: "length", value: window.holding },
        ],
      },
      { when: height < window.low, severity: "fix", code: "nymph-below-fish" },
      { when: height > window.high, severity: "fix", code: "nymph-above-fish" },
    );
  },
};

const settles: Question = {
  drifts: true,
  levers: ["knot", "bead", "dropper", "run"],
  ask: ({ settled, judged, runLength }) => {
    if (settled.regime === "drowned") return null;
    const { outcome, settling, effectiveSeconds } = judged();
    if (outcome === "drowned") return null;
    const late = settling.settles && settling.distance > lateShare * runLength;
    return readingOf(
      {
        basis: settling.settles ? "assumption" : "practice",
        numbers: [
          { name: "effectiveTime", kind: "time", value: effectiveSeconds },
          { name: "run", kind: "length", value: metres(runLength) },
          ...(settling.settles
            ? [{ name: "settled", kind: "length", value: settling.distance } as const]
            : []),
        ],
      },
      { when: !settling.settles, severity: "fix", code: "run-ends-first" },
      { when: late, severity: "watch", code: "settles-late" },
    );
  },
};

export const depthQuestions: readonly Question[] = [bed, length, fish, settles];
