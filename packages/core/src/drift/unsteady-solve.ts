/** A chain of 3 × 3 symmetric blocks solved in one sweep: block LDLᵀ, without allocation. */

/** Equations D_i x_i + B_i x_(i+1) + B_(i−1) x_(i−1) = b_i with symmetric blocks stored xx, xy, xz, yy, yz, zz.
 *  `diagonal` is destroyed, `right` becomes the answer. The whole must be positive definite. */
export interface BlockChain {
  readonly diagonal: Float64Array;
  readonly coupling: Float64Array;
  readonly right: Float64Array;
  /** Ties nodes i and i + 1 by the block base·1 + more·d dᵀ, d a unit vector. */
  readonly couple: (i: number, base: number, more: number, dx: number, dy: number, dz: number) => void;
  readonly solve: () => void;
}

export function blockChain(nodes: number): BlockChain {
  const diagonal = new Float64Array(6 * nodes);
  const coupling = new Float64Array(6 * nodes);
  const right = new Float64Array(3 * nodes);
  const product = new Float64Array(9);
  const couple = (i: number, base: number, more: number, dx: number, dy: number, dz: number): void => {
    const o = 6 * i;
    coupling[o] = -base - more * dx * dx;
    coupling[o + 1] = -more * dx * dy;
    coupling[o + 2] = -more * dx * dz;
    coupling[o + 3] = -base - more * dy * dy;
    coupling[o + 4] = -more * dy * dz;
    coupling[o + 5] = -base - more * dz * dz;
    for (let k = o; k < o + 6; k++) {
      diagonal[k]! -= coupling[k]!;
      diagonal[k + 6]! -= coupling[k]!;
    }
  };
  const solve = (): void => {
    for (let i = 0; i < nodes; i++) {
      factor(diagonal, 6 * i);
      if (i + 1 < nodes) eliminate(diagonal, coupling, right, i, product);
    }
    for (let i = nodes - 1; i >= 0; i--) {
      if (i + 1 < nodes) subtract(coupling, 6 * i, right, 3 * i + 3, 3 * i);
      divide(diagonal, 6 * i, right, 3 * i);
    }
  };
  return { diagonal, coupling, right, couple, solve };
}

/** LDLᵀ in place: 1/d1, l21, l31, 1/d2, l32, 1/d3. */
function factor(m: Float64Array, o: number): void {
  const a = 1 / m[o]!;
  const l21 = m[o + 1]! * a;
  const l31 = m[o + 2]! * a;
  const b = 1 / (m[o + 3]! - l21 * m[o + 1]!);
  const l32 = (m[o + 4]! - l21 * m[o + 2]!) * b;
  const c = 1 / (m[o + 5]! - l31 * m[o + 2]! - l32 * (m[o + 4]! - l21 * m[o + 2]!));
  m[o] = a;
  m[o + 1] = l21;
  m[o + 2] = l31;
  m[o + 3] = b;
  m[o + 4] = l32;
  m[o + 5] = c;
}

/** x ← M⁻¹ x with a factored block. */
function divide(m: Float64Array, o: number, x: Float64Array, p: number): void {
  const y1 = x[p]!;
  const y2 = x[p + 1]! - m[o + 1]! * y1;
  const y3 = x[p + 2]! - m[o + 2]! * y1 - m[o + 4]! * y2;
  const x3 = y3 * m[o + 5]!;
  const x2 = y2 * m[o + 3]! - m[o + 4]! * x3;
  x[p] = y1 * m[o]! - m[o + 1]! * x2 - m[o + 2]! * x3;
  x[p + 1] = x2;
  x[p + 2] = x3;
}

/** x_to ← x_to − B x_from. */
function subtract(b: Float64Array, o: number, x: Float64Array, from: number, to: number): void {
  const p = x[from]!;
  const q = x[from + 1]!;
  const r = x[from + 2]!;
  x[to]! -= b[o]! * p + b[o + 1]! * q + b[o + 2]! * r;
  x[to + 1]! -= b[o + 1]! * p + b[o + 3]! * q + b[o + 4]! * r;
  x[to + 2]! -= b[o + 2]! * p + b[o + 4]! * q + b[o + 5]! * r;
}

/** Takes node i out of the equation of node i + 1: D ← D − B D_i⁻¹ B, b ← b − B D_i⁻¹ b_i. */
function eliminate(
  diagonal: Float64Array,
  coupling: Float64Array,
  right: Float64Array,
  i: number,
  y: Float64Array,
): void {
  const o = 6 * i;
  const b0 = coupling[o]!;
  const b1 = coupling[o + 1]!;
  const b2 = coupling[o + 2]!;
  const b3 = coupling[o + 3]!;
  const b4 = coupling[o + 4]!;
  const b5 = coupling[o + 5]!;
  // a slack link couples nothing
  if (b0 === 0 && b3 === 0 && b5 === 0) return;
  y[0] = b0;
  y[1] = b1;
  y[2] = b2;
  y[3] = b1;
  y[4] = b3;
  y[5] = b4;
  y[6] = b2;
  y[7] = b4;
  y[8] = b5;
  divide(diagonal, o, y, 0);
  divide(diagonal, o, y, 3);
  divide(diagonal, o, y, 6);
  const d = o + 6;
  diagonal[d]! -= b0 * y[0] + b1 * y[1] + b2 * y[2];
  diagonal[d + 1]! -= b0 * y[3] + b1 * y[4] + b2 * y[5];
  diagonal[d + 2]! -= b0 * y[6] + b1 * y[7] + b2 * y[8];
  diagonal[d + 3]! -= b1 * y[3] + b3 * y[4] + b4 * y[5];
  diagonal[d + 4]! -= b1 * y[6] + b3 * y[7] + b4 * y[8];
  diagonal[d + 5]! -= b2 * y[6] + b4 * y[7] + b5 * y[8];
  const p = 3 * i;
  const r0 = right[p]!;
  const r1 = right[p + 1]!;
  const r2 = right[p + 2]!;
  right[p + 3]! -= y[0] * r0 + y[1] * r1 + y[2] * r2;
  right[p + 4]! -= y[3] * r0 + y[4] * r1 + y[5] * r2;
  right[p + 5]! -= y[6] * r0 + y[7] * r1 + y[8] * r2;
}
