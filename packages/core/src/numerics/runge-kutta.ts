/** The classical Runge-Kutta method of order 4 with equal steps: for rough answers to be refined. */

import type { Slope } from "./integration.js";

/** Carries a state of four components over a span in equal steps, in place.
 *  Unstable where the slope is stiff against the step: the state may then be anything, also not finite. */
export function rungeKutta(slope: Slope): (y: Float64Array, span: number, steps: number) => void {
  const k = new Float64Array(4);
  const at = new Float64Array(4);
  const sum = new Float64Array(4);
  return (y, span, steps) => {
    const h = span / steps;
    for (let step = 0; step < steps; step++) {
      slope(y, k, 0);
      for (let i = 0; i < 4; i++) {
        sum[i] = k[i]!;
        at[i] = y[i]! + 0.5 * h * k[i]!;
      }
      slope(at, k, 0);
      for (let i = 0; i < 4; i++) {
        sum[i] = sum[i]! + 2 * k[i]!;
        at[i] = y[i]! + 0.5 * h * k[i]!;
      }
      slope(at, k, 0);
      for (let i = 0; i < 4; i++) {
        sum[i] = sum[i]! + 2 * k[i]!;
        at[i] = y[i]! + h * k[i]!;
      }
      slope(at, k, 0);
      for (let i = 0; i < 4; i++) y[i] = y[i]! + (h / 6) * (sum[i]! + k[i]!);
    }
  };
}
