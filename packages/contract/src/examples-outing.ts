/** Named examples of a day on the river. The stop is invented; the counts are nobody's catch. */

import type { Examples } from "./examples-units.js";

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
