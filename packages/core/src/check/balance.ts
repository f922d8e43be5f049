/** Does the dry carry the nymph, and does it tow it? */

import { floatReserve } from "../forces/index.js";
import { newtons, type Radians, radians } from "../units/index.js";
import type { Measure } from "./finding.js";
import { type Question, readingOf } from "./question.js";
import type { Seen } from "./seen.js";

/** Lean from which a rig counts as towed, and the lean at which the dropper has to be twice as long as the depth it fishes. Common practice, no source. */
export const farLean: Radians = radians(Math.PI / 6);
export const towedLean: Radians = radians(Math.PI / 3);

const piecesOf = ({ pieces }: Seen) => [
  { name: "dry", value: pieces.dry.name },
  { name: "nymph", value: pieces.nymph.name },
];
/** A margin where nothing pulls is infinite: said as a thousand. */
const marginOf = (margin: number): number => Math.min(margin, 1000);

/** Reserve over load of the settled rig against the least that the stop asks for. */
const carries: Question = {
  levers: ["dry", "bead", "dropper"],
  ask: (seen) => {
    const { settled, leastMargin } = seen;
    const margin = marginOf(settled.floatMargin);
    const numbers: readonly Measure[] = [
      { name: "margin", kind: "number", value: margin },
      { name: "least", kind: "number", value: leastMargin },
      { name: "load", kind: "force", value: settled.load },
      { name: "reserve", kind: "force", value: settled.reserve },
    ];
    return readingOf(
      { basis: "assumption", numbers, parameters: piecesOf(seen) },
      { when: settled.regime === "drowned" || margin < 1, severity: "stop", code: "dry-drowns" },
      { when: margin < leastMargin, severity: "fix", code: "dry-overloaded" },
      { when: margin < 1.25 * leastMargin, severity: "watch", code: "dry-barely-carries" },
    );
  },
};

/** Settled it floats, but the swing of the landing pulls it under. */
const landing: Question = {
  drifts: true,
  levers: ["dry", "bead", "dropper"],
  ask: (seen) => {
    const { settled, judged } = seen;
    if (settled.regime === "drowned") return null;
    const { outcome, effectiveSeconds } = judged();
    return readingOf(
      {
        basis: "assumption",
        numbers: [
          { name: "effectiveTime", kind: "time", value: effectiveSeconds },
          { name: "margin", kind: "number", value: marginOf(settled.floatMargin) },
        ],
        parameters: piecesOf(seen),
      },
      { when: outcome === "drowned", severity: "fix", code: "dry-pulled-under" },
    );
  },
};

/** What is left of the margin once the film is gone: hackle and low-profile dries hold nothing else. Common practice, no source. */
const film: Question = {
  levers: ["dry"],
  ask: (seen) => {
    const { pieces, rig, settled, stop } = seen;
    const soaked = floatReserve({ ...rig.float, treatment: 0 }, stop.column.water);
    const margin = marginOf(soaked / settled.load);
    const { style } = pieces.dry;
    return readingOf(
      {
        basis: "practice",
        numbers: [
          { name: "soakedMargin", kind: "number", value: margin },
          { name: "margin", kind: "number", value: marginOf(settled.floatMargin) },
          { name: "load", kind: "force", value: newtons(settled.load) },
        ],
        parameters: [...piecesOf(seen), { name: "style", value: style }],
      },
      { when: margin < 1 && style === "low-profile", severity: "fix", code: "dry-floats-by-film" },
      { when: margin < 1 && style === "hackle", severity: "watch", code: "dry-floats-by-film" },
    );
  },
};

const lean: Question = {
  levers: ["bead", "dropper", "tippet", "dry", "hold"],
  ask: ({ settled, pieces }) => {
    const angle = Math.abs(settled.lean);
    const depth = settled.sinkers.at(-1)!.depthBelowSurface;
    return readingOf(
      {
        basis: "practice",
        numbers: [
          { name: "lean", kind: "angle", value: radians(angle) },
          { name: "dropper", kind: "dropper", value: pieces.dropper },
          { name: "depth", kind: "length", value: depth },
        ],
      },
      { when: angle > towedLean, severity: "fix", code: "nymph-leans" },
      { when: angle > farLean, severity: "watch", code: "nymph-leans" },
    );
  },
};

/** Drift speed over the speed of the nymph's own water, against the excess at which a second counts half. */
const towed: Question = {
  levers: ["dropper", "bead", "dry", "hold"],
  ask: ({ settled, excessScale, stop }) => {
    const { excess } = settled.sinkers.at(-1)!;
    return readingOf(
      {
        basis: "assumption",
        numbers: [
          { name: "excess", kind: "speed", value: excess },
          { name: "drift", kind: "speed", value: settled.driftSpeed },
          { name: "surface", kind: "speed", value: stop.column.surfaceSpeed },
        ],
      },
      { when: excess > 2 * excessScale, severity: "fix", code: "nymph-towed" },
      { when: excess > excessScale, severity: "watch", code: "nymph-towed" },
      { when: excess > excessScale / 2, severity: "note", code: "nymph-towed" },
    );
  },
};

export const balanceQuestions: readonly Question[] = [carries, landing, film, lean, towed];
