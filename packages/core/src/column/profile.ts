/** The six laws of speed against height, each as a shape g(z) with its depth mean. A column scales the shape to its surface speed. */

import { exp, ln, ln1p, raise, sin, tanh } from "../elementary/index.js";
import { findRoot, monotoneCubic } from "../numerics/index.js";
import type { SourceKey, Validity } from "../sources/index.js";
import { type HeightAboveBed, type Metres, type MetresPerSecond, QuantityError } from "../units/index.js";

/** Von Kármán's constant as the model takes it. */
export const vonKarman = 0.41;
/** Katul's ratio of the speed at the height of the stones to the shear velocity. */
const mixingRatio = 4.5;
/** The dip law is singular at the surface: above this fraction of the depth the speed is held. Our assumption. */
const dipCeiling = 0.99;

export interface MeasuredPoint {
  readonly heightAboveBed: HeightAboveBed;
  readonly speed: MetresPerSecond;
}

/** A law with its parameters: everything that fixes the shape of the profile over a depth. */
export type Profile =
  | { readonly law: "log"; readonly roughnessLength: Metres }
  | { readonly law: "log-wake"; readonly roughnessLength: Metres; readonly wake: number }
  | { readonly law: "dip"; readonly roughnessLength: Metres; readonly dip: number }
  | { readonly law: "power"; readonly exponent: number }
  | { readonly law: "mixing-layer"; readonly stoneSize: Metres }
  | { readonly law: "measured"; readonly points: readonly MeasuredPoint[] };

export type ColumnLaw = Profile["law"];

/** Where each law comes from, and what it was published for. */
export const lawSource: Readonly<Record<ColumnLaw, SourceKey>> = {
  log: "NezuNakagawa1993",
  "log-wake": "Coles1956",
  dip: "Yang2004",
  power: "ISO748",
  "mixing-layer": "Katul2002",
  measured: "FritschCarlson1980",
};

export const mixingLayerValidity: Validity = {
  relation: "Katul2002",
  quantity: "depth / D84",
  min: 0.2,
  max: 7,
};

/** Channels that the dip law was fitted to. */
export const dipValidity: Validity = {
  relation: "Yang2004",
  quantity: "channel width / depth",
  min: 4.1,
  max: 15,
};

export const powerValidity: Validity = {
  relation: "ISO748",
  quantity: "exponent m of the power law",
  min: 2,
  max: 12,
};

/** A shape of the profile: g(z), its value at the surface, its depth mean, and g over u/u* (nothing where the law says nothing of u*). */
export interface Shape {
  /** Continues smoothly above the surface, for solvers that overshoot it. */
  readonly at: (heightAboveBed: number) => number;
  readonly surface: number;
  readonly mean: number;
  /** Shear velocity over the unit of g, or NaN where the law does not fix it. */
  readonly perShear: number;
}

/** The shape of a law over a depth, in plain numbers.
 *  log: ln(z/z0), 0 below z0 · log-wake: + 2Π sin²(π z/2h) · dip: + α ln(1 − z/h) below 0.99 h · power: (z/h)^(1/m) ·
 *  mixing layer: 1 + tanh((z − D)/D) · measured: monotone cubic through the points.
 *  Throws QuantityError where the law has no forward speed at the surface. */
export function shapeOf(profile: Profile, depth: number): Shape {
  const shape = shapes(profile, depth);
  // a surface that barely moves over water that does has no ratio to its mean
  if (!(shape.surface > 0 && Number.isFinite(shape.mean / shape.surface))) {
    throw new QuantityError(
      `surface speed of the ${profile.law} law over ${depth} m`,
      "forward: the depth is too small for this roughness or the water too slow, use another law",
      shape.surface,
    );
  }
  return shape;
}

function shapes(profile: Profile, h: number): Shape {
  switch (profile.law) {
    case "log":
      return logShape(h, profile.roughnessLength, 0, 0);
    case "log-wake":
      return logShape(h, profile.roughnessLength, profile.wake, 0);
    case "dip":
      return logShape(h, profile.roughnessLength, 0, profile.dip);
    case "power":
      return powerShape(h, profile.exponent);
    case "mixing-layer":
      return mixingShape(h, profile.stoneSize);
    case "measured":
      return measuredShape(profile.points, h);
  }
}

function logShape(h: number, z0: number, wake: number, dip: number): Shape {
  const top = dip > 0 ? dipCeiling * h : h;
  const halfTurn = Math.PI / (2 * h);
  const raw = (height: number): number => {
    const z = dip > 0 ? Math.min(height, top) : height;
    if (z <= z0) return 0;
    let g = ln(z / z0);
    if (wake !== 0) g += 2 * wake * sin(halfTurn * z) ** 2;
    if (dip > 0) g += dip * ln1p(-z / h);
    return g;
  };
  const at = dip > 0 || wake < 0 ? (z: number): number => Math.max(0, raw(z)) : raw;
  return { at, surface: raw(h), mean: logMean(h, z0, wake, dip), perShear: vonKarman };
}

/** Exact depth mean of the log law with wake and dip, over the heights where it is above 0 and constant above the ceiling. */
function logMean(h: number, z0: number, wake: number, dip: number): number {
  if (z0 >= h) return 0;
  const t = dip > 0 ? dipCeiling : 1;
  const f = z0 / h;
  const foot = footOf(f, t, wake, dip);
  const log = t * ln(t / f) - t - (foot * ln(foot / f) - foot);
  const wakeMean = wake * (t - foot - (sin(Math.PI * t) - sin(Math.PI * foot)) / Math.PI);
  if (dip <= 0) return log + wakeMean;
  // ∫ ln(1 − x) dx = −(1 − x) ln(1 − x) − x
  const primitive = (x: number): number => -(1 - x) * ln1p(-x) - x;
  const above = (1 - t) * (ln(t / f) + dip * ln1p(-t));
  return log + dip * (primitive(t) - primitive(foot)) + above;
}

/** The height over depth where the law comes above 0: z0 itself, or a little over it where a dip or a wake below 0 takes from the log law. */
function footOf(f: number, top: number, wake: number, dip: number): number {
  if (dip <= 0 && wake >= 0) return f;
  const g = (x: number): number =>
    ln(x / f) + 2 * wake * sin((Math.PI / 2) * x) ** 2 + (dip > 0 ? dip * ln1p(-x) : 0);
  return f < top && g(top) > 0 ? findRoot(g, f, top, 1e-15).root : f;
}

function powerShape(h: number, m: number): Shape {
  const mean = m / (m + 1);
  // m = κ V/u*: shear velocity per unit of surface speed is κ (mean/surface)/m. [ZimmermannKennedy1978]
  return {
    at: (z) => (z <= 0 ? 0 : raise(z / h, 1 / m)),
    surface: 1,
    mean,
    perShear: (vonKarman * mean) / m,
  };
}

function mixingShape(h: number, D: number): Shape {
  const mean = 1 + (D / h) * (logCosh((h - D) / D) - logCosh(1));
  return {
    // 1 + tanh(x) = 2/(1 + e^(−2x)), which takes half the time
    at: (z) => 2 / (1 + exp((-2 / D) * (Math.max(z, 0) - D))),
    surface: 1 + tanh((h - D) / D),
    mean,
    perShear: 1 / mixingRatio,
  };
}

function logCosh(x: number): number {
  const a = Math.abs(x);
  return a + ln1p(exp(-2 * a)) - Math.LN2;
}

function measuredShape(points: readonly MeasuredPoint[], h: number): Shape {
  const sorted = [...points].sort((a, b) => a.heightAboveBed - b.heightAboveBed);
  const z: number[] = sorted.map((p) => p.heightAboveBed);
  const u: number[] = sorted.map((p) => p.speed);
  const bottom = z[0] ?? Number.NaN;
  if (bottom > 0) {
    z.unshift(0);
    u.unshift(0);
  }
  const top = z.at(-1) ?? Number.NaN;
  if (top < h) {
    z.push(h);
    u.push(u.at(-1) ?? Number.NaN);
  }
  // still water: a shape of nothing, so that its scale is nothing over one
  if (u.every((speed) => speed === 0)) return { at: () => 0, surface: 1, mean: 0, perShear: 0 };
  const curve = monotoneCubic(z, u);
  return { at: curve.at, surface: curve.at(h), mean: curve.integral / h, perShear: wallFit(sorted) };
}

/** Shear velocity from the slope of speed against ln z (law of the wall), least squares; NaN when the slope is not positive. [NezuNakagawa1993] */
function wallFit(points: readonly MeasuredPoint[]): number {
  const wet = points.filter((p) => p.heightAboveBed > 0);
  const n = wet.length;
  const x = wet.map((p) => ln(p.heightAboveBed));
  const meanX = x.reduce((a, b) => a + b, 0) / n;
  const meanU = wet.reduce((a, p) => a + p.speed, 0) / n;
  let sxx = 0;
  let sxu = 0;
  wet.forEach((p, i) => {
    const dx = (x[i] ?? 0) - meanX;
    sxx += dx * dx;
    sxu += dx * (p.speed - meanU);
  });
  return sxu > 0 ? (vonKarman * sxu) / sxx : Number.NaN;
}
