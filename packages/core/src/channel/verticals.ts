/** The depth at every place across a section, as strips of equal width over the water. */

import { type Metres, metres, QuantityError, requirePositive, requireWithin } from "../units/index.js";
import { type CrossSection, type PrismaticSection, requireDepth } from "./section.js";
import type { SurveyedSection } from "./survey.js";
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
  requirePositive("width of the water", to - from, "m");
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

/** A point of the ground, its height above the lowest. */
interface Ground {
  readonly x: number;
  readonly z: number;
}

function acrossSurvey({ survey, lowest }: SurveyedSection, depth: number): Across {
  // heights above the lowest point, as depth is: far from the datum their sums would round
  const ground = survey.points.map(({ station, elevation }) => ({ x: station, z: elevation - lowest }));
  const { left, right } = survey.ineffective ?? {};
  const isDead = (x: number): boolean =>
    (left !== undefined && x < left.station && depth < left.elevation - lowest) ||
    (right !== undefined && x > right.station && depth < right.elevation - lowest);
  const wet = ground.slice(1).flatMap((end, i) => edgesOf(ground[i]!, end, depth));
  return {
    from: Math.min(...wet),
    to: Math.max(...wet),
    depthAt: (x) => (isDead(x) ? 0 : depth - groundAt(ground, x)),
  };
}

/** The ends of the water between two points of the ground. */
function edgesOf(left: Ground, right: Ground, depth: number): readonly number[] {
  const under = [left, right].filter(({ z }) => z < depth).map(({ x }) => x);
  if (under.length !== 1) return under;
  const share = (depth - left.z) / (right.z - left.z);
  return [...under, left.x + share * (right.x - left.x)];
}

function groundAt(ground: readonly Ground[], x: number): number {
  const after = ground.findIndex((p) => p.x >= x);
  const right = ground[after] ?? ground.at(-1)!;
  const left = ground[Math.max(0, after - 1)]!;
  const run = right.x - left.x;
  return run > 0 ? left.z + ((x - left.x) / run) * (right.z - left.z) : right.z;
}
