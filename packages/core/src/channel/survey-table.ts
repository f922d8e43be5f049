/** The tables of a survey: per band of elevation, sums over the strips of ground under the water. */

import { hypot, raise } from "../elementary/index.js";
import type { BandTable, Survey, SurveyPoint } from "./survey.js";

/** Straight ground from one point to the next, inside one zone. Elevations are above the lowest point. */
export interface Strip {
  readonly low: number;
  readonly high: number;
  /** Distance across the stream. */
  readonly across: number;
  readonly zone: number;
  /** Carries nothing before the water stands here. */
  readonly from: number;
}

/** The ground cut where a zone or an ineffective end begins. */
export function groundOf(survey: Survey, lowest: number): readonly Strip[] {
  const { points, zones = [], ineffective, walls } = survey;
  const cuts = [
    ...zones.slice(1).map(({ from }) => from),
    ineffective?.left?.station,
    ineffective?.right?.station,
  ]
    .filter((x) => x !== undefined)
    .sort((a, b) => a - b);
  const strip = (a: Point, b: Point): Strip => {
    // a wall on a boundary belongs to the side of the water, which is its lower side
    const across = b.x - a.x;
    const leans = across > 0 ? 0 : a.z > b.z ? 1 : -1;
    const isBefore = (x: number): boolean => (across > 0 ? b.x <= x : a.x < x || (a.x === x && leans < 0));
    const { left, right } = ineffective ?? {};
    const isLeft = left !== undefined && isBefore(left.station);
    const isRight = right !== undefined && !isBefore(right.station);
    const trigger = isLeft ? left.elevation : isRight ? right.elevation : lowest;
    const zone = zones.slice(1).filter(({ from }) => !isBefore(from)).length;
    return {
      low: Math.min(a.z, b.z),
      high: Math.max(a.z, b.z),
      across,
      zone,
      from: Math.max(0, trigger - lowest),
    };
  };
  const ends = cutPoints(points, cuts, lowest);
  if (walls === "vertical") {
    const [first, last] = [ends[0], ends.at(-1)];
    if (first) ends.unshift({ x: first.x, z: Number.POSITIVE_INFINITY });
    if (last) ends.push({ x: last.x, z: Number.POSITIVE_INFINITY });
  }
  return ends.slice(1).map((end, n) => strip(ends[n] ?? end, end));
}

interface Point {
  readonly x: number;
  readonly z: number;
}

function cutPoints(points: readonly SurveyPoint[], cuts: readonly number[], lowest: number): Point[] {
  return points.flatMap(({ station, elevation }, n) => {
    const end = { x: station, z: elevation - lowest };
    const before = points[n - 1];
    if (before === undefined) return [end];
    const rise = (elevation - before.elevation) / (station - before.station);
    const between = cuts
      .filter((x, k) => x > before.station && x < station && x !== cuts[k - 1])
      .map((x) => ({ x, z: before.elevation - lowest + (x - before.station) * rise }));
    return [...between, end];
  });
}

/** Depths at which the sums change their form: every corner of the ground and every start of an ineffective end. */
export function bandsOf(ground: readonly Strip[], greatestDepth: number): readonly number[] {
  const edges = ground.flatMap(({ low, high, from }) => [low, high, from]);
  return [...new Set(edges)].filter((y) => y < greatestDepth).sort((a, b) => a - b);
}

export function tableOf(ground: readonly Strip[], bands: readonly number[]): BandTable {
  const rows = bands.map((y) => rowOf(ground, y));
  return {
    area: rows.map(({ area }) => area),
    width: rows.map(({ width }) => width),
    widening: rows.map(({ widening }) => widening),
    perimeter: rows.map(({ perimeter }) => perimeter),
    steepening: rows.map(({ steepening }) => steepening),
    moment: rows.map(({ moment }) => moment),
  };
}

/** What is wet at depth y, and how it grows from there. */
function rowOf(ground: readonly Strip[], y: number) {
  const row = { area: 0, width: 0, widening: 0, perimeter: 0, steepening: 0, moment: 0 };
  for (const { low, high, across, from } of ground) {
    if (y < from || y < low) continue;
    if (y >= high) {
      const [shallow, deep] = [y - high, y - low];
      row.area += (across * (shallow + deep)) / 2;
      row.width += across;
      row.perimeter += hypot(across, high - low);
      row.moment += (across * (shallow * shallow + shallow * deep + deep * deep)) / 6;
      continue;
    }
    const run = across / (high - low);
    const deep = y - low;
    const length = hypot(1, run);
    row.area += (run * deep * deep) / 2;
    row.width += run * deep;
    row.widening += run;
    row.perimeter += length * deep;
    row.steepening += length;
    row.moment += (run * raise(deep, 3)) / 6;
  }
  return row;
}
