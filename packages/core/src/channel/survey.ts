/** A surveyed section: what lies under the surface between levelled points, compiled once into bands of elevation. */

import { type Metres, metres, requirePositive } from "../units/index.js";
import { checkPoints, checkZones, endsOf } from "./survey-check.js";
import { bandsOf, groundOf, tableOf } from "./survey-table.js";
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

/** Ground beyond `station` carries nothing until the water reaches `elevation`; from there on it does, by a step. */
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

/** A range of depths over which a section is smooth. `band` names the row of the tables of a survey. */
export interface Piece {
  readonly band: number;
  readonly low: number;
  readonly high: number;
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
  readonly pieces: readonly Piece[];
  readonly whole: BandTable;
  /** One table per zone of roughness, in order. */
  readonly zones: readonly { readonly manning: number; readonly table: BandTable }[];
}

/** Compiles a survey. The ground runs straight from point to point, so the water's edge lies between two of them by interpolation, and
 *  every pool below the surface is filled: an island parts the water, its top is wet once covered. Between zones and at ineffective ends
 *  no perimeter is added: water does not rub there.
 *  Throws QuantityError naming the point: stations that go back, a point repeated, a wall that folds onto itself, fewer than two points,
 *  an end no higher than the lowest point (without walls); for zones out of order or beyond the points,
 *  and for ineffective ends that leave nothing to carry water.
 *  @example surveyedSection({ points: [[0, 2], [2, 0], [5, 0], [7, 2]].map(([x, z]) => ({ station: metres(x), elevation: metres(z) })) }).greatestDepth // => 2 */
export function surveyedSection(survey: Survey): SurveyedSection {
  checkPoints(survey);
  checkZones(survey);
  const lowest = Math.min(...survey.points.map(({ elevation }) => elevation));
  const ground = groundOf(survey, lowest);
  const greatestDepth = survey.walls === "vertical" ? Number.POSITIVE_INFINITY : endsOf(survey) - lowest;
  const bands = bandsOf(ground, greatestDepth);
  const whole = tableOf(ground, bands);
  const top = bands.length - 1;
  const above = Math.min(1, greatestDepth - bands[top]!);
  requirePositive("area that carries water", tableWet(whole, top, above).area, "m²");
  const zones = (survey.zones ?? []).map(({ manning }, zone) => ({
    manning,
    table: tableOf(
      ground.filter((strip) => strip.zone === zone),
      bands,
    ),
  }));
  return {
    shape: "surveyed",
    survey,
    lowest: metres(lowest),
    greatestDepth,
    bands,
    pieces: bands.map((low, band) => ({ band, low, high: bands[band + 1] ?? greatestDepth })),
    whole,
    zones,
  };
}

/** The band a depth lies in; at the edge of two, the upper. */
export function bandAt(section: SurveyedSection, depth: number): number {
  const { bands } = section;
  let low = 0;
  let high = bands.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (bands[middle]! <= depth) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** What is wet at a depth. No check. */
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
