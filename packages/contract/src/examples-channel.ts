/** Named examples of channels. Streams are invented; round numbers are nobody's measurement. */

import { cfs, cumecs, type Examples, ft, m, mm } from "./examples-units.js";

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
      friction: { law: "transitional", roughness: mm(80) },
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
