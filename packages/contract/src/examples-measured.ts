/** Named examples of what is measured at a stream. Streams are invented; the numbers are nobody's measurement. */

import { cfs, cumecs, type Examples, ft, m, mm } from "./examples-units.js";

const speed = (value: number) => ({ value, unit: "m/s" });
const fps = (value: number) => ({ value, unit: "ft/s" });

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
          speeds: { method: "surface", atSurface: fps(1.6) },
        },
        {
          station: ft(12),
          depth: ft(2),
          speeds: { method: "surface", atSurface: fps(2.4) },
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
      d50: mm(90),
      d84: mm(180),
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
