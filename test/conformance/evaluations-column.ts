/** The water column, as the cases ask for it. */
import {
  type BedClass,
  bedClassLimits,
  type Column,
  heightAboveBed,
  metres,
  metresPerSecond,
  type Observation,
  speedAt,
  speedProfile,
  turbulenceIntensity,
  waterColumn,
} from "@plumbdrift/core";
import type { Inputs } from "./case.js";
import { number, numbers, text } from "./inputs.js";

const unit = { depth: metres(1), surfaceSpeed: metresPerSecond(1) };

/** A column one metre deep with 1 m/s at its surface: log law of a given h/z0, or power law of a given exponent. */
function unitColumn(i: Inputs): Column {
  if ("exponent" in i) return waterColumn({ ...unit, exponent: number(i, "exponent") });
  return waterColumn({ ...unit, roughnessLength: metres(1 / number(i, "depthOverZ0")) });
}

function bedColumn(i: Inputs, more: Partial<Observation> = {}): Column {
  const depth = metres(number(i, "depth"));
  const bed = text(i, "bed");
  if (!isBedClass(bed)) throw new TypeError(`no bed is called ${bed}`);
  return waterColumn({ depth, surfaceSpeed: metresPerSecond(1), bed, ...more });
}

function isBedClass(name: string): name is BedClass {
  return name in bedClassLimits;
}

/** Speed at a fraction of the depth from the surface, over the depth mean. */
function overMean(column: Column, depthFraction: number): number {
  return speedAt(column, heightAboveBed((1 - depthFraction) * column.depth)) / column.meanSpeed;
}

/** The h/z0 whose log law has the smallest greatest deviation from a list of speeds over the mean: the bed that the list describes. */
export function bestLogLaw(fractions: readonly number[], speeds: readonly number[]): Column {
  const column = (logRatio: number) => unitColumn({ depthOverZ0: Math.exp(logRatio) });
  const worst = (logRatio: number) => {
    const fitted = column(logRatio);
    return Math.max(...fractions.map((f, n) => Math.abs(overMean(fitted, f) - (speeds[n] ?? Number.NaN))));
  };
  let low = Math.log(20);
  let high = Math.log(1e5);
  for (let n = 0; n < 100; n++) {
    const third = (high - low) / 3;
    if (worst(low + third) < worst(high - third)) high -= third;
    else low += third;
  }
  return column((low + high) / 2);
}

/** Mean speed between two heights over the speed at the surface, by the midpoint rule. */
export function layerRatio(column: Column, from: number, to: number): number {
  const speed = speedProfile(column);
  const n = 20_000;
  let sum = 0;
  for (let k = 0; k < n; k++) sum += speed(from + ((k + 0.5) / n) * (to - from));
  return sum / n / column.surfaceSpeed;
}

function widestDip(): number {
  let low = 1;
  let high = 100;
  for (let n = 0; n < 60; n++) {
    const middle = (low + high) / 2;
    const column = waterColumn({
      ...unit,
      roughness: metres(0.05),
      channelWidth: metres(middle),
    });
    if (column.profile.law === "dip") low = middle;
    else high = middle;
  }
  return low;
}

function turbulence(i: Inputs) {
  return turbulenceIntensity(metresPerSecond(1), number(i, "relativeHeight"));
}

const twoPoint = (column: Column) => (overMean(column, 0.2) + overMean(column, 0.8)) / 2;

export const columnEvaluations = {
  "mean over surface": (i: Inputs): number => unitColumn(i).surfaceRatio,
  "mean over surface, bed": (i: Inputs): number => bedColumn(i).surfaceRatio,
  "height of the mean over depth": (i: Inputs): number => unitColumn(i).heightOfMean,
  "depth of the mean over depth": (i: Inputs): number => 1 - unitColumn(i).heightOfMean,
  "speed over mean at a fraction of the depth": (i: Inputs): number =>
    overMean(unitColumn(i), number(i, "fraction")),
  "two-point mean less six-tenths speed": (i: Inputs): number => {
    const column = unitColumn(i);
    return twoPoint(column) - overMean(column, 0.6);
  },
  "excess of the six-tenths speed over the mean, u*/κ": (i: Inputs): number => {
    const column = unitColumn(i);
    return ((overMean(column, 0.6) - 1) * column.meanSpeed * 0.41) / column.shearVelocity;
  },
  "log law nearest to the list, speed over mean": (i: Inputs): number =>
    overMean(bestLogLaw(numbers(i, "fractions"), numbers(i, "speeds")), number(i, "fraction")),
  "mean of a measured list": (i: Inputs): number => {
    const speeds = numbers(i, "speeds");
    const points = numbers(i, "fractions").map((f, n) => ({
      heightAboveBed: heightAboveBed(1 - f),
      speed: metresPerSecond(speeds[n] ?? Number.NaN),
    }));
    return waterColumn({ depth: metres(1), points }).meanSpeed;
  },
  "widest channel with a dip, depths": (_: Inputs): number => widestDip(),
  "mixing layer, mean over u*": (i: Inputs): number => {
    const bed = { d84: metres(1 / number(i, "submergence")) };
    const column = waterColumn({ ...unit, bed, law: "mixing-layer" });
    return column.meanSpeed / column.shearVelocity;
  },
  "log law, mean over u*": (i: Inputs): number => {
    const column = unitColumn(i);
    return column.meanSpeed / column.shearVelocity;
  },
  "turbulence along over u*": (i: Inputs): number => turbulence(i).along,
  "turbulent energy over u*² at the bed": (_: Inputs): number => {
    const { along, across, upright } = turbulenceIntensity(metresPerSecond(1), 0);
    return (along ** 2 + across ** 2 + upright ** 2) / 2;
  },
  "lower half over surface, bed": (i: Inputs): number => {
    const column = bedColumn(i);
    return layerRatio(column, 0, column.depth / 2);
  },
  "lower half over surface, D84": (i: Inputs): number => {
    const column = bedColumn({ ...i, bed: "boulder" }, { bed: { d84: metres(number(i, "d84")) } });
    return layerRatio(column, 0, column.depth / 2);
  },
} as const;
