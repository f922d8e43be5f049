import { describe, expect, test } from "vitest";
import { normalPoints, sampleByImportance } from "./index.js";

describe("points spread like a normal", () => {
  const points = Array.from({ length: 2000 }, (_, i) => normalPoints({ dimension: 5, seed: 3 })(i));
  const mean = (of: (point: readonly number[]) => number): number =>
    points.reduce((sum, point) => sum + of(point) / points.length, 0);

  test("have mean 0, variance 1, kurtosis 3 and no correlation", () => {
    for (let i = 0; i < 5; i++) {
      expect(Math.abs(mean((p) => p[i]!))).toBeLessThan(0.02);
      expect(Math.abs(mean((p) => p[i]! ** 2) - 1)).toBeLessThan(0.03);
      expect(Math.abs(mean((p) => p[i]! ** 4) - 3)).toBeLessThan(0.3);
      for (let j = 0; j < i; j++) expect(Math.abs(mean((p) => p[i]! * p[j]!))).toBeLessThan(0.03);
    }
  });

  test("depend on the seed, and on nothing else", () => {
    const first = (seed: number) => normalPoints({ dimension: 3, seed })(7);
    expect(first(1)).toEqual(first(1));
    expect(first(1)).not.toEqual(first(2));
  });
});

/** A normal prior and a measurement x + y = 2 ± s: the posterior is normal in closed form. */
const measured = (s: number, samples: number) =>
  sampleByImportance({
    dimension: 2,
    samples,
    seed: 1,
    logLikelihood: ([x = 0, y = 0]) => -0.5 * ((x + y - 2) / s) ** 2 - Math.log(s),
  });

describe.each([1, 0.3, 0.03])("a sum known to %d", (s) => {
  const { points, weights, priorWeights, logEvidence, effective } = measured(s, 600);
  const mean = (of: readonly number[], at: (point: readonly number[]) => number): number =>
    points.reduce((sum, point, i) => sum + of[i]! * at(point), 0);
  const sum = ([x = 0, y = 0]: readonly number[]): number => x + y;

  test("has the posterior of the closed form", () => {
    const expected = (2 * 2) / (2 + s * s);
    const variance = (2 * s * s) / (2 + s * s);
    expect(Math.abs(mean(weights, sum) - expected)).toBeLessThan(0.1 * Math.sqrt(variance));
    const spread = mean(weights, (p) => (sum(p) - expected) ** 2);
    expect(Math.abs(spread / variance - 1)).toBeLessThan(0.15);
    expect(Math.abs(mean(weights, ([x = 0]) => x) - expected / 2)).toBeLessThan(0.1);
  });

  test("has the evidence of the closed form", () => {
    const exact = -0.5 * Math.log(2 + s * s) - 0.5 * (4 / (2 + s * s));
    expect(Math.abs(logEvidence - exact)).toBeLessThan(0.06);
  });

  test("keeps the prior over the same points, and many of them count", () => {
    expect(Math.abs(mean(priorWeights, sum))).toBeLessThan(0.1);
    expect(Math.abs(mean(priorWeights, (p) => sum(p) ** 2) - 2)).toBeLessThan(0.3);
    expect(effective).toBeGreaterThan(100);
  });
});

test("a likelihood of 0 in half of the space halves the evidence", () => {
  const { logEvidence, points, weights } = sampleByImportance({
    dimension: 1,
    samples: 500,
    seed: 2,
    logLikelihood: ([x = 0]) => (x > 0 ? 0 : Number.NEGATIVE_INFINITY),
  });
  expect(Math.abs(logEvidence - Math.log(0.5))).toBeLessThan(0.03);
  expect(points.every(([x = 0], i) => x > 0 || weights[i] === 0)).toBe(true);
});

test.each([
  ["samples", { dimension: 1, samples: 10 }],
  ["dimension", { dimension: 0, samples: 100 }],
])("names its %s outside the range", (name, given) => {
  expect(() => sampleByImportance({ ...given, seed: 1, logLikelihood: () => 0 })).toThrow(name);
});
