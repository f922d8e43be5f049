import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  celsius,
  cubicMillimetres,
  grams,
  kilograms,
  kilogramsPerCubicMetre,
  metres,
  millimetres,
  standardGravity,
} from "../units/index.js";
import { waterAt } from "../water/index.js";
import {
  addedMass,
  endOnDrag,
  type Sinker,
  sinker,
  sinkerKernel,
  sphereDrag,
  submergedWeight,
  terminalSpeed,
} from "./index.js";

const water = waterAt(celsius(12));
const bead = millimetres(2.8);
const body = { length: millimetres(6), diameter: millimetres(1.8) };
const nymph = { mass: grams(0.2), volume: cubicMillimetres(27), bead, body };
const speeds = fc.double({ min: 1e-3, max: 3, noNaN: true });
const shares = fc.double({ min: 0, max: 1, noNaN: true });
const runs = { seed: 5, numRuns: 200 };

test("weight in water is mass less displaced water, and changes sign with it", () => {
  const displaced = water.density * nymph.volume;
  const weight = (nymph.mass - displaced) * standardGravity;
  expect(Math.abs(submergedWeight(sinker(nymph), water) / weight - 1)).toBeLessThan(1e-12);
  expect(submergedWeight(sinker({ ...nymph, mass: kilograms(displaced) }), water)).toBe(0);
  expect(submergedWeight(sinker({ ...nymph, mass: kilograms(displaced / 2) }), water)).toBeLessThan(0);
});

test("added mass is half the water of a ball, and all the water of a cylinder", () => {
  const ball = (Math.PI / 6) * bead ** 3;
  const cylinder = (Math.PI / 4) * body.diameter ** 2 * body.length;
  const expected = water.density * (0.5 * ball + cylinder);
  expect(Math.abs(addedMass(sinker(nymph), water) / expected - 1)).toBeLessThan(1e-12);
});

describe("drag over speed", () => {
  test("of a bare bead is that of a sphere, whichever way it points", () => {
    const { body: _, ...shot } = nymph;
    const kernel = sinkerKernel(sinker(shot), water);
    fc.assert(
      fc.property(speeds, shares, (speed, along) => {
        const reynolds = (speed * bead) / water.kinematicViscosity;
        const sphere = 0.5 * water.density * speed * sphereDrag(reynolds) * (Math.PI / 4) * bead ** 2;
        expect(Math.abs(kernel(speed, along) / sphere - 1)).toBeLessThan(1e-12);
      }),
      runs,
    );
  });

  test("goes in a straight line from across to end-on, and is less end-on", () => {
    const kernel = sinkerKernel(sinker(nymph), water);
    fc.assert(
      fc.property(speeds, shares, (speed, along) => {
        const mixed = (1 - along) * kernel(speed, 0) + along * kernel(speed, 1);
        expect(Math.abs(kernel(speed, along) / mixed - 1)).toBeLessThan(1e-12);
        expect(kernel(speed, 1)).toBeLessThan(kernel(speed, 0));
      }),
      runs,
    );
  });

  test("the force rises with speed, and is nothing at rest", () => {
    const kernel = sinkerKernel(sinker(nymph), water);
    fc.assert(
      fc.property(speeds, shares, (speed, along) => {
        expect(kernel(1.01 * speed, along) * 1.01 * speed).toBeGreaterThan(kernel(speed, along) * speed);
      }),
      runs,
    );
    expect(kernel(0, 0)).toBe(0);
  });

  test("takes the dressing as a factor, constants as they are, and 0.82 end-on", () => {
    const fixed: Sinker = sinker({
      ...nymph,
      beadDrag: { coefficient: 0.5 },
      bodyDrag: { coefficient: 1.1 },
      dressing: 3,
    });
    const kernel = sinkerKernel(fixed, water);
    const half = 0.5 * water.density * 3 * 0.7;
    const ball = 0.5 * (Math.PI / 4) * bead ** 2;
    const across = half * (ball + 1.1 * body.length * body.diameter);
    const endOn = half * (ball + endOnDrag * (Math.PI / 4) * body.diameter ** 2);
    expect(Math.abs(kernel(0.7, 0) / across - 1)).toBeLessThan(1e-12);
    expect(Math.abs(kernel(0.7, 1) / endOn - 1)).toBeLessThan(1e-12);
  });
});

describe("terminal speed", () => {
  test("is where drag carries the weight", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.03, max: 2, noNaN: true }),
        fc.constantFrom("loop", "tight"),
        (mass, knot) => {
          const falling = sinker({ ...nymph, mass: grams(mass), knot });
          const speed = terminalSpeed(falling, water);
          const drag = sinkerKernel(falling, water)(speed, knot === "loop" ? 1 : 0) * speed;
          expect(Math.abs(drag / submergedWeight(falling, water) - 1)).toBeLessThan(1e-9);
        },
      ),
      runs,
    );
  });

  test("is higher on a loop and for a heavier fly, lower with more dressing", () => {
    const speed = (more: Partial<Sinker>) => terminalSpeed({ ...sinker(nymph), ...more }, water);
    expect(speed({ knot: "loop" })).toBeGreaterThan(speed({}));
    expect(speed({ mass: grams(0.3) })).toBeGreaterThan(speed({}));
    expect(speed({ dressing: 2 })).toBeLessThan(speed({}));
  });

  test("of a body that floats is refused", () => {
    expect(() => terminalSpeed(sinker({ ...nymph, mass: grams(0.01) }), water)).toThrow(
      "submerged weight of the sinker must be above 0 N",
    );
  });
});

describe("refuses", () => {
  const { bead: _b, body: _c, ...bare } = nymph;
  test.each([
    [{ ...nymph, mass: kilograms(0) }, "mass of the sinker must be from 1e-7 to 1 kg, got 0"],
    [{ ...nymph, volume: cubicMillimetres(-1) }, "volume of the sinker"],
    [{ ...nymph, bead: metres(1) }, "bead diameter must be from 0.00001 to 0.1 m, got 1"],
    [{ ...nymph, body: { ...body, length: metres(2) } }, "body length"],
    [{ ...nymph, body: { ...body, diameter: metres(0) } }, "body diameter"],
    [{ ...nymph, dressing: -1 }, "dressing factor must be from 0 to 20, got -1"],
    [bare, "bead or body of the sinker"],
  ])("%#: %s", (given, message) => {
    expect(() => sinker(given)).toThrow(message);
  });

  test("a line's density where a mass belongs", () => {
    // @ts-expect-error a density is no mass
    expect(sinker({ ...nymph, mass: kilogramsPerCubicMetre(0.5) }).mass).toBe(0.5);
  });
});
