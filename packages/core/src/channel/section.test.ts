import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { metres } from "../units/index.js";
import {
  circularSection,
  parabolicSection,
  rectangularSection,
  type SectionGeometry,
  sectionGeometry,
  trapezoidalSection,
  triangularSection,
} from "./section.js";
import { kinds, sectionOf } from "./sections.fixture.js";
import { greatestDepth } from "./wet.js";

const runs = { seed: 31, numRuns: 300 };
const unit = fc.double({ min: 0, max: 1, noNaN: true });
const six = fc.array(unit, { minLength: 6, maxLength: 6 });
const close = (a: number, b: number): number => Math.abs(a - b) / Math.max(Math.abs(a), Math.abs(b), 1e-9);

describe.each(kinds)("a %s section", (shape) => {
  test("has the derivatives that its values have", () => {
    fc.assert(
      fc.property(six, fc.double({ min: 0.05, max: 0.9, noNaN: true }), (numbers, part) => {
        const section = sectionOf(shape, numbers);
        const depth = part * Math.min(greatestDepth(section), 3);
        const h = 1e-6 * depth;
        const at = (y: number): SectionGeometry => sectionGeometry(section, metres(y));
        const [low, here, high] = [at(depth - h), at(depth), at(depth + h)];
        // where the ground has a corner within the step there is no one derivative
        const { perDepth } = here;
        fc.pre(
          low.perDepth.wettedPerimeter === high.perDepth.wettedPerimeter ||
            shape === "circular" ||
            shape === "parabolic",
        );
        fc.pre(shape !== "surveyed" || Math.abs(high.wettedPerimeter - low.wettedPerimeter) < 1e-3);
        const slope = (of: (g: SectionGeometry) => number): number => (of(high) - of(low)) / (2 * h);
        expect(
          close(
            perDepth.area,
            slope((g) => g.area),
          ),
        ).toBeLessThan(1e-6);
        expect(
          close(
            perDepth.firstMoment,
            slope((g) => g.firstMoment),
          ),
        ).toBeLessThan(1e-6);
        expect(
          close(
            perDepth.wettedPerimeter,
            slope((g) => g.wettedPerimeter),
          ),
        ).toBeLessThan(1e-6);
        expect(Math.abs(perDepth.topWidth - slope((g) => g.topWidth))).toBeLessThan(
          1e-6 * (1 + Math.abs(perDepth.topWidth)),
        );
        expect(Math.abs(perDepth.hydraulicRadius - slope((g) => g.hydraulicRadius))).toBeLessThan(1e-6);
        expect(Math.abs(perDepth.hydraulicDepth - slope((g) => g.hydraulicDepth))).toBeLessThan(
          1e-5 * (1 + Math.abs(perDepth.hydraulicDepth)),
        );
      }),
      runs,
    );
  });

  test("has the radius and depth of its area", () => {
    fc.assert(
      fc.property(six, (numbers) => {
        const g = sectionGeometry(sectionOf(shape, numbers), metres(0.09));
        expect(g.hydraulicRadius).toBe(g.area / g.wettedPerimeter);
        expect(g.hydraulicDepth).toBe(g.area / g.topWidth);
        // the centroid lies between the surface and the bed
        expect(g.firstMoment).toBeGreaterThan(0);
        expect(g.firstMoment).toBeLessThan(g.area * g.depth);
      }),
      runs,
    );
  });
});

// Exact: half of a circle; a centroid at 2 d/(3 π) below the surface.
test("half a pipe is half a circle", () => {
  const half = sectionGeometry(circularSection(metres(2)), metres(1));
  expect(close(half.area, Math.PI / 2)).toBeLessThan(1e-15);
  expect(close(half.wettedPerimeter, Math.PI)).toBeLessThan(1e-15);
  expect(close(half.topWidth, 2)).toBeLessThan(1e-15);
  expect(close(half.firstMoment, 2 / 3)).toBeLessThan(1e-15);
});

// Near its bottom a circle is the parabola y = x²/d: A = (4/3) √d y^1.5, Aȳ = (8/15) √d y^2.5, each to a part y/d.
test.each([1e-4, 1e-6, 1e-9])("a pipe filled to %d of itself loses no digits", (part) => {
  const g = sectionGeometry(circularSection(metres(1)), metres(part));
  expect(close(g.area, (4 / 3) * part ** 1.5)).toBeLessThan(part);
  expect(close(g.firstMoment, (8 / 15) * part ** 2.5)).toBeLessThan(part);
});

test("the series of a pipe meet the closed forms", () => {
  const pipe = circularSection(metres(1));
  // s = 0.5 where they meet
  const joint = Math.sin(0.25) ** 2;
  const [below, above] = [joint - 1e-12, joint + 1e-12].map((y) => sectionGeometry(pipe, metres(y)));
  expect(close(below?.area ?? 0, above?.area ?? 1)).toBeLessThan(1e-10);
  expect(close(below?.firstMoment ?? 0, above?.firstMoment ?? 1)).toBeLessThan(1e-9);
});

// The length of the arc summed over ten thousand chords.
test("a parabola is as long as its chords", () => {
  const g = sectionGeometry(parabolicSection(metres(6), metres(2)), metres(1.3));
  const half = g.topWidth / 2;
  let length = 0;
  const steps = 10_000;
  const bed = (x: number): number => (2 * x * x) / 9;
  for (let i = 0; i < steps; i++) {
    const [a, b] = [(half * i) / steps, (half * (i + 1)) / steps];
    length += Math.hypot(b - a, bed(b) - bed(a));
  }
  expect(close(g.wettedPerimeter, 2 * length)).toBeLessThan(1e-8);
});

test("a trapezoid is a rectangle with walls, and a V without a bottom", () => {
  const depth = metres(0.7);
  expect(sectionGeometry(trapezoidalSection(metres(3), 0), depth)).toEqual(
    sectionGeometry(rectangularSection(metres(3)), depth),
  );
  const thin = sectionGeometry(trapezoidalSection(metres(1e-12), 2, 1), depth);
  const v = sectionGeometry(triangularSection(2, 1), depth);
  expect(close(thin.area, v.area)).toBeLessThan(1e-11);
  expect(close(thin.firstMoment, v.firstMoment)).toBeLessThan(1e-11);
});

describe("what is no section, or no depth, is told by name", () => {
  test.each([
    [() => rectangularSection(metres(0)), "width must be above 0 m, got 0"],
    [() => rectangularSection(metres(-1)), "width must be above 0 m, got -1"],
    [() => triangularSection(0, 0), "run of the two banks must be above 0, got 0"],
    [() => triangularSection(-1, 2), "run of the left bank must be at least 0 and finite, got -1"],
    [() => trapezoidalSection(metres(0), 1), "bottom width must be above 0 m, got 0"],
    [
      () => trapezoidalSection(metres(1), 1, Number.POSITIVE_INFINITY),
      "run of the right bank must be at least 0 and finite, got Infinity",
    ],
    [() => circularSection(metres(0)), "diameter must be above 0 m, got 0"],
    [() => parabolicSection(metres(1), metres(0)), "depth of the given width must be above 0 m, got 0"],
    [() => sectionGeometry(rectangularSection(metres(1)), metres(0)), "depth must be above 0 m, got 0"],
    [
      () => sectionGeometry(circularSection(metres(1)), metres(1.01)),
      "depth must be at most 1 m, the diameter, got 1.01",
    ],
    [
      () => sectionGeometry(circularSection(metres(1)), metres(1)),
      "top width of the water must be above 0 m, got 0",
    ],
  ])("%s", (make, message) => {
    expect(make).toThrow(message);
  });
});

test.each([1e-9, 1e9])("sections of %d m keep their digits", (size) => {
  const g = sectionGeometry(trapezoidalSection(metres(size), 1), metres(size));
  expect(close(g.area, 2 * size * size)).toBeLessThan(1e-15);
});
