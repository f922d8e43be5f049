/** A surveyed section: what lies under the surface between levelled points, compiled once into bands of elevation. */

import { type Metres, metres, QuantityError } from "../units/index.js";
import type { Wet } from "./wet.js";

/** A point of the ground. Stations run across the stream, from the left bank. */
export interface SurveyPoint {
  readonly station: Metres;
  readonly elevation: Metres;
}

/** From its station (the first zone: from the left end) to the next zone's, the bed has this Manning n. */
export interface RoughnessZone {
  readonly from: Metres;
  readonly manning: number;
}

/** Ground beyond `station` carries nothing until the water stands above `elevation`. */
export interface IneffectiveEnd {
  readonly station: Metres;
  readonly elevation: Metres;
}

export interface Survey {
  readonly points: readonly SurveyPoint[];
  /** Left bank, channel, right bank, and more; none for a section of one roughness. */
  readonly zones?: readonly RoughnessZone[];
  readonly ineffective?: { readonly left?: IneffectiveEnd; readonly right?: IneffectiveEnd };
  /** Above the ends of the survey: nothing is known (`none`, the default), or vertical walls stand there. */
  readonly walls?: "none" | "vertical";
}

/** Per band of elevation what is wet at its bottom, and how that grows with the height t above it:
 *  A = A0 + B0 t + w t²/2, B = B0 + w t, P = P0 + s t. */
export interface BandTable {
  readonly area: readonly number[];
  readonly width: readonly number[];
  readonly widening: readonly number[];
  readonly perimeter: readonly number[];
  readonly steepening: readonly number[];
  readonly moment: readonly number[];
}

/** Made by `surveyedSection`: the survey with its tables. */
export interface SurveyedSection {
  readonly shape: "surveyed";
  readonly survey: Survey;
  /** Elevation of the lowest point: depth is measured from it. */
  readonly lowest: Metres;
  readonly greatestDepth: number;
  /** Depth at the bottom of each band. */
  readonly bands: readonly number[];
  readonly whole: BandTable;
  /** One table per zone of roughness, in order. */
  readonly zones: readonly { readonly manning: number; readonly table: BandTable }[];
}

export function surveyedSection(_survey: Survey): SurveyedSection {
  throw new QuantityError("survey", "compiled", metres(0));
}

export function bandAt(section: SurveyedSection, depth: number): number {
  const { bands } = section;
  let low = 0;
  let high = bands.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (bands[middle]! <= depth) low = middle;
    else high = middle;
  }
  return low;
}

export function surveyWetAt(section: SurveyedSection, depth: number): Wet {
  const band = bandAt(section, depth);
  return tableWet(section.whole, band, depth - section.bands[band]!);
}

/** What a table says is wet, at a height above the bottom of a band. */
export function tableWet(table: BandTable, band: number, t: number): Wet {
  const area = table.area[band]!;
  const width = table.width[band]!;
  const widening = table.widening[band]!;
  const steepening = table.steepening[band]!;
  return {
    area: area + (width + 0.5 * widening * t) * t,
    perimeter: table.perimeter[band]! + steepening * t,
    width: width + widening * t,
    moment: table.moment[band]! + (area + (0.5 * width + (widening * t) / 6) * t) * t,
    widening,
    steepening,
  };
}
