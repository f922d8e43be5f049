/** What a survey must be, each breach told by the point or the zone. */

import { QuantityError, requirePositive } from "../units/index.js";
import type { Survey } from "./survey.js";

export function checkPoints({ points, walls }: Survey): void {
  if (points.length < 2) throw new QuantityError("survey", "of at least 2 points", points.length);
  points.forEach(({ station, elevation }, n) => {
    const before = points[n - 1];
    if (before === undefined) return;
    const rise = elevation - before.elevation;
    if (rise !== 0 && !Number.isFinite((station - before.station) / rise)) {
      throw new QuantityError(`rise to point ${n + 1}`, "0, or large enough to be divided by", rise);
    }
    if (station > before.station) return;
    if (station < before.station) {
      throw new QuantityError(
        `station of point ${n + 1}`,
        `at least ${before.station} m, that of the point before`,
        station,
      );
    }
    if (elevation === before.elevation) {
      throw new QuantityError(
        `point ${n + 1}`,
        "another than the point before",
        `${station} m, ${elevation} m`,
      );
    }
    const first = points[n - 2];
    if (first?.station === station && first.elevation > before.elevation !== before.elevation > elevation) {
      throw new QuantityError(
        `point ${n + 1}`,
        "further along its wall, which crosses itself",
        `${elevation} m`,
      );
    }
  });
  if (walls === "vertical") return;
  const lowest = Math.min(...points.map(({ elevation }) => elevation));
  for (const n of [0, points.length - 1]) {
    const elevation = points[n]?.elevation ?? lowest;
    if (elevation > lowest) continue;
    throw new QuantityError(
      `elevation of point ${n + 1}`,
      `above ${lowest} m, the lowest, as it ends the survey and no walls are given`,
      elevation,
    );
  }
}

/** The elevation of the lower end: water above it would leave the survey. */
export function endsOf({ points }: Survey): number {
  return Math.min(...[points[0], points.at(-1)].map((end) => end?.elevation ?? Number.NaN));
}

export function checkZones({ points, zones = [], ineffective }: Survey): void {
  const first = points[0]?.station ?? Number.NaN;
  const last = points.at(-1)?.station ?? Number.NaN;
  zones.forEach(({ from, manning }, n) => {
    requirePositive(`Manning n of zone ${n + 1}`, manning);
    const before = zones[n - 1];
    if (before === undefined) {
      if (from > first)
        throw new QuantityError("station of zone 1", `at most ${first} m, the first point`, from);
    } else if (!(from > Math.max(before.from, first) && from < last)) {
      throw new QuantityError(
        `station of zone ${n + 1}`,
        `beyond that of the zone before and between ${first} and ${last} m`,
        from,
      );
    }
  });
  const left = ineffective?.left?.station ?? first;
  const right = ineffective?.right?.station ?? last;
  if (!(left >= first && left < right && right <= last)) {
    throw new QuantityError(
      "stations of the ineffective ends",
      `in order between ${first} and ${last} m`,
      `${left} m and ${right} m`,
    );
  }
}
