import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { metres, metresPerSecond } from "../units/index.js";
import { dischargeUncertainty, meanSection, midSection, type Vertical, verticalMean } from "./index.js";

const relative = (value: number, expected: number): number => Math.abs(value / expected - 1);
const at = (station: number, depth: number, speed: number): Vertical => ({
  station: metres(station),
  depth: metres(depth),
  speed: metresPerSecond(speed),
});
const positive = (max: number): fc.Arbitrary<number> => fc.double({ min: 0.05, max, noNaN: true });
const scale = fc.double({ min: 0.5, max: 2, noNaN: true });
const inner = fc.array(fc.record({ gap: positive(3), depth: positive(2), speed: positive(2) }), {
  minLength: 2,
  maxLength: 20,
});
/** Dry edges with wet verticals between them. */
const stream = inner.map((all) => {
  let x = 0;
  const wet = all.map(({ gap, depth, speed }) => {
    x += gap;
    return at(x, depth, speed);
  });
  return [at(0, 0, 0), ...wet, at(x + 0.7, 0, 0)];
});
const rules = [
  (v: readonly Vertical[]) => midSection(v, "half-spacing"),
  (v: readonly Vertical[]) => midSection(v, "triangle"),
  meanSection,
];

describe("every method", () => {
  test("does not care from which bank the tape was read", () => {
    fc.assert(
      fc.property(stream, (verticals) => {
        const mirrored = verticals.toReversed().map((v) => at(-v.station, v.depth, v.speed));
        for (const rule of rules)
          expect(relative(rule(mirrored).discharge, rule(verticals).discharge)).toBeLessThan(1e-12);
      }),
      { seed: 1, numRuns: 150 },
    );
  });

  test("scales with lengths and speeds by their dimensions", () => {
    fc.assert(
      fc.property(stream, scale, scale, (verticals, L, T) => {
        const scaled = verticals.map((v) => at(v.station * L, v.depth * L, (v.speed * L) / T));
        for (const rule of rules)
          expect(relative(rule(scaled).discharge, (rule(verticals).discharge * L ** 3) / T)).toBeLessThan(
            1e-9,
          );
      }),
      { seed: 2, numRuns: 150 },
    );
  });

  test("adds its panels up, and gives discharge over area for a mean", () => {
    fc.assert(
      fc.property(stream, (verticals) => {
        for (const rule of rules) {
          const q = rule(verticals);
          expect(
            relative(
              q.panels.reduce((sum, p) => sum + p.discharge, 0),
              q.discharge,
            ),
          ).toBeLessThan(1e-12);
          expect(relative(q.meanSpeed * q.area, q.discharge)).toBeLessThan(1e-12);
        }
      }),
      { seed: 3, numRuns: 100 },
    );
  });
});

test("the mean section has the exact area of straight ground", () => {
  fc.assert(
    fc.property(stream, (verticals) => {
      const area = verticals
        .slice(1)
        .reduce(
          (sum, v, i) => sum + ((v.station - verticals[i]!.station) * (v.depth + verticals[i]!.depth)) / 2,
          0,
        );
      expect(relative(meanSection(verticals).area, area)).toBeLessThan(1e-12);
    }),
    { seed: 4, numRuns: 100 },
  );
});

test("the triangle rule has the exact area of a side slope carried on to half of the next spacing", () => {
  // ground that falls 1 in 1 from the edge: to x = 2, half-way from 1 to 3, a triangle of 2 m²
  const verticals = [at(0, 0, 0), at(1, 1, 1), at(3, 3, 1), at(5, 3, 1), at(6, 1, 1), at(7, 0, 0)];
  expect(midSection(verticals, "triangle").panels[1]?.area).toBe(2);
  expect(midSection(verticals, "half-spacing").panels[1]?.area).toBe(1.5);
});

test("one wet vertical has half of both spacings by either rule", () => {
  const verticals = [at(0, 0, 0), at(1, 1, 1), at(4, 0, 0)];
  expect(midSection(verticals, "triangle").discharge).toBe(2);
  expect(midSection(verticals, "half-spacing").discharge).toBe(2);
});

test("between walls both mid-section and mean-section give v d b in uniform water", () => {
  const verticals = [0, 1, 2.5, 4].map((x) => at(x, 0.8, 0.5));
  expect(relative(midSection(verticals, "half-spacing").discharge, 4 * 0.8 * 0.5)).toBeLessThan(1e-12);
  expect(relative(meanSection(verticals).discharge, 4 * 0.8 * 0.5)).toBeLessThan(1e-12);
  expect(() => midSection(verticals, "triangle")).toThrow("depth at the edge");
});

test.each([
  ["three or more", [at(0, 0, 0), at(1, 1, 1)]],
  ["station of vertical 3", [at(0, 0, 0), at(1, 1, 1), at(1, 1, 1)]],
  ["depth of vertical 2", [at(0, 0, 0), at(1, -1, 1), at(2, 0, 0)]],
  ["speed of vertical 2", [at(0, 0, 0), at(1, 1, 99), at(2, 0, 0)]],
  ["depth of the verticals", [at(0, 0, 0), at(1, 0, 0), at(2, 0, 0)]],
])("a gauging is refused by name: %s", (name, verticals) => {
  expect(() => meanSection(verticals)).toThrow(name);
  expect(() => midSection(verticals, "half-spacing")).toThrow(name);
});

describe("point methods", () => {
  const v = metresPerSecond;

  test("agree in water of one speed, the surface but for its coefficient", () => {
    const u = v(0.8);
    for (const points of [
      { method: "six-tenths", at60: u },
      { method: "two-point", at20: u, at80: u },
      { method: "three-point", at20: u, at60: u, at80: u },
      { method: "five-point", atSurface: u, at20: u, at60: u, at80: u, atBed: u },
      { method: "surface", atSurface: u, coefficient: 1 },
    ] as const)
      expect(verticalMean(points).speed).toBeCloseTo(0.8, 12);
    const taken = verticalMean({ method: "surface", atSurface: u });
    expect(taken.speed).toBeCloseTo(0.85 * 0.8, 12);
    expect(taken.assumptions).toHaveLength(1);
  });

  // the identity of the log law: 0.4² = 0.2 × 0.8
  test("by one, two and three points are the same in a log profile", () => {
    const u = (depthFraction: number) => v(Math.log((1 - depthFraction) / 1e-3));
    const one = verticalMean({ method: "six-tenths", at60: u(0.6) }).speed;
    expect(verticalMean({ method: "two-point", at20: u(0.2), at80: u(0.8) }).speed).toBeCloseTo(one, 12);
    expect(
      verticalMean({ method: "three-point", at20: u(0.2), at60: u(0.6), at80: u(0.8) }).speed,
    ).toBeCloseTo(one, 12);
  });

  test("name a coefficient that cannot be", () => {
    expect(() => verticalMean({ method: "surface", atSurface: v(1), coefficient: 2 })).toThrow(
      "surface coefficient",
    );
  });
});

describe("the uncertainty of a discharge", () => {
  const none = {
    calibration: 0,
    verticals: 0,
    width: 0,
    depth: 0,
    points: 0,
    meter: 0,
    exposure: 0,
    pointsPerVertical: 2,
  };
  const even = meanSection([0, 1, 2, 3, 4].map((x) => at(x, 1, 1)));

  test("of m equal panels is u²/m from each panel, and halved in variance by a second point", () => {
    expect(dischargeUncertainty(even, { ...none, depth: 0.04 }).relative).toBeCloseTo(0.04 / 2, 12);
    expect(dischargeUncertainty(even, { ...none, exposure: 0.04 }).relative).toBeCloseTo(
      0.04 / Math.sqrt(8),
      12,
    );
    expect(dischargeUncertainty(even, { ...none, calibration: 0.01, verticals: 0.02 }).relative).toBeCloseTo(
      Math.hypot(0.01, 0.02),
      12,
    );
  });

  test("has shares that add up, and twice the standard uncertainty for k = 2", () => {
    const all = dischargeUncertainty(even, {
      ...none,
      calibration: 0.01,
      width: 0.005,
      meter: 0.02,
      points: 0.03,
    });
    expect(Object.values(all.shares).reduce((sum, s) => sum + s, 0)).toBeCloseTo(1, 12);
    expect(all.expanded / all.standard).toBeCloseTo(2, 12);
    expect(Object.values(dischargeUncertainty(even, none).shares)).toEqual([0, 0, 0, 0, 0, 0, 0]);
  });

  test("names what it cannot take", () => {
    expect(() => dischargeUncertainty(even, { ...none, meter: 2 })).toThrow("relative uncertainty of meter");
    expect(() => dischargeUncertainty(even, { ...none, pointsPerVertical: 0 })).toThrow(
      "points in each vertical",
    );
    const still = meanSection([0, 1, 2].map((x) => at(x, 1, 0)));
    expect(() => dischargeUncertainty(still, none)).toThrow("discharge");
  });
});
