/** A nymph on its dropper has one curve of pull against drift speed, whatever dry it hangs from: computed once, read for every dry. */

import type { Column } from "../column/index.js";
import { type Hang, hangFrom } from "../drift/index.js";
import type { FloatKernel, Line, Sinker } from "../forces/index.js";

/** Pull on the float and height of the sinker against drift speed: polynomials in Newton's form through the same speeds. */
export interface HungCurve {
  readonly low: number;
  readonly high: number;
  /** Length of the line, m. */
  readonly length: number;
  /** Drift speeds of the nodes. */
  readonly speeds: Float64Array;
  readonly tow: Float64Array;
  readonly load: Float64Array;
  readonly support: Float64Array;
  readonly speedAt: (height: number) => number;
}

/** The most nodes: a step more gains nothing that the drags of flies deserve. */
const mostNodes = 6;

/** The curve over the drift speeds that the floats of a box can have: from the surface speed down to the drift with the float that drags least.
 *  `like`, the curve of another line, says where to look first. The nodes are the steps of that search, growing until the force turns, then by false position. Null where the line cannot hang there. */
export function hungCurve(
  leastFloat: FloatKernel,
  line: Line,
  sinker: Sinker,
  column: Column,
  like: HungCurve | null,
): HungCurve | null {
  const hang = hangFrom(leastFloat, [{ line, sinker }], column);
  const shoot = hang.plainShot(curveTolerance);
  const { low, high } = speedRange(hang);
  const found: HangingAt[] = [];
  /** Force at the least float where the rig can hang at this speed, which becomes a node; NaN where it cannot. */
  const force = (speed: number): number => {
    const support = supportFrom(found, speed) ?? firstSupport(hang, like);
    const next = hangAt(hang, shoot, speed, { support, rise: found.at(-1)?.rise ?? 1 });
    if (next === null) return Number.NaN;
    found.push(next);
    return next.tow - leastFloat.dragAt(column.surfaceSpeed - speed, leastFloat.draft(next.load));
  };
  let b = high;
  let fb = force(b);
  let step = 0.06 * (high - low);
  for (let tries = 0; fb > 0 && b > low && found.length < mostNodes - 1 && tries < 8; tries++) {
    const a = Math.max(low, b - step);
    const fa = force(a);
    if (fa < 0) {
      refine(force, { a, fa, b, fb, gap: 0.002 * (high - low) }, mostNodes - found.length);
      break;
    }
    step = Number.isNaN(fa) ? 0.4 * step : 2 * step;
    if (!Number.isNaN(fa)) [b, fb] = [a, fa];
  }
  if (found.length < 3) return null;
  const speeds = Float64Array.from(found, (f) => f.speed);
  const through = (value: (f: HangingAt) => number): Float64Array =>
    dividedDifferences(speeds, found.map(value));
  return {
    low: Math.min(...speeds),
    high,
    length: hang.length,
    speeds,
    tow: through((f) => f.tow),
    load: through((f) => f.load),
    support: through((f) => f.support),
    speedAt: hang.speedAt,
  };
}

interface Turn {
  readonly a: number;
  readonly fa: number;
  readonly b: number;
  readonly fb: number;
  readonly gap: number;
}

/** A few steps of false position (Illinois) to where the force turns, kept off the nodes that are there so that differences stay well-conditioned. */
function refine(force: (speed: number) => number, turn: Turn, steps: number): void {
  let { a, fa, b, fb } = turn;
  for (let i = 0; i < Math.min(2, steps) && b - a > 4 * turn.gap; i++) {
    const x = Math.min(b - turn.gap, Math.max(a + turn.gap, (a * fb - b * fa) / (fb - fa)));
    const fx = force(x);
    if (fx < 0) [a, fa, fb] = [x, fx, 0.5 * fb];
    else if (fx >= 0) [b, fb, fa] = [x, fx, 0.5 * fa];
    else return;
  }
}

function dividedDifferences(x: Float64Array, values: readonly number[]): Float64Array {
  const c = Float64Array.from(values);
  for (let k = 1; k < c.length; k++) {
    for (let i = c.length - 1; i >= k; i--) c[i] = (c[i]! - c[i - 1]!) / (x[i]! - x[i - k]!);
  }
  return c;
}

/** Least and greatest speed of the water between the lowest point of a plumb rig and the surface. */
function speedRange({ depth, length, speedAt }: Hang): { readonly low: number; readonly high: number } {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let i = 0; i <= 8; i++) {
    const u = speedAt(Math.max(0, depth - (length * i) / 8));
    low = Math.min(low, u);
    high = Math.max(high, u);
  }
  return { low, high: Math.max(high, low + 1e-4) };
}

/** The height to expect at the first node: the line leans as another one did there, or not at all. */
function firstSupport({ depth, length }: Hang, like: HungCurve | null): number {
  return depth - length * (like === null ? 1 : (depth - like.support[0]!) / like.length);
}

/** The height of the sinker to expect at a drift speed, by the nodes that are there. */
function supportFrom(found: readonly HangingAt[], speed: number): number | null {
  if (found.length === 0) return null;
  const speeds = Float64Array.from(found, (f) => f.speed);
  const supports = found.map((f) => f.support);
  return readCurve(speeds, dividedDifferences(speeds, supports), speed);
}

interface HangingAt {
  readonly speed: number;
  readonly support: number;
  readonly tow: number;
  readonly load: number;
  /** How much the upper end of the line rises with the sinker. */
  readonly rise: number;
}

/** Error per step of the line, relative: coarse, since drags of flies deserve no more, and fine enough for a margin near its limit. */
const curveTolerance = 3e-3;

/** The rig hanging at a drift speed: the height of the sinker at which the line ends at the surface, to 0.5 mm, by secants inside the bracket
 *  from plumb to the surface. Null where twenty do not do. */
function hangAt(
  { depth, length }: Hang,
  shoot: Hang["roughShoot"],
  speed: number,
  near: Pick<HangingAt, "support" | "rise">,
): HangingAt | null {
  let low = Math.max(0, depth - length);
  let high = depth;
  let support = Math.min(high, Math.max(low, near.support));
  let { rise } = near;
  let before = { support, miss: Number.NaN };
  for (let i = 0; i < 20; i++) {
    const { height, tow, load } = shoot(speed, support, 0);
    const miss = height - depth;
    if (i > 0) rise = (miss - before.miss) / (support - before.support);
    if (Math.abs(miss) < 5e-4) return { speed, support, tow, load, rise };
    if (miss > 0) high = support;
    else low = support;
    before = { support, miss };
    const next = support - miss / rise;
    support = next > low && next < high ? next : (low + high) / 2;
  }
  return null;
}

/** A value of the curve at a drift speed. */
export function readCurve(speeds: Float64Array, c: Float64Array, speed: number): number {
  let value = c[c.length - 1]!;
  for (let i = c.length - 2; i >= 0; i--) value = value * (speed - speeds[i]!) + c[i]!;
  return value;
}

/** The drift speed at which a float drags as much as the curve pulls, by bisection and secants to a ten-thousandth of the range. */
export function meetFloat(
  curve: HungCurve,
  float: FloatKernel,
  surfaceSpeed: number,
  wind: number | null,
): number {
  const force = (speed: number): number => {
    const draft = float.draft(readCurve(curve.speeds, curve.load, speed));
    const windage = wind === null ? 0 : float.windageAt(wind - speed, draft);
    return readCurve(curve.speeds, curve.tow, speed) - float.dragAt(surfaceSpeed - speed, draft) - windage;
  };
  let a = curve.low;
  let b = curve.high;
  let fa = force(a);
  let fb = force(b);
  if (fa >= 0) return a;
  if (fb <= 0) return b;
  for (let i = 0; i < 30 && b - a > 1e-4 * (curve.high - curve.low); i++) {
    // false position with the Illinois halving: never leaves the bracket
    const x = (a * fb - b * fa) / (fb - fa);
    const fx = force(x);
    if (fx < 0) {
      a = x;
      fa = fx;
      fb *= 0.5;
    } else {
      b = x;
      fb = fx;
      fa *= 0.5;
    }
    if (Math.abs(fx) < 1e-9) return x;
  }
  return (a + b) / 2;
}
