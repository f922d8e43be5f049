/** The depth at every place across a section, as strips of equal width over the water. */

import { type Metres, metres, QuantityError, requireWithin } from "../units/index.js";
import { type CrossSection, type PrismaticSection, requireDepth } from "./section.js";
import type { Survey, SurveyedSection } from "./survey.js";
import { wetAt } from "./wet.js";

export interface Strip {
  /** Middle of the strip: of a survey its own station, else the distance from the left edge of the water. */
  readonly station: Metres;
  readonly width: Metres;
  /** Mean of the depths at its two sides. */
  readonly depth: Metres;
}

/** Strips from the left edge of the water to the right one; dry ground and ineffective ends are left out.
 *  Throws QuantityError for a depth that the section does not reach, or fewer than 3 or more than 10 000 strips.
 *  @example stripsAcross(triangularSection(2), metres(1), 4)[1].depth // => 0.75 */
export function stripsAcross(section: CrossSection, depth: Metres, count: number): readonly Strip[] {
  requireDepth(section, depth);
  requireWithin("number of strips", count, 3, 1e4);
  if (!Number.isInteger(count)) throw new QuantityError("number of strips", "whole", count);
  const { from, to, depthAt } =
    section.shape === "surveyed" ? acrossSurvey(section, depth) : acrossPrism(section, depth);
  const width = (to - from) / count;
  const side = (i: number): number => Math.max(0, depthAt(from + ((to - from) * i) / count));
  return Array.from({ length: count }, (_, i) => ({
    station: metres(from + (i + 0.5) * width),
    width: metres(width),
    depth: metres((side(i) + side(i + 1)) / 2),
  })).filter((strip) => strip.depth > 0);
}

interface Across {
  readonly from: number;
  readonly to: number;
  readonly depthAt: (station: number) => number;
}

function acrossPrism(section: PrismaticSection, depth: number): Across {
  const { width } = wetAt(section, depth);
  return { from: 0, to: width, depthAt: prismDepth(section, depth, width) };
}

function prismDepth(section: PrismaticSection, depth: number, width: number): (x: number) => number {
  switch (section.shape) {
    case "rectangular":
      return () => depth;
    case "triangular":
      return (x) => banked(section.leftRun, section.rightRun, depth, width, x);
    case "trapezoidal":
      return (x) => banked(section.leftRun, section.rightRun, depth, width, x);
    case "parabolic":
      return (x) => depth * (1 - ((2 * x) / width - 1) ** 2);
    case "circular": {
      // above its middle a pipe overhangs: the water has the pipe's own depth up to the surface
      const radius = section.diameter / 2;
      return (x) => depth - radius + Math.sqrt(Math.max(0, radius * radius - (x - width / 2) ** 2));
    }
  }
}

function banked(left: number, right: number, depth: number, width: number, x: number): number {
  const fromLeft = left > 0 ? x / left : depth;
  const fromRight = right > 0 ? (width - x) / right : depth;
  return Math.min(depth, fromLeft, fromRight);
}

function acrossSurvey({ survey, lowest }: SurveyedSection, depth: number): Across {
  const surface = lowest + depth;
  const { points } = survey;
  const depthAt = (x: number): number =>
    isEffective(survey, x, surface) ? surface - groundAt(survey, x) : 0;
  const wet = points.slice(1).flatMap((right, i) => edgesOf(points[i]!, right, surface));
  return { from: Math.min(...wet), to: Math.max(...wet), depthAt };
}

/** The ends of the water between two points of the survey. */
function edgesOf(
  left: Survey["points"][number],
  right: Survey["points"][number],
  surface: number,
): readonly number[] {
  const under = [left, right].filter((p) => p.elevation < surface).map((p) => p.station);
  if (under.length !== 1) return under;
  const share = (surface - left.elevation) / (right.elevation - left.elevation);
  return [...under, left.station + share * (right.station - left.station)];
}

function groundAt({ points }: Survey, x: number): number {
  const after = points.findIndex((p) => p.station >= x);
  const right = points[after] ?? points.at(-1)!;
  const left = points[Math.max(0, after - 1)]!;
  const run = right.station - left.station;
  return run > 0
    ? left.elevation + ((x - left.station) / run) * (right.elevation - left.elevation)
    : right.elevation;
}

function isEffective({ ineffective }: Survey, x: number, surface: number): boolean {
  const { left, right } = ineffective ?? {};
  if (left !== undefined && x < left.station && surface <= left.elevation) return false;
  return !(right !== undefined && x > right.station && surface <= right.elevation);
}
