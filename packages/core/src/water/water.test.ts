import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  celsius,
  kilogramsPerCubicMetre,
  newtonsPerMetre,
  QuantityError,
  squareMetresPerSecond,
} from "../units/index.js";
import {
  explicitWater,
  surfaceTensionValidity,
  waterAt,
  waterDensity,
  waterSurfaceTension,
  waterViscosity,
} from "./index.js";

const runs = { seed: 3, numRuns: 200 };
const liquid = fc.double({ min: 0, max: 100, noNaN: true });

test("viscosity and surface tension fall as water warms", () => {
  fc.assert(
    fc.property(liquid, fc.double({ min: 0.01, max: 10, noNaN: true }), (cold, more) => {
      const [a, b] = [celsius(cold), celsius(cold + more)];
      expect(waterViscosity(b)).toBeLessThan(waterViscosity(a));
      expect(waterSurfaceTension(b)).toBeLessThan(waterSurfaceTension(a));
    }),
    runs,
  );
});

test("water is densest near 4 °C", () => {
  const around: readonly number[] = [0, 2, 3, 3.98, 5, 6, 10].map((t) => waterDensity(celsius(t)));
  expect(around.indexOf(Math.max(...around))).toBe(3);
});

test("surface tension ends at the critical point, 647.096 K", () => {
  expect(waterSurfaceTension(celsius(647.096 - 273.15 - 1e-9))).toBeLessThan(1e-12);
  expect(surfaceTensionValidity.max + 273.15).toBeCloseTo(647.096, 9);
});

describe("waterAt", () => {
  test("gives one kinematic viscosity: dynamic over density", () => {
    fc.assert(
      fc.property(liquid, (t) => {
        const water = waterAt(celsius(t));
        expect<number>(water.kinematicViscosity).toBe(water.dynamicViscosity / water.density);
        expect(water.grounds.caveats).toEqual([]);
        expect(water.grounds.relations).toEqual(["IAPWS2011", "IAPWS1994"]);
      }),
      runs,
    );
  });

  test.each([-20.1, 110.1, 1e308])("refuses %d °C", (t) => {
    expect(() => waterAt(celsius(t))).toThrow(`water temperature must be from -20 to 110 °C, got ${t}`);
  });

  test.each([-20, 110])("takes %d °C", (t) => {
    expect(waterAt(celsius(t)).density).toBeGreaterThan(900);
  });
});

describe("explicitWater", () => {
  const given = {
    density: kilogramsPerCubicMetre(1000),
    kinematicViscosity: squareMetresPerSecond(1e-6),
    temperature: celsius(12),
  };

  test("keeps what it is given and follows no relation", () => {
    const water = explicitWater({ ...given, surfaceTension: newtonsPerMetre(0.03) });
    expect(water).toMatchObject({
      density: 1000,
      dynamicViscosity: 0.001,
      surfaceTension: 0.03,
      temperature: 12,
    });
    expect(water.grounds).toEqual({ relations: [], assumptions: [], caveats: [] });
  });

  test.each([0, -1])("refuses a density or viscosity of %d", (value) => {
    const density = kilogramsPerCubicMetre(value);
    const kinematicViscosity = squareMetresPerSecond(value);
    expect(() => explicitWater({ ...given, density })).toThrow(`density must be above 0 kg/m³, got ${value}`);
    expect(() => explicitWater({ ...given, kinematicViscosity })).toThrow(QuantityError);
  });
});
