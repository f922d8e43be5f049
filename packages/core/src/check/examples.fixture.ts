/** For each finding a rig and a stop that yield it, by what differs from a sound rig at a well described stop. Invented. */

import { type Observation, waterColumn } from "../column/index.js";
import type { Pieces } from "../setup/index.js";
import { type DryStyle, nymphName, tippetDiameter } from "../tackle/index.js";
import {
  celsius,
  grams,
  kilograms,
  metres,
  metresPerSecond,
  millimetres,
  newtons,
  perSecond,
} from "../units/index.js";
import type { CheckStop, FindingCode } from "./finding.js";
import type { Rules } from "./rules.js";

export interface FindingExample {
  readonly pieces: Pieces;
  readonly stop: CheckStop;
  readonly rules?: Rules;
}

const water: Observation = {
  depth: metres(0.9),
  surfaceSpeed: metresPerSecond(0.6),
  bed: "cobble",
  temperature: celsius(12),
};

export const demoRules: Rules = {
  version: 1,
  place: "Larkspur Bend (invented)",
  statedBy: "this demo",
  clauses: [
    { topic: "flies", id: "flies", text: "two flies at most", most: 2 },
    { topic: "hooks", id: "hooks", text: "two hook points at most", most: 2 },
    { topic: "barbless", id: "barbless", text: "barbless hooks only", required: true },
    { topic: "lead", id: "lead", text: "no lead", allowed: false },
    { topic: "added-weight", id: "weight", text: "at most half a gram added", most: grams(0.5) },
    { topic: "bait", id: "bait", text: "no bait", allowed: false },
    {
      topic: "season",
      id: "season",
      text: "open 15 March to 31 October",
      during: "open",
      windows: [{ from: "03-15", to: "10-31" }],
    },
    {
      topic: "hours",
      id: "hours",
      text: "closed at night",
      during: "closed",
      windows: [{ from: "22:00", to: "05:00" }],
    },
    { topic: "temperature", id: "warm", text: "closed from 20 °C", closedFrom: celsius(20) },
  ],
};

const dry = (style: DryStyle, size: number): Pick<Pieces, "dry"> => ({
  dry: { name: `${style} dry ${size}`, size, style },
});
const nymph = (size: number, mm: number, knot: "loop" | "tight" = "tight"): Pick<Pieces, "nymph"> => {
  const bead = { diameter: millimetres(mm), material: "tungsten" } as const;
  return { nymph: { name: nymphName({ size, bead }), size, bead, knot } };
};
const tippet = (x: number): Pick<Pieces, "tippet"> => ({
  tippet: { material: "fluorocarbon", diameter: tippetDiameter(x) },
});

export const sound: FindingExample = {
  pieces: { ...dry("foam", 10), ...nymph(16, 2.3), ...tippet(5), dropper: metres(0.46) },
  stop: {
    column: waterColumn(water),
    lie: { holdingHeight: metres(0.3) },
    runLength: metres(6),
    surface: "rippled",
    leader: { breakingForce: newtons(25) },
    cast: { sinkerDownstream: metres(-0.15), sinkerAcross: metres(0.1), laneGradient: perSecond(0.1) },
    slack: metres(1.5),
    laneDifference: metresPerSecond(0.1),
    wades: false,
    facts: { barbless: true, bait: false, date: "2026-06-12", time: "09:30" },
  },
  rules: demoRules,
};

const tied = (pieces: Partial<Pieces>): FindingExample => ({
  ...sound,
  pieces: { ...sound.pieces, ...pieces },
});
const at = (stop: Partial<CheckStop>, pieces: Partial<Pieces> = {}): FindingExample => ({
  ...tied(pieces),
  stop: { ...sound.stop, ...stop },
});
const over = (given: Partial<Observation>, pieces: Partial<Pieces> = {}): FindingExample =>
  at({ column: waterColumn({ ...water, ...given }) }, pieces);
const without = (...keys: readonly (keyof CheckStop)[]): FindingExample => ({
  ...sound,
  stop: {
    column: sound.stop.column,
    ...Object.fromEntries(Object.entries(sound.stop).filter(([key]) => !keys.some((one) => one === key))),
  },
});
const { bed: _bed, ...bedless } = water;
const { temperature: _temperature, ...unmeasured } = water;
const slow = { surfaceSpeed: metresPerSecond(0.2), bed: "sand" } as const;
const quick = { surfaceSpeed: metresPerSecond(1.4), bed: "boulder" } as const;

export const findingExamples: Readonly<Record<FindingCode, FindingExample>> = {
  "dry-drowns": tied({ ...dry("hair", 14), ...nymph(12, 3.8) }),
  "dry-overloaded": tied({ ...dry("foam", 12), ...nymph(12, 3.3) }),
  "dry-barely-carries": tied({ ...dry("foam", 8), ...nymph(12, 3.3), ...tippet(4) }),
  "dry-pulled-under": over(
    { depth: metres(0.66), surfaceSpeed: metresPerSecond(1.5), bed: "sand" },
    { ...dry("foam", 12), ...nymph(14, 2.8), dropper: metres(1.2) },
  ),
  "dry-floats-by-film": tied(dry("low-profile", 14)),
  "nymph-leans": over(quick),
  "nymph-towed": over(quick),
  "nymph-on-bed": over(slow, { dropper: metres(1.2) }),
  "nymph-near-bed": over(slow, { dropper: metres(0.88) }),
  "dropper-longer-than-water": tied({ dropper: metres(1.2) }),
  "nymph-above-fish": tied({ dropper: metres(0.2) }),
  "nymph-below-fish": at({ lie: { holdingHeight: metres(0.7), reach: metres(0.15) } }),
  "run-ends-first": at({ runLength: metres(0.6) }),
  "settles-late": at({ runLength: metres(1) }),
  "dropper-outlasts-leader": at({ leader: { tippet: { material: "nylon", diameter: tippetDiameter(6) } } }),
  "line-order-close": at({ leader: { tippet: { material: "fluorocarbon", diameter: tippetDiameter(5) } } }),
  "tippet-coarse": tied(tippet(2)),
  "tippet-fine": tied(tippet(8)),
  "splash-shows": at({ surface: "glassy" }, nymph(14, 2.8)),
  "nymph-in-slower-lane": at({ cast: { sinkerAcross: metres(-0.1), laneGradient: perSecond(0.2) } }),
  "nymph-lands-below": at({ cast: { sinkerDownstream: metres(0.3), laneGradient: perSecond(0) } }),
  "drag-before-settled": at({ slack: metres(0.1), laneDifference: metresPerSecond(0.2) }),
  "drag-before-end": at({ slack: metres(0.6), laneDifference: metresPerSecond(0.1) }),
  "wading-beyond-limit": at({
    column: waterColumn({ ...water, surfaceSpeed: metresPerSecond(1.4) }),
    wades: true,
  }),
  "wading-near-limit": at({
    wades: true,
    wader: { height: metres(1.75), mass: kilograms(75) },
    footing: "normal",
  }),
  "water-too-warm": over({ temperature: celsius(20.5) }),
  "water-nearly-too-warm": over({ temperature: celsius(18.5) }),
  "water-warm": over({ temperature: celsius(16.5) }),
  "rule-forbids": at({ facts: { ...sound.stop.facts, barbless: false } }),
  "rule-unknown": at({ facts: { barbless: true, bait: false, date: "2026-06-12" } }),
  "rules-not-stated": { pieces: sound.pieces, stop: sound.stop },
  "temperature-not-stated": at({ column: waterColumn(unmeasured) }),
  "bed-not-stated": at({ column: waterColumn(bedless) }),
  "run-not-stated": without("runLength"),
  "fish-not-stated": without("lie"),
  "surface-not-stated": without("surface"),
  "leader-not-stated": without("leader"),
  "cast-not-stated": without("cast"),
  "slack-not-stated": without("slack"),
};
