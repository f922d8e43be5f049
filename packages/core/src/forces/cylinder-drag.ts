/** Drag of a smooth circular cylinder across the stream. */

import { fixedPower } from "../numerics/index.js";
import type { Validity } from "../sources/index.js";

const toMinus089 = fixedPower(-0.89);

/** Drag coefficient of a cylinder in cross flow: 1.18 + 6.8/Re^0.89 + 1.96/√Re − 4e-4 Re/(1 + 3.64e-7 Re²), Re = w d/ν.
 *  Valid for 1e-4 < Re < 2e5 (cylinderDragValidity). [SuckerBrauer1975].
 *  @example cylinderDrag(100) // => 1.4490 */
export function cylinderDrag(reynolds: number): number {
  return (
    1.18 +
    6.8 * toMinus089(reynolds) +
    1.96 / Math.sqrt(reynolds) -
    (4e-4 * reynolds) / (1 + 3.64e-7 * reynolds * reynolds)
  );
}

export const cylinderDragValidity: Validity = {
  relation: "SuckerBrauer1975",
  quantity: "Reynolds number of a cylinder",
  min: 1e-4,
  max: 2e5,
};
