/** Gauss-Legendre integration of a smooth function with few points. */

const outer = Math.sqrt(5 + 2 * Math.sqrt(10 / 7)) / 3;
const inner = Math.sqrt(5 - 2 * Math.sqrt(10 / 7)) / 3;
const outerWeight = (322 - 13 * Math.sqrt(70)) / 900;
const innerWeight = (322 + 13 * Math.sqrt(70)) / 900;

/** The integral of f with five points: exact for polynomials up to the ninth degree.
 *  @example gaussFive((x) => x ** 9, 0, 1) // => 0.10000000 */
export function gaussFive(f: (x: number) => number, from: number, to: number): number {
  const middle = (from + to) / 2;
  const half = (to - from) / 2;
  const a = f(middle - half * outer) + f(middle + half * outer);
  const b = f(middle - half * inner) + f(middle + half * inner);
  return half * (outerWeight * a + innerWeight * b + (128 / 225) * f(middle));
}

const third = Math.sqrt(0.6);

/** The same with three points: exact up to the fifth degree. @example gaussThree((x) => x ** 5, 0, 1) // => 0.16666667 */
export function gaussThree(f: (x: number) => number, from: number, to: number): number {
  const middle = (from + to) / 2;
  const half = (to - from) / 2;
  return (half / 9) * (5 * (f(middle - half * third) + f(middle + half * third)) + 8 * f(middle));
}
