/** What a section carries at a depth and a slope, in plain numbers: one roughness, or a roughness for each zone. */

import { QuantityError, requirePositive } from "../units/index.js";
import { zonedConveyance } from "./composite.js";
import { type CompositeMethod, type Friction, manningFactor, type SpeedLaw, speedLaw } from "./friction.js";
import type { CrossSection } from "./section.js";
import { bandAt, type SurveyedSection, tableWet } from "./survey.js";
import { type Wet, wetAt } from "./wet.js";

/** SI. `band` names the row of the tables of a survey: at its ends two rows meet, and may differ. */
export interface Carrying {
  readonly bandOf: (depth: number) => number;
  readonly discharge: (band: number, depth: number, slope: number) => number;
  /** d ln Q/d y at a slope. */
  readonly rise: (band: number, depth: number, slope: number) => number;
  readonly dischargeAt: (depth: number, slope: number) => number;
  readonly slopeAt: (depth: number, discharge: number) => number;
}

/** Throws QuantityError for a roughness not above 0, or zones where there are none. */
export function carrying(section: CrossSection, friction: Friction, gravity: number): Carrying {
  if (friction.law !== "manning-zones") return whole(section, speedLaw(friction, gravity));
  if (section.shape !== "surveyed" || section.zones.length === 0) {
    throw new QuantityError("section", "surveyed, with zones of roughness", section.shape);
  }
  return byZones(section, friction.method, manningFactor(friction.units));
}

/** What is wet in a band at a depth. */
export function wetInBand(section: CrossSection, band: number, depth: number): Wet {
  if (section.shape !== "surveyed") return wetAt(section, depth);
  return tableWet(section.whole, band, depth - section.bands[band]!);
}

const bandOf =
  (section: CrossSection) =>
  (depth: number): number =>
    section.shape === "surveyed" ? bandAt(section, depth) : 0;

function whole(section: CrossSection, law: SpeedLaw): Carrying {
  const band = bandOf(section);
  const discharge: Carrying["discharge"] = (row, y, slope) => {
    const { area, perimeter } = wetInBand(section, row, y);
    // no speed where the bed is rougher than the water is deep: the law has nothing to say there
    return area > 0 ? Math.max(0, area * law.speed(area / perimeter, slope)) : 0;
  };
  return {
    bandOf: band,
    discharge,
    rise: (row, y, slope) => {
      const { area, width, perimeter, steepening } = wetInBand(section, row, y);
      if (area === 0) return Number.POSITIVE_INFINITY;
      const perArea = width / area;
      return perArea + law.exponent(area / perimeter, slope) * (perArea - steepening / perimeter);
    },
    dischargeAt: (y, slope) => {
      requirePositive("slope", slope);
      const carried = discharge(band(y), y, slope);
      requirePositive(
        "speed by the law of friction: hydraulic radius too small for the roughness, it",
        carried,
        "m/s",
      );
      return carried;
    },
    slopeAt: (y, carried) => {
      // still water rubs on nothing
      if (carried === 0) return 0;
      const { area, perimeter } = wetAt(section, y);
      return law.slope(area / perimeter, Math.abs(carried) / area);
    },
  };
}

function byZones(section: SurveyedSection, method: CompositeMethod, factor: number): Carrying {
  const band = bandOf(section);
  const at = (row: number, y: number): number => factor * zonedConveyance(section, row, y, method).value;
  return {
    bandOf: band,
    discharge: (row, y, slope) => at(row, y) * Math.sqrt(slope),
    rise: (row, y) => zonedConveyance(section, row, y, method).rise,
    dischargeAt: (y, slope) => {
      requirePositive("slope", slope);
      return at(band(y), y) * Math.sqrt(slope);
    },
    slopeAt: (y, carried) => (carried / at(band(y), y)) ** 2,
  };
}
