import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cubicMetresPerSecond, metres } from "../units/index.js";
import {
  type CrossSection,
  circularSection,
  lateralFlow,
  parabolicSection,
  rectangularSection,
  sectionGeometry,
  stripsAcross,
  surveyedSection,
  trapezoidalSection,
  triangularSection,
} from "./index.js";

const relative = (value: number, expected: number): number => Math.abs(value / expected - 1);
const manning = { law: "manning", n: 0.035 } as const;
const survey = surveyedSection({
  points: [
    [0, 3],
    [4, 1],
    [7, 0.9],
    [9, 0],
    [14, 0.2],
    [18, 3],
  ].map(([station, elevation]) => ({ station: metres(station!), elevation: metres(elevation!) })),
});
const sections: readonly (readonly [string, CrossSection])[] = [
  ["rectangle", rectangularSection(metres(6))],
  ["trapezoid", trapezoidalSection(metres(3), 2, 1)],
  ["triangle", triangularSection(3, 1)],
  ["parabola", parabolicSection(metres(8), metres(1.5))],
  ["pipe under half full", circularSection(metres(4))],
  ["survey", survey],
];

describe.each(sections)("strips across a %s", (_, section) => {
  test("have its width and come to its area as they get narrower", () => {
    const { area, topWidth } = sectionGeometry(section, metres(1.2));
    const miss = (count: number): number => {
      const strips = stripsAcross(section, metres(1.2), count);
      expect(
        relative(
          strips.reduce((sum, s) => sum + s.width, 0),
          topWidth,
        ),
      ).toBeLessThan(1e-9);
      return relative(
        strips.reduce((sum, s) => sum + s.width * s.depth, 0),
        area,
      );
    };
    expect(miss(400)).toBeLessThan(1e-3);
    expect(miss(400)).toBeLessThanOrEqual(miss(40) + 1e-12);
  });

  test("carry the discharge that was asked for, fastest where deepest", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 4, noNaN: true }), (q) => {
        const flow = lateralFlow({ section, friction: manning, slope: 0.002 }, cubicMetresPerSecond(q));
        if (flow.kind !== "found") throw new TypeError(flow.kind);
        expect(
          relative(
            flow.lanes.reduce((sum, lane) => sum + lane.discharge, 0),
            q,
          ),
        ).toBeLessThan(1e-12);
        const byDepth = flow.lanes.toSorted((a, b) => a.depth - b.depth).map((lane) => lane.meanSpeed);
        byDepth.slice(1).forEach((u, i) => {
          expect(u).toBeGreaterThanOrEqual(byDepth[i]! * (1 - 1e-9));
        });
      }),
      { seed: 1, numRuns: 30 },
    );
  });
});

test("in a very wide rectangle every lane has the speed of uniform flow, without correction", () => {
  const flow = lateralFlow(
    { section: rectangularSection(metres(1e6)), friction: manning, slope: 0.002 },
    cubicMetresPerSecond(1e6),
  );
  if (flow.kind !== "found") throw new TypeError(flow.kind);
  expect(Math.abs(flow.correction - 1)).toBeLessThan(1e-5);
});

test("ground behind a bar that is not overtopped carries nothing, and a rougher zone is slower", () => {
  const points = survey.survey.points;
  const dry = surveyedSection({
    points,
    ineffective: { left: { station: metres(7), elevation: metres(2) } },
  });
  expect(stripsAcross(dry, metres(1.5), 60).every((s) => s.station > 6.5)).toBe(true);
  expect(stripsAcross(dry, metres(2.5), 60).some((s) => s.station < 6.5)).toBe(true);
  const zoned = surveyedSection({
    points,
    zones: [
      { from: metres(0), manning: 0.03 },
      { from: metres(11.5), manning: 0.09 },
    ],
  });
  const friction = { law: "manning-zones", method: "divided" } as const;
  const flow = lateralFlow({ section: zoned, friction, slope: 0.002 }, cubicMetresPerSecond(6));
  if (flow.kind !== "found") throw new TypeError(flow.kind);
  const at = (x: number) =>
    flow.lanes.reduce((a, b) => (Math.abs(b.station - x) < Math.abs(a.station - x) ? b : a));
  // of nearly one depth, either side of the border
  const [smooth, rough] = [at(10.5), at(12.5)];
  const power = (rough.depth / smooth.depth) ** (2 / 3);
  expect(relative(rough.meanSpeed / smooth.meanSpeed, power / 3)).toBeLessThan(1e-9);
});

test("a level bed has no lanes, and impossible strips are named", () => {
  const section = rectangularSection(metres(6));
  expect(lateralFlow({ section, friction: manning, slope: 0 }, cubicMetresPerSecond(1))).toEqual({
    kind: "no-slope",
  });
  expect(() => stripsAcross(section, metres(1), 2)).toThrow("number of strips");
  expect(() => stripsAcross(section, metres(1), 4.5)).toThrow("number of strips");
  expect(() => stripsAcross(section, metres(0), 10)).toThrow("depth");
});
