import { describe, expect, test } from "vitest";
import { type Dimension, dimensionOf, dimensions, fromSi, toSi, unitsOf } from "./units.js";

const all = Object.keys(dimensions) as Dimension[];

describe("units", () => {
  // Exact by definition: international yard and pound agreement of 1959, standard gravity of 1901.
  test.each([
    ["length", 1, "ft", 0.3048],
    ["length", 1, "in", 0.0254],
    ["speed", 1, "mph", 0.44704],
    ["speed", 36, "km/h", 10],
    ["speed", 250, "cm/s", 2.5],
    ["mass", 1, "gr", 64.79891e-6],
    ["force", 1, "lbf", 4.4482216152605],
    ["temperature", 32, "degF", 0],
    ["temperature", 212, "degF", 100],
    ["angle", 180, "deg", Math.PI],
    ["time", 1.5, "min", 90],
    ["volume", 1e9, "mm3", 1],
    ["area", 1, "ft2", 0.09290304],
    ["volume", 1, "ft3", 0.028316846592],
    ["discharge", 1000, "L/s", 1],
    ["discharge", 1, "ft3/s", 0.028316846592],
  ] as const)("%s: %d %s is %d in SI", (dimension, value, unit, si) => {
    expect(Math.abs(toSi(dimension, value, unit) - si)).toBeLessThanOrEqual(
      1e-15 * Math.max(1, Math.abs(si)),
    );
  });

  // As tables of conversion factors print them (NIST SP 811, app. B.8), from memory.
  test.each([
    ["stress", "lbf/ft2", 47.88026],
    ["power", "hp", 745.6999],
  ] as const)("%s: 1 %s is %d in SI, to the printed digits", (dimension, unit, si) => {
    expect(Math.abs(toSi(dimension, 1, unit) / si - 1)).toBeLessThan(1e-7);
  });

  test.each(all)("%s goes there and back", (dimension) => {
    for (const unit of unitsOf(dimension)) {
      for (const value of [-40, -1, 0, 1e-4, 1, 7.3, 1e6]) {
        const back = fromSi(dimension, toSi(dimension, value, unit), unit);
        expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-11 * Math.max(1, Math.abs(value)));
      }
    }
  });

  test("a symbol belongs to one dimension only", () => {
    const symbols = all.flatMap((dimension) => unitsOf(dimension));
    expect(new Set(symbols).size).toBe(symbols.length);
    for (const dimension of all) {
      for (const unit of unitsOf(dimension)) expect(dimensionOf(unit)).toBe(dimension);
    }
  });

  test.each(["metres", "constructor", "__proto__", "", 3, null])("%s is no unit", (unit) => {
    expect(dimensionOf(unit)).toBeUndefined();
    expect(() => toSi("length", 1, String(unit))).toThrow(TypeError);
  });
});
