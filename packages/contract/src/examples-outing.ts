/** Named examples of a day on the river. The stop is invented; the counts are nobody's catch. */

import { type Examples, ft } from "./examples-units.js";

const min = (value: number) => ({ value, unit: "min" });

export const takesExamples: Examples = {
  morning: {
    summary: "An hour and a half with both flies, then half an hour with the dry alone",
    value: {
      dry: { takes: 13, missed: 3 },
      nymph: { takes: 2 },
      effort: { kind: "time", dry: min(120), nymph: min(90) },
    },
  },
  drifts: {
    summary: "Counted by drifts, misses left out, at another ratio and confidence",
    value: {
      dry: { takes: 9, missed: 4 },
      nymph: { takes: 6, missed: 1 },
      effort: { kind: "drifts", dry: 140, nymph: 140 },
      countMisses: false,
      threshold: 2,
      confidence: 0.8,
    },
  },
};

/** Larkspur Bend, an invented stop, and what someone has on there. */
const atLarkspur = {
  water: {
    depth: ft(3),
    surfaceSpeed: { value: 3, unit: "ft/s" },
    bed: "cobble",
    temperature: { value: 54, unit: "degF" },
  },
  inHand: {
    dry: { size: 10, style: "foam" },
    nymph: { size: 16, bead: { diameter: { value: 2.3, unit: "mm" }, material: "tungsten" } },
    tippet: { material: "fluorocarbon", x: 5 },
    dropper: { value: 36, unit: "in" },
  },
} as const;

export const adjustExamples: Examples = {
  ticks: {
    summary:
      "Larkspur Bend, an invented stop: it ticks the bottom in every other drift, and the dry takes 8 s over 20 ft",
    value: {
      ...atLarkspur,
      seen: [
        { kind: "ticks", drifts: 10, ticks: 6 },
        { kind: "drift-time", distance: ft(20), time: { value: 8, unit: "s" } },
      ],
      runLength: ft(20),
      units: "us",
    },
  },
  drowned: {
    summary: "The dry goes under after 4 s, the nymph never touches; two tippets and three lengths at hand",
    value: {
      ...atLarkspur,
      seen: [
        { kind: "dry", outcome: "drowned", after: { value: 4, unit: "s" } },
        { kind: "ticks", drifts: 8, ticks: 0 },
        { kind: "nymph", rides: "behind" },
      ],
      box: {
        dries: [{ size: 8, style: "foam" }],
        nymphs: [{ size: 16, bead: { diameter: { value: 2, unit: "mm" }, material: "tungsten" } }],
        tippets: [
          { material: "fluorocarbon", x: 6 },
          { material: "nylon", x: 5 },
        ],
        dropperLengths: [18, 24, 30].map((value) => ({ value, unit: "in" })),
      },
      uncertainty: { depth: 0.05 },
      seed: 7,
    },
  },
};
