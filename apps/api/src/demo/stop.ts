/** The stop of the demo. River, stop and flies are invented. */

import type { Units } from "@plumbdrift/contract";

/** Rows of the pictures: the water is read in as many layers. */
const layers = 15;

const seen = {
  depth: { value: 3, unit: "ft" },
  timedFloats: [6.4, 6.8, 6.6].map((time) => ({
    distance: { value: 20, unit: "ft" },
    time: { value: time, unit: "s" },
  })),
  bed: "cobble",
  temperature: { value: 54, unit: "degF" },
} as const;

export function columnRequest(units: Units): object {
  return { water: seen, layers, units };
}

const stop = {
  water: seen,
  surface: "rippled",
  runLength: { value: 20, unit: "ft" },
  inHand: {
    dry: { size: 14, style: "hackle" },
    nymph: { size: 16, bead: { diameter: { value: 2.3, unit: "mm" }, material: "tungsten" } },
    tippet: { material: "nylon", x: 4 },
    dropper: { value: 30, unit: "in" },
  },
  leaderStrength: { value: 5.5, unit: "lbf" },
  top: 5,
} as const;

export function setupsRequest(units: Units): object {
  return { ...stop, units };
}
