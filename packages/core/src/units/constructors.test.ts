import fc from "fast-check";
import { describe, expect, test } from "vitest";
import * as units from "./index.js";

const runs = { seed: 2, numRuns: 200 };

const constructors = Object.entries({
  metres: units.metres,
  centimetres: units.centimetres,
  millimetres: units.millimetres,
  feet: units.feet,
  inches: units.inches,
  "square metres": units.squareMetres,
  "cubic metres per second": units.cubicMetresPerSecond,
  "cubic feet per second": units.cubicFeetPerSecond,
  pascals: units.pascals,
  watts: units.watts,
  "cubic metres": units.cubicMetres,
  "cubic millimetres": units.cubicMillimetres,
  seconds: units.seconds,
  "per second": units.perSecond,
  "metres per second": units.metresPerSecond,
  "feet per second": units.feetPerSecond,
  kilograms: units.kilograms,
  grams: units.grams,
  milligrams: units.milligrams,
  grains: units.grains,
  "kilograms per cubic metre": units.kilogramsPerCubicMetre,
  newtons: units.newtons,
  millinewtons: units.millinewtons,
  "pounds-force": units.poundsForce,
  "newtons per metre": units.newtonsPerMetre,
  "pascal seconds": units.pascalSeconds,
  "square metres per second": units.squareMetresPerSecond,
  "degrees Celsius": units.celsius,
  "degrees Fahrenheit": units.fahrenheit,
  radians: units.radians,
  degrees: units.degrees,
  "height above bed": units.heightAboveBed,
  "depth below surface": units.depthBelowSurface,
});

describe.each(constructors)("%s", (name, make) => {
  test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])(
    "refuses %d by name",
    (value) => {
      expect(() => make(value)).toThrow(`${name} must be finite, got ${value}`);
      expect(() => make(value)).toThrow(units.QuantityError);
    },
  );

  test("is a straight line in its argument", () => {
    const ordinary = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(ordinary, ordinary, (a, b) => {
        const left = make(a) + make(b);
        const right = make(a + b) + make(0);
        expect(Math.abs(left - right)).toBeLessThanOrEqual(
          1e-12 * (Math.abs(make(a)) + Math.abs(make(b)) + 20),
        );
      }),
      runs,
    );
  });
});

test("one size of each unit is one size of the others, by definition", () => {
  expect(Math.abs(units.inches(12) / units.feet(1) - 1)).toBeLessThan(1e-15);
  expect(Math.abs(units.millimetres(25.4) / units.inches(1) - 1)).toBeLessThan(1e-15);
  expect(units.centimetres(100)).toBe(units.metres(1));
  expect(units.milligrams(1000)).toBe(units.grams(1));
  // 7000 grains are the pound of 0.45359237 kg
  expect(Math.abs(units.grains(7000) / 0.45359237 - 1)).toBeLessThan(1e-15);
  expect(units.fahrenheit(32)).toBe(0);
  expect(units.fahrenheit(-40)).toBe(-40);
  expect(units.degrees(180)).toBe(Math.PI);
});
