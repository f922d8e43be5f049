/** Named examples of channels. Streams are invented; round numbers are nobody's measurement. */

import type { Example } from "./operation.js";

type Examples = Readonly<Record<string, Example>>;

const m = (value: number) => ({ value, unit: "m" }) as const;
const ft = (value: number) => ({ value, unit: "ft" }) as const;
const cumecs = (value: number) => ({ value, unit: "m3/s" }) as const;
const cfs = (value: number) => ({ value, unit: "ft3/s" }) as const;
const speed = (value: number) => ({ value, unit: "m/s" }) as const;

const ditch = { shape: "trapezoidal", bottomWidth: m(3), leftRun: 1.5, rightRun: 1.5 } as const;
const gravel = { law: "manning", n: 0.035 } as const;

/** A riffle with a bar on its right, surveyed in feet. */
const riffle = {
  shape: "surveyed",
  points: [
    { station: ft(0), elevation: ft(6) },
    { station: ft(6), elevation: ft(2.5) },
    { station: ft(14), elevation: ft(0.4) },
    { station: ft(24), elevation: ft(0) },
    { station: ft(33), elevation: ft(1.1) },
    { station: ft(38), elevation: ft(3) },
    { station: ft(60), elevation: ft(3.6) },
    { station: ft(64), elevation: ft(6.5) },
  ],
  zones: [
    { from: ft(0), manning: 0.04 },
    { from: ft(38), manning: 0.07 },
  ],
} as const;
const zoned = { law: "manning-zones", method: "divided" } as const;

export const carryExamples: Examples = {
  ditch: {
    summary: "An even trapezoidal channel, 1.5 m deep",
    value: { section: ditch, friction: { law: "manning", n: 0.025 }, slope: 0.002, depth: m(1.5) },
  },
  riffle: {
    summary: "A surveyed riffle with a rougher bar, in feet",
    value: { section: riffle, friction: zoned, slope: 0.006, depth: ft(4.2), units: "us" },
  },
  rough: {
    summary: "A rough bed by its sand roughness, between smooth and rough",
    value: {
      section: { shape: "parabolic", width: m(9), depth: m(1.2) },
      friction: { law: "transitional", roughness: { value: 80, unit: "mm" } },
      slope: 0.004,
      depth: m(0.7),
      temperature: { value: 9, unit: "degC" },
    },
  },
};

export const depthExamples: Examples = {
  riffle: {
    summary: "A surveyed riffle at 180 ft³/s",
    value: { section: riffle, friction: zoned, slope: 0.006, discharge: cfs(180), units: "us" },
  },
  culvert: {
    summary: "A culvert near full, which carries this discharge at two depths",
    value: {
      section: { shape: "circular", diameter: m(1) },
      friction: { law: "manning", n: 0.013 },
      slope: 0.001,
      discharge: cumecs(0.78),
    },
  },
  tooMuch: {
    summary: "More than the culvert can carry: an answer, not an error",
    value: {
      section: { shape: "circular", diameter: m(1) },
      friction: { law: "manning", n: 0.013 },
      slope: 0.001,
      discharge: cumecs(2),
    },
  },
};

export const energyExamples: Examples = {
  chute: {
    summary: "Shooting water in a wide chute",
    value: { section: { shape: "rectangular", width: m(10) }, discharge: cumecs(10), depth: m(0.3) },
  },
};

export const jumpExamples: Examples = {
  chute: {
    summary: "Below a wide chute",
    value: { section: { shape: "rectangular", width: m(10) }, discharge: cumecs(10), before: m(0.3) },
  },
  tranquil: {
    summary: "Tranquil water does not jump: an answer, not an error",
    value: { section: ditch, discharge: cumecs(5), before: m(1.5), units: "us" },
  },
};

export const surfaceExamples: Examples = {
  gate: {
    summary: "Water shoots from a gate onto a mild reach and jumps before a weir",
    value: {
      section: { shape: "rectangular", width: m(5) },
      discharge: cumecs(10),
      reaches: [{ length: m(200), slope: 0.001, friction: { law: "manning", n: 0.02 } }],
      upstream: { at: "depth", depth: m(0.3) },
      downstream: { at: "depth", depth: m(1.4) },
      pointsPerReach: 21,
    },
  },
  riffleToPool: {
    summary: "A run, a steep riffle and a pool",
    value: {
      section: ditch,
      discharge: cfs(150),
      reaches: [
        { length: ft(600), slope: 0.001, friction: gravel },
        { length: ft(120), slope: 0.03, friction: gravel },
        { length: ft(400), slope: 0.0005, friction: gravel },
      ],
      downstream: { at: "normal" },
      pointsPerReach: 9,
      units: "us",
    },
  },
  tooMuch: {
    summary: "More than the surveyed riffle passes: an answer, not an error",
    value: {
      section: riffle,
      discharge: cfs(9000),
      reaches: [{ length: ft(100), slope: 0.01, friction: zoned }],
      upstream: { at: "critical" },
      units: "us",
    },
  },
};

export const laneExamples: Examples = {
  riffle: {
    summary: "Lanes across a surveyed riffle",
    value: { section: riffle, friction: zoned, slope: 0.006, discharge: cfs(180), lanes: 12, units: "us" },
  },
  ditch: {
    summary: "Lanes across an even trapezoidal channel",
    value: { section: ditch, friction: gravel, slope: 0.002, discharge: cumecs(5), lanes: 9 },
  },
};

const sounding = (station: number, depth: number, at60: number) => ({
  station: m(station),
  depth: m(depth),
  speeds: { method: "six-tenths", at60: speed(at60) },
});

export const dischargeExamples: Examples = {
  wading: {
    summary: "Waded with a meter, one point in each vertical, with stated uncertainties",
    value: {
      verticals: [
        { station: m(1), depth: m(0) },
        sounding(2, 0.22, 0.31),
        sounding(3, 0.38, 0.52),
        {
          station: m(4),
          depth: m(0.81),
          speeds: { method: "two-point", at20: speed(0.84), at80: speed(0.52) },
        },
        sounding(5, 0.6, 0.66),
        sounding(6, 0.35, 0.4),
        { station: m(7), depth: m(0) },
      ],
      uncertainty: {
        calibration: 0.01,
        verticals: 0.04,
        width: 0.005,
        depth: 0.015,
        points: 0.06,
        meter: 0.01,
        exposure: 0.03,
        pointsPerVertical: 1,
      },
    },
  },
  floats: {
    summary: "Floats on the surface, the mean-section method",
    value: {
      verticals: [
        { station: ft(0), depth: ft(0) },
        {
          station: ft(6),
          depth: ft(1.2),
          speeds: { method: "surface", atSurface: { value: 1.6, unit: "ft/s" } },
        },
        {
          station: ft(12),
          depth: ft(2),
          speeds: { method: "surface", atSurface: { value: 2.4, unit: "ft/s" } },
        },
        { station: ft(18), depth: ft(0) },
      ],
      method: "mean-section",
      units: "us",
    },
  },
};

const gauging = (stage: number, discharge: number) => ({ stage: m(stage), discharge: cumecs(discharge) });

export const ratingExamples: Examples = {
  searched: {
    summary: "Six gaugings, zero flow searched below them; one stage read beyond them",
    value: {
      gaugings: [
        gauging(0.42, 0.61),
        gauging(0.55, 1.22),
        gauging(0.71, 2.25),
        gauging(0.88, 3.7),
        gauging(1.1, 6.1),
        gauging(1.34, 9.6),
      ],
      zeroFlow: { kind: "between", from: m(0), to: m(0.35) },
      stages: [m(0.6), m(1.6)],
    },
  },
  known: {
    summary: "Zero flow known; a stage below it is dry",
    value: {
      gaugings: [
        { ...gauging(1, 2.1), uncertainty: 0.05 },
        { ...gauging(2, 7.7), uncertainty: 0.05 },
        { ...gauging(4, 33), uncertainty: 0.1 },
      ],
      zeroFlow: { kind: "known", stage: m(0) },
      stages: [m(-0.2), m(3)],
      units: "us",
    },
  },
};

const day = (discharge: number, width: number, meanDepth: number) => ({
  discharge: cfs(discharge),
  width: ft(width),
  meanDepth: ft(meanDepth),
});

export const geometryExamples: Examples = {
  published: {
    summary: "One measurement and published exponents: the gauge has doubled",
    value: { measurements: [day(60, 30, 1.1)], discharges: [cfs(120)], units: "us" },
  },
  fitted: {
    summary: "Four days at one station",
    value: {
      measurements: [day(40, 27, 0.95), day(75, 32, 1.2), day(130, 36, 1.6), day(260, 44, 2)],
      discharges: [cfs(100), cfs(400)],
    },
  },
};

export const resistanceExamples: Examples = {
  cobbles: {
    summary: "A cobbled run of known stones and slope",
    value: {
      hydraulicRadius: m(0.6),
      slope: 0.008,
      d50: { value: 90, unit: "mm" },
      d84: { value: 180, unit: "mm" },
      chow: "mountain stream, gravels, cobbles, few boulders",
    },
  },
  described: {
    summary: "A stream described in words",
    value: {
      hydraulicRadius: ft(2),
      slope: 0.004,
      cowan: {
        material: "coarse gravel",
        irregularity: "minor",
        variation: "alternating occasionally",
        obstructions: "minor",
        vegetation: "low",
        meandering: "minor",
      },
      units: "us",
    },
  },
};
