import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cubicMetresPerSecond, metres } from "../units/index.js";
import { criticalDepth, type Flow, froudeNumber } from "./critical.js";
import { alternateDepths, minimumEnergy, specificEnergy } from "./energy.js";
import { rectangularSection, triangularSection } from "./section.js";
import { kinds, overbanks, sectionOf } from "./sections.fixture.js";
import { greatestDepth } from "./wet.js";

const unit = fc.double({ min: 0, max: 1, noNaN: true });
const six = fc.array(unit, { minLength: 6, maxLength: 6 });
const q = cubicMetresPerSecond;

test.each(kinds)("alternate depths conserve energy, one on each side of critical: %s", (shape) => {
  let pairs = 0;
  fc.assert(
    fc.property(
      six,
      unit,
      unit,
      fc.double({ min: 1, max: 1.5, noNaN: true }),
      (numbers, x, part, energyCoefficient) => {
        const section = sectionOf(shape, numbers);
        const flow: Flow = { section, discharge: q(10 ** (3 * x - 2)), energyCoefficient };
        const depth = metres((0.02 + 0.97 * part) * Math.min(greatestDepth(section), 4));
        const energy = specificEnergy(flow, depth);
        const alternate = alternateDepths(flow, energy);
        if (alternate.kind !== "found") throw new Error(alternate.kind);
        expect(Math.min(...alternate.depths.map((y) => Math.abs(y / depth - 1)))).toBeLessThan(1e-6);
        for (const y of alternate.depths) {
          expect(Math.abs(specificEnergy(flow, y) / energy - 1)).toBeLessThan(1e-12);
        }
        const [first, second] = alternate.depths;
        if (first === undefined || second === undefined || shape === "surveyed") return;
        pairs++;
        expect(froudeNumber(flow, first)).toBeGreaterThan(1);
        expect(froudeNumber(flow, second)).toBeLessThan(1);
      },
    ),
    { seed: 36, numRuns: 300 },
  );
  if (shape !== "surveyed") expect(pairs).toBeGreaterThan(60);
});

// E = 1.5 y_c in a rectangle and 1.25 y_c in a V: from α Q² B = g A³.
test("least energy of the rectangle and the V", () => {
  for (const [section, factor] of [
    [rectangularSection(metres(2)), 1.5],
    [triangularSection(1.5, 0.5), 1.25],
  ] as const) {
    const flow: Flow = { section, discharge: q(3) };
    const critical = criticalDepth(flow);
    const least = minimumEnergy(flow);
    expect(critical.kind === "found" && critical.depth).toBe(least.depth);
    expect(Math.abs(least.energy / (factor * least.depth) - 1)).toBeLessThan(1e-12);
  }
});

test("less than the least energy is an answer", () => {
  const flow: Flow = { section: rectangularSection(metres(2)), discharge: q(3) };
  const minimum = minimumEnergy(flow);
  expect(alternateDepths(flow, metres(0.99 * minimum.energy))).toEqual({ kind: "below-minimum", minimum });
});

test("over the banks an energy may have four depths", () => {
  const flow: Flow = { section: overbanks, discharge: q(65) };
  const alternate = alternateDepths(flow, metres(2.36));
  if (alternate.kind !== "found") throw new Error(alternate.kind);
  expect(alternate.depths).toHaveLength(4);
  for (const y of alternate.depths) expect(Math.abs(specificEnergy(flow, y) / 2.36 - 1)).toBeLessThan(1e-12);
});

describe("degenerate input is named", () => {
  const flow: Flow = { section: rectangularSection(metres(1)), discharge: q(1) };
  test.each([
    [() => specificEnergy(flow, metres(0)), "depth must be above 0 m, got 0"],
    [() => alternateDepths(flow, metres(0)), "specific energy must be above 0 m, got 0"],
    [() => minimumEnergy({ ...flow, discharge: q(0) }), "discharge must be above 0 m³/s, got 0"],
  ])("%s", (make, message) => {
    expect(make).toThrow(message);
  });
});
