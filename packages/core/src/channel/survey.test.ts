import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { metres } from "../units/index.js";
import { type SectionGeometry, sectionGeometry, trapezoidalSection } from "./section.js";
import { overbanks, pointsOf, surveyOf } from "./sections.fixture.js";
import { surveyedSection } from "./survey.js";

const close = (a: number, b: number): number => Math.abs(a - b) / Math.max(Math.abs(a), Math.abs(b));
const wet = (section: Parameters<typeof sectionGeometry>[0], depth: number): SectionGeometry =>
  sectionGeometry(section, metres(depth));

test("a survey that samples a trapezoid agrees with it to 1e-12", () => {
  const run = fc.double({ min: 0.01, max: 4, noNaN: true });
  const share = fc.double({ min: 0.01, max: 0.99, noNaN: true });
  fc.assert(
    fc.property(
      fc.record({
        width: run,
        left: run,
        right: run,
        depth: share,
        start: fc.integer({ min: -50, max: 50 }),
      }),
      fc.uniqueArray(fc.integer({ min: 1, max: 99 }), { minLength: 0, maxLength: 25 }),
      ({ width, left, right, depth, start }, shares) => {
        const parts = shares.sort((a, b) => a - b).map((percent) => percent / 100);
        const corners = [start, start + left, start + left + width, start + left + width + right] as const;
        const survey = surveyOf([
          [corners[0], 101],
          ...[...parts].reverse().map((p) => [corners[1] - p * left, 100 + p] as const),
          [corners[1], 100],
          ...parts.map((p) => [corners[1] + p * width, 100] as const),
          [corners[2], 100],
          ...parts.map((p) => [corners[2] + p * right, 100 + p] as const),
          [corners[3], 101],
        ]);
        // the stations carry 15 digits of up to 60 m: what they lose is not the section's
        const lost = (60 * Number.EPSILON) / Math.min(width, left, right);
        const [a, b] = [wet(survey, depth), wet(trapezoidalSection(metres(width), left, right), depth)];
        const tolerance = Math.max(1e-12, 100 * lost);
        expect(close(a.area, b.area)).toBeLessThan(tolerance);
        expect(close(a.wettedPerimeter, b.wettedPerimeter)).toBeLessThan(tolerance);
        expect(close(a.topWidth, b.topWidth)).toBeLessThan(tolerance);
        expect(close(a.firstMoment, b.firstMoment)).toBeLessThan(tolerance);
      },
    ),
    { seed: 32, numRuns: 400 },
  );
});

test("the edge of the water is found between two points", () => {
  const v = surveyOf([
    [0, 4],
    [8, 0],
    [10, 4],
  ]);
  expect(wet(v, 1)).toMatchObject({ area: 1.25, topWidth: 2.5 });
});

test("an island parts the water, and its top rubs once covered", () => {
  const pools = surveyOf([
    [0, 3],
    [0, 0],
    [4, 0],
    [4, 1],
    [6, 1],
    [6, 0],
    [9, 0],
    [9, 3],
  ]);
  expect(wet(pools, 0.5)).toMatchObject({ area: 3.5, topWidth: 7, wettedPerimeter: 9 });
  expect(wet(pools, 2)).toMatchObject({ area: 16, topWidth: 9, wettedPerimeter: 9 + 2 + 2 + 2 });
});

test("an ineffective end carries nothing until its elevation, then all, and never rubs before", () => {
  const pairs = [
    [0, 3],
    [0, 1],
    [5, 1],
    [5, 0],
    [8, 0],
    [8, 3],
  ] as const;
  const end = surveyOf(pairs, { ineffective: { left: { station: metres(5), elevation: metres(2) } } });
  expect(wet(end, 1.5)).toMatchObject({ area: 4.5, topWidth: 3, wettedPerimeter: 1 + 3 + 1.5 });
  expect(wet(end, 2)).toEqual(wet(surveyOf(pairs), 2));
  const other = surveyOf(pairs, { ineffective: { right: { station: metres(5), elevation: metres(2) } } });
  // on the left a shelf one metre up; the wall between belongs to the side of the water
  expect(wet(other, 1.5)).toMatchObject({ area: 2.5, topWidth: 5, wettedPerimeter: 5.5 });
});

test("walls may be asked for above the ends, and a flat bed with them is a rectangle", () => {
  const flat = surveyedSection({
    points: pointsOf([
      [2, 7],
      [5, 7],
    ]),
    walls: "vertical",
  });
  expect(wet(flat, 2)).toMatchObject({ area: 6, topWidth: 3, wettedPerimeter: 7, firstMoment: 6 });
});

test("zones share out the whole", () => {
  for (const band of overbanks.bands.keys()) {
    for (const key of ["area", "width", "perimeter", "moment", "widening", "steepening"] as const) {
      const sum = overbanks.zones.reduce((total, { table }) => total + (table[key][band] ?? Number.NaN), 0);
      expect(Math.abs(sum - (overbanks.whole[key][band] ?? Number.NaN))).toBeLessThan(1e-12);
    }
  }
});

describe("a survey that is none is refused by its point", () => {
  const bowl = [
    [0, 2],
    [2, 0],
    [4, 2],
  ] as const;
  const zone = (from: number, manning = 0.03) => ({ from: metres(from), manning });
  test.each([
    [() => surveyOf([]), "survey must be of at least 2 points, got 0"],
    [() => surveyOf([[0, 1]]), "survey must be of at least 2 points, got 1"],
    [
      () => surveyOf([...bowl, [3, 3]]),
      "station of point 4 must be at least 4 m, that of the point before, got 3",
    ],
    [() => surveyOf([...bowl, [4, 2]]), "point 4 must be another than the point before, got 4 m, 2 m"],
    [
      () => surveyOf([...bowl, [4, 5], [4, 3]]),
      "point 5 must be further along its wall, which crosses itself, got 3 m",
    ],
    [
      () =>
        surveyOf([
          [0, 2],
          [2, 0],
        ]),
      "elevation of point 2 must be above 0 m, the lowest, as it ends the survey and no walls are given, got 0",
    ],
    [
      () =>
        surveyOf([
          [0, 0],
          [2, 0],
        ]),
      "elevation of point 1 must be above 0 m",
    ],
    [
      () => surveyOf(bowl, { zones: [zone(1)] }),
      "station of zone 1 must be at most 0 m, the first point, got 1",
    ],
    [() => surveyOf(bowl, { zones: [zone(0, 0)] }), "Manning n of zone 1 must be above 0, got 0"],
    [() => surveyOf(bowl, { zones: [zone(0), zone(4)] }), "station of zone 2 must be beyond"],
    [() => surveyOf(bowl, { zones: [zone(0), zone(2), zone(1)] }), "station of zone 3 must be beyond"],
    [
      () =>
        surveyOf(bowl, {
          ineffective: {
            left: { station: metres(3), elevation: metres(1) },
            right: { station: metres(1), elevation: metres(1) },
          },
        }),
      "stations of the ineffective ends must be in order between 0 and 4 m, got 3 m and 1 m",
    ],
  ])("%s", (make, message) => {
    expect(make).toThrow(message);
  });

  test("and a depth above it by its end", () => {
    expect(() => wet(surveyOf(bowl), 2.5)).toThrow(
      "depth must be at most 2 m, the lower end of the survey, got 2.5",
    );
  });
});
