/** The least value of a function between two ends, without derivatives. */

import { QuantityError } from "../units/index.js";

const golden = (Math.sqrt(5) - 1) / 2;

/** The x in [low, high] with the least f, to within `tolerance`: 64 equal steps to find the valley, golden section inside it.
 *  A valley narrower than a step can be missed. Near a smooth minimum f cannot tell x apart to better than about 1e-8 of its scale.
 *  Throws QuantityError when f is not a number at a step.
 *  @example findLeast((x) => (x - 1) ** 2, 0, 3, 1e-9) // => 1.0000000 */
export function findLeast(f: (x: number) => number, low: number, high: number, tolerance: number): number {
  const steps = 64;
  const at = (i: number): number => low + ((high - low) * i) / steps;
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i <= steps; i++) {
    const value = f(at(i));
    if (Number.isNaN(value)) throw new QuantityError(`function at ${at(i)}`, "a number", value);
    if (value < least) {
      least = value;
      best = i;
    }
  }
  let a = at(Math.max(0, best - 1));
  let b = at(Math.min(steps, best + 1));
  let x = b - golden * (b - a);
  let y = a + golden * (b - a);
  let fx = f(x);
  let fy = f(y);
  for (let i = 0; i < 200 && b - a > tolerance; i++) {
    if (fx <= fy) {
      b = y;
      y = x;
      fy = fx;
      x = b - golden * (b - a);
      fx = f(x);
    } else {
      a = x;
      x = y;
      fx = fy;
      y = a + golden * (b - a);
      fy = f(y);
    }
  }
  return (a + b) / 2;
}
