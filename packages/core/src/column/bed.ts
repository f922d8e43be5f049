/** The bed as a person names it: a Wentworth grade, or a measured stone size. */

import { type Metres, millimetres } from "../units/index.js";

/** Grades of the Wentworth scale, merged to what the eye can tell through water. */
export type BedClass = "silt" | "sand" | "granule" | "pebble" | "cobble" | "boulder";

/** Limits of each grade, m. [Wentworth1922] The scale gives boulders no upper limit; 512 mm (one step of the next doubling) is our assumption. */
export const bedClassLimits: Readonly<Record<BedClass, { readonly min: Metres; readonly max: Metres }>> = {
  silt: { min: millimetres(1 / 256), max: millimetres(1 / 16) },
  sand: { min: millimetres(1 / 16), max: millimetres(2) },
  granule: { min: millimetres(2), max: millimetres(4) },
  pebble: { min: millimetres(4), max: millimetres(64) },
  cobble: { min: millimetres(64), max: millimetres(256) },
  boulder: { min: millimetres(256), max: millimetres(512) },
};
