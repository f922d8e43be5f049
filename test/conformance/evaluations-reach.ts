/** Gaugings, ratings, hydraulic geometry and water surfaces, as the cases ask for them. */
import {
  cubicFeetPerSecond,
  cubicMetresPerSecond,
  type DirectStep,
  directStep,
  feet,
  fitGeometry,
  geometryExponents,
  incompleteBeta,
  type MeasuredDischarge,
  meanSection,
  metres,
  metresPerSecond,
  midSection,
  normalDepth,
  ratedDischarge,
  rateStage,
  rectangularSection,
  studentQuantile,
  surfaceProfile,
  trapezoidalSection,
} from "@plumbdrift/core";
import type { Inputs } from "./case.js";
import { number, numbers, text } from "./inputs.js";

/** Field notes of a current meter: revolutions in seconds, speed 0.51 N + 0.03 m/s at N turns a second. */
function gauging(i: Inputs): MeasuredDischarge {
  const [stations, depths, turns, times] = ["stations", "depths", "turns", "seconds"].map((n) =>
    numbers(i, n),
  );
  const verticals = (stations ?? []).map((station, k) => {
    const depth = depths?.[k] ?? Number.NaN;
    const rate = (turns?.[k] ?? Number.NaN) / (times?.[k] ?? Number.NaN);
    return {
      station: metres(station),
      depth: metres(depth),
      speed: metresPerSecond(depth === 0 ? 0 : 0.51 * rate + 0.03),
    };
  });
  const rule = text(i, "rule");
  if (rule === "mean-section") return meanSection(verticals);
  if (rule !== "half-spacing" && rule !== "triangle") throw new TypeError(`no rule is called ${rule}`);
  return midSection(verticals, rule);
}

const chowDepths = [5, 4.8, 4.6, 4.4, 4.2, 4, 3.8, 3.7, 3.6, 3.55, 3.5, 3.47, 3.44, 3.42, 3.4];

/** Chow's example 10-1, his K_u and g or others. */
function chowSteps(i: Inputs): readonly DirectStep[] {
  const units = text(i, "units");
  if (units !== "us-1.49" && units !== "us-1.486") throw new TypeError(`no units are called ${units}`);
  const flow = {
    section: trapezoidalSection(feet(20), 2),
    friction: { law: "manning", n: 0.025, units },
    slope: 0.0016,
    discharge: cubicFeetPerSecond(400),
    gravity: 32.2 * 0.3048,
    energyCoefficient: 1.1,
  } as const;
  return directStep(flow, chowDepths.map(feet));
}

function upstream(i: Inputs, depth: number): number {
  const step = chowSteps(i)[chowDepths.indexOf(depth)];
  return -(step?.distance ?? Number.NaN) / 0.3048;
}

/** The wide rectangle of the rivr examples, followed upstream from a depth at its lower end. */
function rivrProfile(i: Inputs) {
  return surfaceProfile({
    section: rectangularSection(feet(100)),
    reaches: [{ length: feet(number(i, "length")), slope: 0.001, friction: { law: "manning", n: 0.045 } }],
    discharge: cubicFeetPerSecond(250),
    gravity: 32.2 * 0.3048,
    downstream: { depth: feet(number(i, "depth")) },
  });
}

function rating(i: Inputs) {
  const [stages, discharges, uncertainties] = ["stages", "discharges", "uncertainties"].map((n) =>
    numbers(i, n),
  );
  const gaugings = (stages ?? []).map((stage, k) => ({
    stage: metres(stage),
    discharge: cubicMetresPerSecond(discharges?.[k] ?? Number.NaN),
    uncertainty: uncertainties?.[k] ?? Number.NaN,
  }));
  return rateStage(gaugings, { stage: metres(number(i, "zero")) });
}

const rated = (i: Inputs) => ratedDischarge(rating(i), metres(number(i, "stage")), number(i, "confidence"));

/** Uniform flow of a very wide rectangle at several depths, as a person would measure it. */
function wideGeometry() {
  const channel = {
    section: rectangularSection(metres(1e6)),
    friction: { law: "manning", n: 0.03 },
    slope: 0.002,
  } as const;
  const measurements = [3e5, 6e5, 2e6].map((q) => {
    const discharge = cubicMetresPerSecond(q);
    const normal = normalDepth(channel, discharge);
    if (normal.kind !== "found") throw new TypeError("no normal depth");
    return { discharge, width: metres(1e6), meanDepth: normal.depth };
  });
  return fitGeometry(measurements);
}

export const reachEvaluations = {
  "discharge of field notes": (i: Inputs): number => gauging(i).discharge,
  "width of the first panel inside the edge": (i: Inputs): number =>
    gauging(i).panels[1]?.width ?? Number.NaN,
  "width exponent": (i: Inputs): number =>
    geometryExponents[text(i, "kind") === "downstream" ? "downstream" : "at a station"].width,
  "depth exponent": (i: Inputs): number =>
    geometryExponents[text(i, "kind") === "downstream" ? "downstream" : "at a station"].meanDepth,
  "speed exponent": (i: Inputs): number =>
    geometryExponents[text(i, "kind") === "downstream" ? "downstream" : "at a station"].meanSpeed,
  "depth exponent of a wide rectangle": (_: Inputs): number => wideGeometry().meanDepth.exponent,
  "speed exponent of a wide rectangle": (_: Inputs): number => wideGeometry().meanSpeed.exponent,
  "width exponent of a wide rectangle": (_: Inputs): number => wideGeometry().width.exponent,
  "sum of fitted exponents": (_: Inputs): number => {
    const { width, meanDepth, meanSpeed } = wideGeometry();
    return width.exponent + meanDepth.exponent + meanSpeed.exponent;
  },
  "product of fitted coefficients": (_: Inputs): number => {
    const { width, meanDepth, meanSpeed } = wideGeometry();
    return width.coefficient * meanDepth.coefficient * meanSpeed.coefficient;
  },
  "direct step, distance upstream, ft": (i: Inputs): number => upstream(i, number(i, "depth")),
  "share of the length in the last 0.07 ft": (i: Inputs): number => 1 - upstream(i, 3.47) / upstream(i, 3.4),
  "adaptive profile over direct step, length": (i: Inputs): number => {
    const length = upstream(i, 3.6);
    const units = "us-1.49" as const;
    const profile = surfaceProfile({
      section: trapezoidalSection(feet(20), 2),
      reaches: [{ length: feet(length), slope: 0.0016, friction: { law: "manning", n: 0.025, units } }],
      discharge: cubicFeetPerSecond(400),
      gravity: 32.2 * 0.3048,
      energyCoefficient: 1.1,
      downstream: { depth: feet(5) },
    });
    return (profile.points[0]?.depth ?? Number.NaN) / 0.3048;
  },
  "depth at the upper end of the profile, ft": (i: Inputs): number =>
    (rivrProfile(i).points[0]?.depth ?? Number.NaN) / 0.3048,
  "points against the trend of the profile": (i: Inputs): number => {
    const depths = rivrProfile(i).points.map((p) => p.depth);
    const falls = (depths[0] ?? 0) > (depths.at(-1) ?? 0);
    return depths.filter((y, k) => k > 0 && (falls ? y > (depths[k - 1] ?? y) : y < (depths[k - 1] ?? y)))
      .length;
  },
  "quantile of Student's t": (i: Inputs): number =>
    studentQuantile(number(i, "probability"), number(i, "freedom")),
  "incomplete beta function": (i: Inputs): number =>
    incompleteBeta(number(i, "x"), number(i, "a"), number(i, "b")),
  "rating, coefficient": (i: Inputs): number => rating(i).coefficient,
  "rating, exponent": (i: Inputs): number => rating(i).exponent,
  "rating, standard error of the exponent": (i: Inputs): number => rating(i).exponentStandardError,
  "rating, scatter": (i: Inputs): number => rating(i).scatter,
  "rating, discharge": (i: Inputs): number => rated(i).discharge,
  "rating, low end of the prediction": (i: Inputs): number => rated(i).prediction.min,
  "rating, high end of the prediction": (i: Inputs): number => rated(i).prediction.max,
  "rating, low end of the curve": (i: Inputs): number => rated(i).curve.min,
} as const;
