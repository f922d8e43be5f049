import { describe, expect, test } from "vitest";
import { celsius, kilogramsPerCubicMetre, metres, millimetres, standardGravity } from "../units/index.js";
import { waterAt } from "../water/index.js";
import { line, lineKernel, lineSkinFriction } from "./index.js";

const water = waterAt(celsius(12));
const nylon = { length: metres(0.5), diameter: millimetres(0.15), density: kilogramsPerCubicMetre(1140) };

test("what is not given is the published law", () => {
  expect(line(nylon)).toEqual({ ...nylon, normalDrag: "standard", tangentialDrag: lineSkinFriction });
  expect(line({ ...nylon, tangentialDrag: 0 }).tangentialDrag).toBe(0);
});

describe("the forces on a metre", () => {
  test("weight is what a metre weighs less what it displaces", () => {
    const volume = Math.PI * 0.075e-3 ** 2;
    const weight = (1140 - water.density) * standardGravity * volume;
    expect(Math.abs(lineKernel(line(nylon), water).weight / weight - 1)).toBeLessThan(1e-12);
  });

  test("a line of the density of water weighs nothing", () => {
    expect(lineKernel(line({ ...nylon, density: water.density }), water).weight).toBe(0);
  });

  test("with a constant coefficient drag goes with the square of the speed, and with the diameter", () => {
    const fixed = { ...nylon, normalDrag: { coefficient: 1.2 } };
    const { normal } = lineKernel(line(fixed), water);
    expect(Math.abs(normal(0.4) / (0.5 * water.density * 0.15e-3 * 1.2 * 0.4) - 1)).toBeLessThan(1e-12);
    const thick = lineKernel(line({ ...fixed, diameter: millimetres(0.3) }), water);
    expect(Math.abs(thick.normal(0.4) / normal(0.4) - 2)).toBeLessThan(1e-12);
  });

  test("with the published law a slow line is pushed more than the square says", () => {
    const { normal } = lineKernel(line(nylon), water);
    expect((normal(0.01) / normal(0.1)) * 10).toBeGreaterThan(1.5);
    expect(normal(0)).toBe(0);
  });
});

describe("refuses", () => {
  test.each([
    ["length", { length: metres(0) }, "length of the line must be from 0.001 to 100 m, got 0"],
    ["diameter", { diameter: metres(-1) }, "diameter of the line must be from 0.000001 to 0.01 m, got -1"],
    [
      "density",
      { density: kilogramsPerCubicMetre(1) },
      "density of the line must be from 900 to 3000 kg/m³, got 1",
    ],
  ])("a wrong %s", (_, wrong, message) => {
    expect(() => line({ ...nylon, ...wrong })).toThrow(message);
  });

  test("a line that would float", () => {
    const floating = line({ ...nylon, density: kilogramsPerCubicMetre(950) });
    expect(() => lineKernel(floating, water)).toThrow(
      "density of the line less that of the water must be above 0",
    );
  });
});
