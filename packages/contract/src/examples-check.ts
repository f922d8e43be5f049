/** Rigs to check. Stops, flies and rules are invented; the rules are those of no water. */

import type { Example } from "./operation.js";

const water = {
  depth: { value: 3, unit: "ft" },
  surfaceSpeed: { value: 2, unit: "ft/s" },
  bed: "cobble",
  temperature: { value: 54, unit: "degF" },
} as const;

export const checkExamples: Readonly<Record<string, Example>> = {
  ruled: {
    summary: "A heavy nymph under a small dry at Larkspur Bend, an invented stop with invented rules",
    value: {
      water,
      inHand: {
        dry: { size: 12, style: "foam" },
        nymph: { size: 12, bead: { diameter: { value: 3.3, unit: "mm" }, material: "tungsten" } },
        tippet: { material: "fluorocarbon", x: 5 },
        dropper: { value: 18, unit: "in" },
      },
      fish: { holdingHeight: { value: 12, unit: "in" } },
      runLength: { value: 20, unit: "ft" },
      surface: "rippled",
      cast: {
        sinkerDownstream: { value: -6, unit: "in" },
        sinkerAcross: { value: 4, unit: "in" },
        laneGradient: { value: 0.1, unit: "1/s" },
      },
      leader: { breakingForce: { value: 6, unit: "lbf" } },
      slack: { value: 5, unit: "ft" },
      laneDifference: { value: 0.3, unit: "ft/s" },
      facts: { barbless: true, bait: false, date: "2026-06-12", time: "09:30" },
      rules: {
        version: 1,
        place: "Larkspur Bend (invented)",
        statedBy: "this example",
        clauses: [
          { topic: "flies", id: "flies", text: "two flies at most", most: 2 },
          { topic: "hooks", id: "hooks", text: "two hook points at most", most: 2 },
          { topic: "barbless", id: "barbless", text: "barbless hooks only", required: true },
          { topic: "lead", id: "lead", text: "no lead", allowed: false },
          {
            topic: "season",
            id: "season",
            text: "open 15 March to 31 October",
            during: "open",
            windows: [{ from: "03-15", to: "10-31" }],
          },
        ],
      },
      units: "us",
    },
  },
  presented: {
    summary: "Down and across from an invented gravel bar, over lanes that slow towards the far bank",
    value: {
      water: { depth: { value: 0.9, unit: "m" }, surfaceSpeed: { value: 0.8, unit: "m/s" }, bed: "cobble" },
      inHand: {
        dry: { size: 10, style: "foam" },
        nymph: { size: 16, bead: { diameter: { value: 2.3, unit: "mm" }, material: "tungsten" } },
        tippet: { material: "fluorocarbon", x: 5 },
        dropper: { value: 46, unit: "cm" },
      },
      presentation: {
        distance: { value: 9, unit: "m" },
        upstream: { value: -30, unit: "deg" },
        lanes: [
          { across: { value: 0, unit: "m" }, surfaceSpeed: { value: 0.5, unit: "m/s" } },
          { across: { value: 4, unit: "m" }, surfaceSpeed: { value: 1.1, unit: "m/s" } },
          { across: { value: 10, unit: "m" }, surfaceSpeed: { value: 0.6, unit: "m/s" } },
        ],
        slack: { value: 1, unit: "m" },
      },
      wades: false,
    },
  },
  bare: {
    summary: "A rig in deep slow water of which little was said",
    value: {
      water: { depth: { value: 0.8, unit: "m" }, surfaceSpeed: { value: 0.3, unit: "m/s" } },
      inHand: {
        dry: { size: 14, style: "low-profile" },
        nymph: { size: 14, bead: { diameter: { value: 2.8, unit: "mm" }, material: "tungsten" } },
        tippet: { material: "nylon", x: 3 },
        dropper: { value: 90, unit: "cm" },
      },
    },
  },
};
