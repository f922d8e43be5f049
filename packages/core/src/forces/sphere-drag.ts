/** Drag of a smooth sphere. */

import { raise } from "../elementary/index.js";
import type { Validity } from "../sources/index.js";

/** Drag coefficient of a smooth sphere: 24/Re (1 + 0.150 Re^0.681) + 0.407/(1 + 8710/Re), Re = w d/ν.
 *  Valid for Re < 2e5 (sphereDragValidity). [BrownLawler2003] eq. 19.
 *  @example sphereDrag(100) // => 1.0731 */
export function sphereDrag(reynolds: number): number {
  return (24 / reynolds) * (1 + 0.15 * raise(reynolds, 0.681)) + 0.407 / (1 + 8710 / reynolds);
}

export const sphereDragValidity: Validity = {
  relation: "BrownLawler2003",
  quantity: "Reynolds number of a sphere",
  min: 0,
  max: 2e5,
};
