/** A nymph on its dropper has one curve of pull against drift speed, whatever dry it hangs from: computed once, read for every dry. */

import type { Column } from "../column/index.js";
import { type Hang, hangFrom } from "../drift/index.js";
import type { FloatKernel, Line, Sinker } from "../forces/index.js";

/** Pull on the float and height of the sinker at Chebyshev-Lobatto nodes of drift speed. */
export interface HungCurve {
  readonly low: number;
  readonly high: number;
  readonly tow: Float64Array;
  readonly load: Float64Array;
  readonly support: Float64Array;
  readonly speedAt: (height: number) => number;
}

const nodes = 5;
const abscissa = Float64Array.from({ length: nodes }, (_, i) => -Math.cos((Math.PI * i) / (nodes - 1)));
/** Barycentric weights of the nodes: alternating, halved at the ends. */
const weight = Float64Array.from(
  { length: nodes },
  (_, i) => (i % 2 === 0 ? 1 : -1) * (i % (nodes - 1) === 0 ? 0.5 : 1),
);

/** The curve over the drift speeds that free drift allows: those of the water the rig reaches through. Null where the line cannot hang there. */
export function hungCurve(float: FloatKernel, line: Line, sinker: Sinker, column: Column): HungCurve | null {
  const hang = hangFrom(float, [{ line, sinker }], column);
  const { low, high } = speedRange(hang);
  const curve = {
    low,
    high,
    tow: new Float64Array(nodes),
    load: new Float64Array(nodes),
    support: new Float64Array(nodes),
    speedAt: hang.speedAt,
  };
  let support = Math.max(0, hang.depth - hang.length);
  // from the surface speed down: there the line hangs nearest to plumb behind a float that runs with the surface
  for (let i = nodes - 1; i >= 0; i--) {
    const speed = low + ((high - low) * (abscissa[i]! + 1)) / 2;
    const found = supportAt(hang, speed, support);
    if (found === null) return null;
    const { tow, load } = hang.roughShoot(speed, found, 0);
    curve.tow[i] = tow;
    curve.load[i] = load;
    curve.support[i] = found;
    support = found;
  }
  return curve;
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

/** The height of the sinker at which the line ends at the surface, to 0.1 mm by secants; null where eight do not do. */
function supportAt({ roughShoot, depth }: Hang, speed: number, guess: number): number | null {
  let support = guess;
  let miss = roughShoot(speed, support, 0).height - depth;
  let slope = 1;
  for (let i = 0; i < 8; i++) {
    if (Math.abs(miss) < 1e-4) return support;
    const next = Math.min(depth, Math.max(0, support - miss / slope));
    const nextMiss = roughShoot(speed, next, 0).height - depth;
    if (next !== support) slope = Math.min(4, Math.max(0.25, (nextMiss - miss) / (next - support)));
    support = next;
    miss = nextMiss;
  }
  return null;
}

/** A value of the curve at a drift speed, by barycentric interpolation. */
export function readCurve({ low, high }: HungCurve, values: Float64Array, speed: number): number {
  const x = (2 * (speed - low)) / (high - low) - 1;
  let above = 0;
  let below = 0;
  for (let i = 0; i < nodes; i++) {
    const gap = x - abscissa[i]!;
    if (gap === 0) return values[i]!;
    const share = weight[i]! / gap;
    above += share * values[i]!;
    below += share;
  }
  return above / below;
}

/** The drift speed at which a float drags as much as the curve pulls, by bisection and secants to a ten-thousandth of the range. */
export function meetFloat(
  curve: HungCurve,
  float: FloatKernel,
  surfaceSpeed: number,
  wind: number | null,
): number {
  const force = (speed: number): number => {
    const draft = float.draft(readCurve(curve, curve.load, speed));
    const windage = wind === null ? 0 : float.windageAt(wind - speed, draft);
    return readCurve(curve, curve.tow, speed) - float.dragAt(surfaceSpeed - speed, draft) - windage;
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
