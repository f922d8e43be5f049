/** Chow's table of Manning's n, the rows for streams and the usual excavated and concrete channels. */

import { QuantityError } from "../units/index.js";
import type { RoughnessRange } from "./resistance-cowan.js";

export type ChowChannel =
  | "clean, straight, full stage"
  | "clean, straight, more stones and weeds"
  | "clean, winding, some pools and shoals"
  | "winding, some weeds and stones"
  | "winding, lower stages, more ineffective slopes and sections"
  | "winding, more stones"
  | "sluggish reaches, weedy, deep pools"
  | "very weedy reaches, deep pools, or floodways with heavy timber"
  | "mountain stream, gravels, cobbles, few boulders"
  | "mountain stream, cobbles with large boulders"
  | "earth, clean, recently completed"
  | "earth, clean, after weathering"
  | "gravel, uniform section, clean"
  | "concrete, trowel finish"
  | "concrete, float finish"
  | "concrete, unfinished";

const row = (min: number, normal: number, max: number): RoughnessRange => ({ min, normal, max });

/** Least, normal and greatest n. Minor streams are less than 100 ft wide at flood stage. [Chow1959] Table 5-6; "very weedy" is from memory. */
export const chowTable: Readonly<Record<ChowChannel, RoughnessRange>> = {
  "clean, straight, full stage": row(0.025, 0.03, 0.033),
  "clean, straight, more stones and weeds": row(0.03, 0.035, 0.04),
  "clean, winding, some pools and shoals": row(0.033, 0.04, 0.045),
  "winding, some weeds and stones": row(0.035, 0.045, 0.05),
  "winding, lower stages, more ineffective slopes and sections": row(0.04, 0.048, 0.055),
  "winding, more stones": row(0.045, 0.05, 0.06),
  "sluggish reaches, weedy, deep pools": row(0.05, 0.07, 0.08),
  "very weedy reaches, deep pools, or floodways with heavy timber": row(0.075, 0.1, 0.15),
  "mountain stream, gravels, cobbles, few boulders": row(0.03, 0.04, 0.05),
  "mountain stream, cobbles with large boulders": row(0.04, 0.05, 0.07),
  "earth, clean, recently completed": row(0.016, 0.018, 0.02),
  "earth, clean, after weathering": row(0.018, 0.022, 0.025),
  "gravel, uniform section, clean": row(0.022, 0.025, 0.03),
  "concrete, trowel finish": row(0.011, 0.013, 0.015),
  "concrete, float finish": row(0.013, 0.015, 0.016),
  "concrete, unfinished": row(0.014, 0.017, 0.02),
};

/** The row of the table. Throws QuantityError for a description that is not in it. [Chow1959]
 *  @example chowRoughness("mountain stream, cobbles with large boulders").normal // => 0.050 */
export function chowRoughness(channel: ChowChannel): RoughnessRange {
  const found: RoughnessRange | undefined = Object.hasOwn(chowTable, channel)
    ? chowTable[channel]
    : undefined;
  if (found === undefined)
    throw new QuantityError("channel", `one of the ${Object.keys(chowTable).length} of the table`, channel);
  return found;
}
