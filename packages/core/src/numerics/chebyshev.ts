/** A smooth function over a short range as a sum of Chebyshev polynomials, with its integral. */

import { cos } from "../elementary/index.js";

const degree = 8;
const cosines = /* @__PURE__ */ Array.from({ length: 2 * degree }, (_, k) => cos((Math.PI * k) / degree));

/** A function on [from, to] and its integral from `from` on, each as a sum of Chebyshev polynomials of degree 8 and 9. */
export interface ChebyshevSum {
  readonly valueAt: (x: number) => number;
  readonly integralAt: (x: number) => number;
  /** The integral over the whole range. */
  readonly integral: number;
  /** The last two terms, times the width: about the error of the integral, or more. */
  readonly error: number;
}

/** Samples f at the nine extrema of the polynomial of degree 8. Good to its `error` where f is smooth: halve the range until that is small.
 *  @example chebyshevSum(Math.exp, 0, 1).integral // => 1.71828183 */
export function chebyshevSum(f: (x: number) => number, from: number, to: number): ChebyshevSum {
  const half = (to - from) / 2;
  const middle = (from + to) / 2;
  const samples = Float64Array.from({ length: degree + 1 }, (_, k) => f(middle + half * cosines[k]!));
  const a = coefficients(samples);
  const integral = integrated(a, half);
  const unit = (x: number): number => (x - middle) / half;
  return {
    valueAt: (x) => clenshaw(a, unit(x)),
    integralAt: (x) => clenshaw(integral, unit(x)),
    integral: clenshaw(integral, 1),
    error: 2 * half * (Math.abs(a[degree]!) + Math.abs(a[degree - 1]!)),
  };
}

/** a_j = (2/n) Σ″ f_k cos(j k π/n), the first and the last halved. */
function coefficients(samples: Float64Array): Float64Array {
  const a = new Float64Array(degree + 1);
  for (let j = 0; j <= degree; j++) {
    let sum = 0.5 * (samples[0]! + samples[degree]! * (j % 2 === 0 ? 1 : -1));
    for (let k = 1; k < degree; k++) sum += samples[k]! * cosines[(j * k) % (2 * degree)]!;
    a[j] = (2 / degree) * sum;
  }
  a[0] = 0.5 * a[0]!;
  a[degree] = 0.5 * a[degree]!;
  return a;
}

/** ∫ T_j = T_(j+1)/(2(j+1)) − T_(j−1)/(2(j−1)); the constant makes it 0 at −1. */
function integrated(a: Float64Array, half: number): Float64Array {
  const b = new Float64Array(degree + 2);
  for (let j = 1; j <= degree + 1; j++) {
    const before = (j === 1 ? 2 : 1) * a[j - 1]!;
    b[j] = (half * (before - (a[j + 1] ?? 0))) / (2 * j);
  }
  let atStart = 0;
  for (let j = 1; j <= degree + 1; j++) atStart += j % 2 === 0 ? b[j]! : -b[j]!;
  b[0] = -atStart;
  return b;
}

function clenshaw(a: Float64Array, x: number): number {
  let [b1, b2] = [0, 0];
  for (let j = a.length - 1; j > 0; j--) {
    const next = a[j]! + 2 * x * b1 - b2;
    b2 = b1;
    b1 = next;
  }
  return a[0]! + x * b1 - b2;
}
