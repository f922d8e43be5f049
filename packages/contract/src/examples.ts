/** Named examples. They are sent in the tests, so they cannot go stale. Rivers, stops and flies are invented. */

import type { Example } from "./operation.js";

const larkspur = {
  depth: { value: 3, unit: "ft" },
  surfaceSpeed: { value: 3, unit: "ft/s" },
  bed: "cobble",
  temperature: { value: 54, unit: "degF" },
} as const;

export const columnExamples: Readonly<Record<string, Example>> = {
  cobbles: {
    summary: "Larkspur Bend, an invented stop: 3 ft of water over cobbles",
    value: { water: larkspur, units: "us" },
  },
  timedFloats: {
    summary: "A surface speed from three timed runs over 6 m",
    value: {
      water: {
        depth: { value: 0.8, unit: "m" },
        timedFloats: [
          { distance: { value: 6, unit: "m" }, time: { value: 7.1, unit: "s" } },
          { distance: { value: 6, unit: "m" }, time: { value: 6.8, unit: "s" } },
          { distance: { value: 6, unit: "m" }, time: { value: 7.4, unit: "s" } },
        ],
        bed: "pebble",
      },
    },
  },
  measured: {
    summary: "Speeds measured at three heights",
    value: {
      water: {
        depth: { value: 90, unit: "cm" },
        points: [
          { heightAboveBed: { value: 10, unit: "cm" }, speed: { value: 0.35, unit: "m/s" } },
          { heightAboveBed: { value: 40, unit: "cm" }, speed: { value: 0.6, unit: "m/s" } },
          { heightAboveBed: { value: 80, unit: "cm" }, speed: { value: 0.9, unit: "m/s" } },
        ],
      },
      layers: 5,
    },
  },
};

/** A yarn-winged dry of about size 12, its nymph with a 2.8 mm tungsten bead, on 0.46 m of 0.15 mm line: measured bodies. */
const measuredRig = {
  float: {
    kind: "body",
    length: { value: 15, unit: "mm" },
    width: { value: 8, unit: "mm" },
    height: { value: 8, unit: "mm" },
    mass: { value: 0.1, unit: "g" },
    buoyantShare: 0.8,
  },
  sections: [
    {
      line: {
        kind: "body",
        length: { value: 18, unit: "in" },
        diameter: { value: 0.15, unit: "mm" },
        density: { value: 1780, unit: "kg/m3" },
      },
      sinker: {
        kind: "body",
        mass: { value: 0.18, unit: "g" },
        volume: { value: 20, unit: "mm3" },
        bead: { value: 2.8, unit: "mm" },
        body: { length: { value: 8, unit: "mm" }, diameter: { value: 2, unit: "mm" } },
      },
    },
  ],
} as const;

/** Tackle by name: a foam dry of size 10, 18 in of 5X fluorocarbon, a size 16 nymph with a 2.3 mm tungsten bead. */
const namedRig = {
  float: { kind: "dry", size: 10, style: "foam" },
  sections: [
    {
      line: { kind: "tippet", material: "fluorocarbon", x: 5, length: { value: 18, unit: "in" } },
      sinker: {
        kind: "nymph",
        size: 16,
        bead: { diameter: { value: 2.3, unit: "mm" }, material: "tungsten" },
      },
    },
  ],
} as const;

export const rigExamples: Readonly<Record<string, Example>> = {
  tackle: {
    summary: "Tackle by name at Larkspur Bend, an invented stop",
    value: { water: larkspur, rig: namedRig, units: "us" },
  },
  measured: {
    summary: "A rig of measured bodies at Larkspur Bend, an invented stop",
    value: { water: larkspur, rig: measuredRig, units: "us" },
  },
};

export const driftExamples: Readonly<Record<string, Example>> = {
  upAndAcross: {
    summary: "Cast up and across, the nymph landing in slightly quicker water",
    value: {
      water: larkspur,
      rig: namedRig,
      cast: {
        sinkerDownstream: { value: -6, unit: "in" },
        sinkerAcross: { value: 6, unit: "in" },
        laneGradient: { value: 0.1, unit: "1/s" },
      },
      window: { low: { value: 6, unit: "in" }, high: { value: 24, unit: "in" } },
      runLength: { value: 20, unit: "ft" },
      units: "us",
    },
  },
  measured: {
    summary: "A rig of measured bodies, every option left to its default",
    value: { water: larkspur, rig: measuredRig },
  },
  brief: {
    summary: "The same, with few instants of the path",
    value: { water: larkspur, rig: measuredRig, instants: 4 },
  },
};

export const holdExamples: Readonly<Record<string, Example>> = {
  tackle: {
    summary: "How slowly should the dry ride at Larkspur Bend, an invented stop?",
    value: { water: larkspur, rig: namedRig, units: "us" },
  },
};

const bead = (size: number, diameter: number) => ({
  size,
  bead: { diameter: { value: diameter, unit: "mm" }, material: "tungsten" },
});

const smallStop = {
  water: larkspur,
  fish: { holdingHeight: { value: 20, unit: "cm" }, reach: { value: 25, unit: "cm" } },
  box: {
    dries: [
      { size: 10, style: "foam" },
      { size: 12, style: "yarn" },
    ],
    nymphs: [bead(16, 2.3), { name: "plain nymph", size: 14 }],
    tippets: [{ material: "fluorocarbon", x: 5 }],
    dropperLengths: [
      { value: 45, unit: "cm" },
      { value: 60, unit: "cm" },
    ],
  },
} as const;

export const setupExamples: Readonly<Record<string, Example>> = {
  generalBox: {
    summary: "Larkspur Bend, an invented stop, from a general box, with a rig in hand",
    value: {
      water: larkspur,
      surface: "rippled",
      runLength: { value: 20, unit: "ft" },
      inHand: {
        dry: { size: 14, style: "hackle" },
        nymph: bead(14, 3.3),
        tippet: { material: "nylon", x: 4 },
        dropper: { value: 24, unit: "in" },
      },
      units: "us",
    },
  },
  smallBox: {
    summary: "Two dries, two nymphs, one tippet, two lengths",
    value: { ...smallStop, top: 3 },
  },
  best: {
    summary: "The same, the best setup alone",
    value: { ...smallStop, top: 1 },
  },
};
