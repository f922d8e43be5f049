/** Integration of smooth ordinary differential equations to near machine precision: Gragg-Bulirsch-Stoer extrapolation. */

import { QuantityError } from "../units/index.js";

const sequence = [2, 4, 6, 8, 10, 12] as const;
const columns = sequence.length;

/** Right-hand side: writes dy/ds for state `y` into `slope`. */
export type Slope = (y: Float64Array, slope: Float64Array) => void;
/** Size of an error against the state it belongs to: 1 means "as large as the thing itself". */
export type ErrorNorm = (y: Float64Array, error: Float64Array) => number;

export interface Integrator {
  /** Carries `y` over the length `span` in place, error per step at most `tolerance` in the norm. Returns the number of evaluations. */
  readonly advance: (y: Float64Array, span: number, tolerance: number) => number;
}

/** An integrator for an autonomous system of `size` equations; it owns its working space, so one serves many calls.
 *  Modified midpoint rule with 2, 4, 6, ... 12 substeps extrapolated to zero step (order up to 12), step length by the error of the last two columns.
 *  Steps below 1e-12 of the span are accepted as they are: `advance` passes a jump of the slope.
 *  Throws QuantityError for a span that is not 0 or more, and where the slope is not finite. */
export function extrapolationIntegrator(size: number, slope: Slope, norm: ErrorNorm): Integrator {
  const start = new Float64Array(size);
  const startSlope = new Float64Array(size);
  const rows = sequence.map(() => new Float64Array(size));
  const older = new Float64Array(size);
  const newer = new Float64Array(size);
  const k = new Float64Array(size);
  const error = new Float64Array(size);

  function midpoint(step: number, substeps: number, out: Float64Array): void {
    const h = step / substeps;
    for (let i = 0; i < size; i++) {
      older[i] = start[i]!;
      newer[i] = start[i]! + h * startSlope[i]!;
    }
    for (let m = 1; m < substeps; m++) {
      slope(newer, k);
      for (let i = 0; i < size; i++) {
        const next = older[i]! + 2 * h * k[i]!;
        older[i] = newer[i]!;
        newer[i] = next;
      }
    }
    slope(newer, k);
    for (let i = 0; i < size; i++) out[i] = 0.5 * (older[i]! + newer[i]! + h * k[i]!);
  }

  /** Extrapolates row j through the earlier rows in place; leaves the change made by the last column in `error`. */
  function extrapolate(j: number): void {
    for (let c = 1; c <= j; c++) {
      const ratio = sequence[j]! / sequence[j - c]!;
      const divisor = ratio * ratio - 1;
      for (let i = 0; i < size; i++) {
        const fine = tableau[j]![c - 1]![i]!;
        const correction = (fine - tableau[j - 1]![c - 1]![i]!) / divisor;
        error[i] = correction;
        tableau[j]![c]![i] = fine + correction;
      }
    }
  }
  const tableau = rows.map((row, j) => [row, ...Array.from({ length: j }, () => new Float64Array(size))]);

  function advance(y: Float64Array, span: number, tolerance: number): number {
    if (!(span >= 0 && span < Number.POSITIVE_INFINITY)) throw new QuantityError("span", "0 or more", span);
    let done = 0;
    let step = span;
    const least = 1e-12 * span;
    let evaluations = 0;
    while (done < span) {
      step = Math.min(step, span - done);
      start.set(y);
      slope(start, startSlope);
      evaluations++;
      let accepted = -1;
      let change = Number.POSITIVE_INFINITY;
      for (let j = 0; j < columns; j++) {
        midpoint(step, sequence[j]!, tableau[j]![0]!);
        evaluations += sequence[j]!;
        if (j === 0) continue;
        extrapolate(j);
        change = norm(tableau[j]![j]!, error);
        if (change <= tolerance || (j === columns - 1 && step <= least)) {
          accepted = j;
          break;
        }
        // hopeless: not even three more columns would do
        if (j >= 2 && !(change < 1) && step > least) break;
      }
      if (step <= least && !Number.isFinite(change)) throw new QuantityError("slope", "finite", change);
      if (accepted >= 0) {
        y.set(tableau[accepted]![accepted]!);
        done = span - done - step <= 1e-14 * span ? span : done + step;
        step *= accepted <= 3 ? 3 : accepted === 4 ? 1.5 : 0.9;
      } else {
        step *= Number.isFinite(change)
          ? Math.max(0.1, Math.min(0.5, 0.8 * (tolerance / change) ** (1 / 11)))
          : 0.1;
      }
    }
    return evaluations;
  }
  return { advance };
}
