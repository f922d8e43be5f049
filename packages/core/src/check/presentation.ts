/** How the rig is cast and fished: splash, lanes, direction and slack. */

import { dragFreeTime } from "../drift/index.js";
import { hiddenSplash } from "../setup/index.js";
import { metres, metresPerSecond, seconds } from "../units/index.js";
import { type Question, readingOf } from "./question.js";
import type { Seen } from "./seen.js";

const splash: Question = {
  levers: ["soften", "bead"],
  ask: ({ pieces, rig, stop }) => {
    const surface = stop.surface ?? "rippled";
    const entry = stop.cast?.entrySpeed ?? metresPerSecond(0.5);
    const { mass } = rig.sections.at(-1)!.sinker;
    const share = (mass * entry) / hiddenSplash[surface];
    return readingOf(
      {
        basis: "assumption",
        numbers: [
          { name: "splashRatio", kind: "number", value: share },
          { name: "mass", kind: "mass", value: mass },
          { name: "entry", kind: "speed", value: entry },
        ],
        parameters: [
          { name: "surface", value: surface },
          { name: "nymph", value: pieces.nymph.name },
        ],
      },
      { when: share > 1, severity: "watch", code: "splash-shows" },
    );
  },
};

/** Practice: the nymph lands in slightly quicker water than the dry. */
const lane: Question = {
  levers: ["cast"],
  ask: ({ stop: { cast } }) => {
    if (cast?.sinkerAcross === undefined || cast.laneGradient === undefined) return null;
    const slower = -cast.sinkerAcross * cast.laneGradient;
    return readingOf(
      {
        basis: "practice",
        numbers: [
          { name: "laneLag", kind: "speed", value: metresPerSecond(slower) },
          { name: "across", kind: "length", value: cast.sinkerAcross },
        ],
      },
      { when: slower > 0, severity: "watch", code: "nymph-in-slower-lane" },
    );
  },
};

/** Practice: down and across wants upstream tension. */
const direction: Question = {
  levers: ["cast", "hold"],
  ask: ({ stop: { cast, held } }) => {
    if (cast?.sinkerDownstream === undefined) return null;
    return readingOf(
      { basis: "practice", numbers: [{ name: "landsBelow", kind: "length", value: cast.sinkerDownstream }] },
      { when: cast.sinkerDownstream > 0 && !(held ?? 0), severity: "watch", code: "nymph-lands-below" },
    );
  },
};

/** Lanes that differ by less count as one, m/s. */
const oneLane = 1e-3;

/** Slack over the difference of the lanes, against the time to settle and to the end of the run. */
const drag: Question = {
  drifts: true,
  levers: ["slack"],
  ask: (seen) => {
    const { slack, laneDifference } = seen.stop;
    if (slack === undefined || laneDifference === undefined || Math.abs(laneDifference) < oneLane)
      return null;
    const free = slack > 0 ? dragFreeTime(slack, laneDifference) : seconds(0);
    const { settling } = seen.judged();
    return readingOf(
      {
        basis: "practice",
        numbers: [
          { name: "dragFree", kind: "time", value: free },
          { name: "run", kind: "time", value: seconds(runTime(seen)) },
          { name: "slack", kind: "length", value: slack },
          { name: "lane", kind: "speed", value: metresPerSecond(Math.abs(laneDifference)) },
        ],
      },
      { when: settling.settles && free < settling.time, severity: "fix", code: "drag-before-settled" },
      { when: free < runTime(seen), severity: "watch", code: "drag-before-end" },
    );
  },
};

/** Seconds that the settled rig takes over the run, a minute at most. */
export function runTime({ settled, runLength }: Pick<Seen, "settled" | "runLength">): number {
  return settled.driftSpeed > 0 ? Math.min(60, metres(runLength) / settled.driftSpeed) : 60;
}

export const presentationQuestions: readonly Question[] = [splash, lane, direction, drag];
