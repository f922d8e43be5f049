/** A nymph on its dropper has one curve of pull against drift speed, whatever dry it hangs from: computed once, read for every dry. */

import type { Column } from "../column/index.js";
import { type Hang, hangFrom } from "../drift/index.js";
import type { FloatKernel, Line, Sinker } from "../forces/index.js";

/** Pull on the float and height of the sinker against drift speed, as sums of five Chebyshev polynomials over a range of speeds. */
export interface HungCurve {
  readonly low: number;
  readonly high: number;
  readonly tow: Float64Array;
  readonly load: Float64Array;
  readonly support: Float64Array;
  readonly speedAt: (height: number) => number;
}

const nodes = 5;
const last = nodes - 1;
const abscissa = Float64Array.from({ length: nodes }, (_, i) => -Math.cos((Math.PI * i) / last));

/** The curve over the drift speeds that free drift allows: those of the water the rig reaches through. Null where the line cannot hang there. */
export function hungCurve(float: FloatKernel, line: Line, sinker: Sinker, column: Column): HungCurve | null {
  const hang = hangFrom(float, [{ line, sinker }], column);
  const { low, high } = speedRange(hang);
  const [tow, load, support] = [new Float64Array(nodes), new Float64Array(nodes), new Float64Array(nodes)];
  let at = Math.max(0, hang.depth - hang.length);
  // from the surface speed down: there the line hangs nearest to plumb behind a float that runs with the surface
  for (let i = last; i >= 0; i--) {
    const found = hangAt(hang, low + ((high - low) * (abscissa[i]! + 1)) / 2, at);
    if (found === null) return null;
    at = found.support;
    tow[i] = found.tow;
    load[i] = found.load;
    support[i] = at;
  }
  return {
    low,
    high,
    tow: chebyshev(tow),
    load: chebyshev(load),
    support: chebyshev(support),
    speedAt: hang.speedAt,
  };
}

/** Coefficients of the Chebyshev sum through values at the nodes. */
function chebyshev(values: Float64Array): Float64Array {
  return Float64Array.from({ length: nodes }, (_, k) => {
    let sum = 0;
    for (let i = 0; i < nodes; i++) {
      const end = i === 0 || i === last ? 0.5 : 1;
      sum += end * values[i]! * Math.cos((Math.PI * k * (last - i)) / last);
    }
    return ((k === 0 || k === last ? 1 : 2) * sum) / last;
  });
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

interface HangingAt {
  readonly support: number;
  readonly tow: number;
  readonly load: number;
}

/** The rig hanging at a drift speed: the height of the sinker at which the line ends at the surface, to 0.1 mm by secants; null where eight do not do. */
function hangAt({ roughShoot, depth }: Hang, speed: number, guess: number): HangingAt | null {
  let support = guess;
  let before = { support: guess, miss: 0 };
  let slope = 1;
  for (let i = 0; i < 9; i++) {
    const { height, tow, load } = roughShoot(speed, support, 0);
    const miss = height - depth;
    if (Math.abs(miss) < 1e-4) return { support, tow, load };
    if (i > 0) slope = Math.min(4, Math.max(0.25, (miss - before.miss) / (support - before.support)));
    before = { support, miss };
    support = Math.min(depth, Math.max(0, support - miss / slope));
    if (support === before.support) return null;
  }
  return null;
}

/** A value of the curve at a drift speed. */
export function readCurve({ low, high }: HungCurve, c: Float64Array, speed: number): number {
  const x = (2 * (speed - low)) / (high - low) - 1;
  const t2 = 2 * x * x - 1;
  return c[0]! + c[1]! * x + c[2]! * t2 + c[3]! * (2 * x * t2 - x) + c[4]! * (2 * t2 * t2 - 1);
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
