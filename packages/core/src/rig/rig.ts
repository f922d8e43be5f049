/** A float, and below it any number of sections: a line and the sinker at its lower end, from the top down. */

import type { Float, Line, Sinker } from "../forces/index.js";
import { requirePositive, requireWithin } from "../units/index.js";

/** A split shot on the tippet or a second nymph is just another section. */
export interface Section {
  readonly line: Line;
  readonly sinker: Sinker;
}

export interface Rig {
  readonly float: Float;
  /** From the float down, at least one. */
  readonly sections: readonly Section[];
}

/** The most sections a rig may have. */
export const maxSections = 10;

/** A rig; throws QuantityError when it has no section, or more than ten. */
export function rig(float: Float, ...sections: readonly Section[]): Rig {
  requireWithin("sections of the rig", sections.length, 1, maxSections);
  return { float, sections };
}

/** Length of all lines, m. */
export function lineLength(sections: readonly Section[]): number {
  let total = 0;
  for (const section of sections) total += section.line.length;
  requirePositive("length of all lines", total, "m");
  return total;
}
