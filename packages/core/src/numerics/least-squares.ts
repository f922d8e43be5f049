/** Weighted linear least squares, with what a prediction from it is worth. */

import { QuantityError } from "../units/index.js";

export interface LinearFit {
  readonly coefficients: readonly number[];
  /** Standard error of each coefficient. */
  readonly standardErrors: readonly number[];
  /** Standard deviation of the residuals at weight 1: √(Σ w r²/freedom), 0 where the fit passes through every point. */
  readonly deviation: number;
  /** Points less coefficients. */
  readonly freedom: number;
  readonly residuals: readonly number[];
  /** Σ w r². */
  readonly sumOfSquares: number;
  /** jᵀ (JᵀWJ)⁻¹ j of a row j: times the variance of the residuals, the variance of the fitted value there. */
  readonly leverage: (row: readonly number[]) => number;
}

/** Fits y ≈ J c with weights by the modified Gram-Schmidt method. Throws QuantityError unless there are at least as many points as coefficients,
 *  weights are above 0, and the columns tell the coefficients apart.
 *  @example leastSquares([[1, 0], [1, 1], [1, 2]], [1, 3, 5]).coefficients[1] // => 2.0000 */
export function leastSquares(
  rows: readonly (readonly number[])[],
  y: readonly number[],
  weights?: readonly number[],
): LinearFit {
  const n = y.length;
  const p = rows[0]?.length ?? 0;
  if (p === 0 || n < p || rows.length !== n)
    throw new QuantityError("points of a least-squares fit", `${p || 1} or more`, n);
  const roots = y.map((_, i) => rootOfWeight(weights === undefined ? 1 : (weights[i] ?? Number.NaN)));
  const q = columnsOf(rows, roots, p);
  const r = orthogonalise(q);
  const rest = y.map((value, i) => value * (roots[i] ?? 0));
  const projections = q.map((column) => takeOut(column, rest));
  const coefficients = backward(r, projections);
  const sumOfSquares = dot(rest, rest);
  const freedom = n - p;
  const deviation = freedom === 0 ? 0 : Math.sqrt(sumOfSquares / freedom);
  const leverage = (row: readonly number[]): number => {
    const v = forward(r, row);
    return dot(v, v);
  };
  const standardErrors = coefficients.map((_, k) => {
    const unit = coefficients.map((__, i) => (i === k ? 1 : 0));
    return deviation * Math.sqrt(leverage(unit));
  });
  const residuals = rest.map((value, i) => value / (roots[i] ?? 1));
  return { coefficients, standardErrors, deviation, freedom, residuals, sumOfSquares, leverage };
}

function rootOfWeight(weight: number): number {
  if (!(weight > 0 && weight < Number.POSITIVE_INFINITY))
    throw new QuantityError("weight of a point", "above 0", weight);
  return Math.sqrt(weight);
}

function columnsOf(rows: readonly (readonly number[])[], roots: readonly number[], p: number): number[][] {
  return Array.from({ length: p }, (_, k) => rows.map((row, i) => (row[k] ?? Number.NaN) * (roots[i] ?? 0)));
}

/** Makes the columns orthonormal in place; returns the upper triangle R, r[i][j] for i <= j. */
function orthogonalise(columns: readonly number[][]): number[][] {
  const r = columns.map(() => columns.map(() => 0));
  columns.forEach((column, j) => {
    const before = Math.sqrt(dot(column, column));
    for (let i = 0; i < j; i++) {
      const row = r[i];
      const earlier = columns[i];
      if (row !== undefined && earlier !== undefined) row[j] = takeOut(earlier, column);
    }
    const norm = Math.sqrt(dot(column, column));
    if (!(norm > 1e-12 * before))
      throw new QuantityError("points of a least-squares fit", "enough to tell the coefficients apart", norm);
    const row = r[j];
    if (row !== undefined) row[j] = norm;
    for (let i = 0; i < column.length; i++) column[i] = (column[i] ?? 0) / norm;
  });
  return r;
}

/** Takes the part along a unit column out of a vector in place; returns its length. */
function takeOut(unit: readonly number[], vector: number[]): number {
  const length = dot(unit, vector);
  for (let i = 0; i < vector.length; i++) vector[i] = (vector[i] ?? 0) - length * (unit[i] ?? 0);
  return length;
}

function dot(a: readonly number[], b: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] ?? Number.NaN) * (b[i] ?? Number.NaN);
  return sum;
}

/** R x = b. */
function backward(r: readonly (readonly number[])[], b: readonly number[]): number[] {
  const x = b.map(() => 0);
  for (let i = b.length - 1; i >= 0; i--) {
    let sum = b[i] ?? Number.NaN;
    for (let j = i + 1; j < b.length; j++) sum -= (r[i]?.[j] ?? 0) * (x[j] ?? 0);
    x[i] = sum / (r[i]?.[i] ?? Number.NaN);
  }
  return x;
}

/** Rᵀ v = b. */
function forward(r: readonly (readonly number[])[], b: readonly number[]): number[] {
  const v: number[] = [];
  r.forEach((row, i) => {
    let sum = b[i] ?? Number.NaN;
    for (let j = 0; j < i; j++) sum -= (r[j]?.[i] ?? 0) * (v[j] ?? 0);
    v.push(sum / (row[i] ?? Number.NaN));
  });
  return v;
}
