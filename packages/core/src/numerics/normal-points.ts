/** Points spread like a standard normal, evenly rather than at random: the same seed gives the same points. */

import { cos, ln1p, raise, sin } from "../elementary/index.js";

/** Points of `dimension` coordinates, by number from 0: an additive recurrence with the powers of the root of x^(d+1) = x + 1, shifted by the seed,
 *  turned into normals two by two (Box and Muller). Means over n of them err like 1/n for smooth functions, where random points err like 1/√n.
 *  @example normalPoints({ dimension: 2, seed: 1 })(0).length // => 2 */
export function normalPoints({
  dimension,
  seed,
}: {
  readonly dimension: number;
  readonly seed: number;
}): (index: number) => readonly number[] {
  const pairs = Math.ceil(dimension / 2);
  const uniforms = 2 * pairs;
  const root = recurrenceRoot(uniforms);
  const steps = Array.from({ length: uniforms }, (_, j) => raise(root, -(j + 1)));
  const shifts = shiftsOf(seed, uniforms);
  return (index) => {
    const at = (j: number): number => (shifts[j]! + (index + 1) * steps[j]!) % 1;
    const point: number[] = [];
    for (let pair = 0; pair < pairs; pair++) {
      const radius = Math.sqrt(-2 * ln1p(-at(2 * pair)));
      const angle = 2 * Math.PI * at(2 * pair + 1);
      point.push(radius * cos(angle), radius * sin(angle));
    }
    return point.slice(0, dimension);
  };
}

/** The root above 1 of x^(d+1) = x + 1. */
function recurrenceRoot(d: number): number {
  let x = 2;
  for (let i = 0; i < 60; i++) x = raise(1 + x, 1 / (d + 1));
  return x;
}

/** Numbers in [0, 1) from a seed: a 32-bit mixer, multiplied and shifted. */
function shiftsOf(seed: number, count: number): readonly number[] {
  let state = seed | 0;
  return Array.from({ length: count }, () => {
    state = (state + 0x9e3779b9) | 0;
    let word = Math.imul(state ^ (state >>> 16), 0x85ebca6b);
    word = Math.imul(word ^ (word >>> 13), 0xc2b2ae35);
    return ((word ^ (word >>> 16)) >>> 0) / raise(2, 32);
  });
}
