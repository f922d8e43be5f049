import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { celsius, grams, kilograms, metres, millimetres, newtons, standardGravity } from "../units/index.js";
import { waterAt } from "../water/index.js";
import { float, floatDraft, floatKernel, floatReserve } from "./index.js";

const water = waterAt(celsius(12));
const size = { length: millimetres(22), width: millimetres(5), height: millimetres(4.5) };
const dry = { ...size, mass: grams(0.1), treatment: 0 };
const speeds = fc.double({ min: 1e-3, max: 3, noNaN: true });
const runs = { seed: 6, numRuns: 200 };

test("what is not given is the usual share", () => {
  expect(float({ ...size, mass: grams(0.1) })).toEqual({
    ...size,
    mass: grams(0.1),
    fill: Math.PI / 4,
    buoyantShare: 1,
    treatment: 1,
    drag: 1.1,
  });
});

describe("Archimedes", () => {
  test("an untreated float carries the water of its volume less its own weight", () => {
    const volume = (Math.PI / 4) * size.length * size.width * size.height;
    const reserve = (water.density * volume - 1e-4) * standardGravity;
    expect(Math.abs(floatReserve(float(dry), water) / reserve - 1)).toBeLessThan(1e-12);
  });

  test("the draft displaces weight and load, at most the height and at least nothing", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 2e-3, noNaN: true }), (load) => {
        const draft = floatDraft(float(dry), water, newtons(load));
        const displaced = water.density * standardGravity * (Math.PI / 4) * size.length * size.width * draft;
        expect(Math.abs(displaced / (1e-4 * standardGravity + load) - 1)).toBeLessThan(1e-12);
      }),
      runs,
    );
    expect(floatDraft(float(dry), water, newtons(1))).toBe(size.height);
    expect(floatDraft(float(dry), water, newtons(-1))).toBe(0);
  });

  test("a float at its reserve is just under", () => {
    const reserve = floatReserve(float(dry), water);
    expect(Math.abs(floatDraft(float(dry), water, reserve) / size.height - 1)).toBeLessThan(1e-12);
  });
});

test("the film adds surface tension round the waterline, in proportion to the treatment", () => {
  const reserve = (treatment: number) => floatReserve(float({ ...dry, treatment }), water);
  const round = 2 * (size.length + size.width) * water.surfaceTension;
  expect(Math.abs((reserve(1) - reserve(0)) / round - 1)).toBeLessThan(1e-12);
  expect(Math.abs((reserve(0.5) - reserve(0)) / round - 0.5)).toBeLessThan(1e-12);
});

test("a stone on the film alone: no less than nothing", () => {
  expect(floatReserve(float({ ...dry, mass: grams(50) }), water)).toBe(0);
  expect(floatKernel(float({ ...dry, mass: grams(50) }), water).buoyantReserve).toBeLessThan(0);
});

describe("the push on it", () => {
  const kernel = floatKernel(float(dry), water);

  test("turns over with the stream and goes with its square and the draft", () => {
    fc.assert(
      fc.property(speeds, fc.double({ min: 1e-4, max: 4e-3, noNaN: true }), (speed, draft) => {
        expect(kernel.dragAt(-speed, draft)).toBe(-kernel.dragAt(speed, draft));
        expect(Math.abs(kernel.dragAt(2 * speed, draft) / kernel.dragAt(speed, draft) - 4)).toBeLessThan(
          1e-12,
        );
        expect(Math.abs(kernel.dragAt(speed, 2 * draft) / kernel.dragAt(speed, draft) - 2)).toBeLessThan(
          1e-12,
        );
      }),
      runs,
    );
    expect(kernel.dragAt(0, 1e-3)).toBe(0);
    expect(kernel.dragAt(1, 0)).toBe(0);
  });

  test("water and wind share its side: the ratio at half draft is that of the densities, 1.225 to water", () => {
    const half = size.height / 2;
    const share = kernel.windageAt(1, half) / kernel.dragAt(1, half);
    expect(Math.abs(share / (1.225 / water.density) - 1)).toBeLessThan(1e-12);
    expect(kernel.windageAt(1, size.height)).toBe(0);
    expect(kernel.windageAt(-1, half)).toBe(-kernel.windageAt(1, half));
  });
});

describe("refuses", () => {
  test.each([
    [{ length: metres(0) }, "length of the float must be from 0.0001 to 1 m, got 0"],
    [{ width: metres(2) }, "width of the float"],
    [{ height: metres(-1) }, "height of the float"],
    [{ mass: kilograms(2) }, "mass of the float must be from 0 to 1 kg, got 2"],
    [{ fill: 1.1 }, "fill of the float must be from 0.01 to 1, got 1.1"],
    [{ buoyantShare: 0 }, "buoyant share of the float"],
    [{ treatment: 2 }, "treatment of the float must be from 0 to 1, got 2"],
    [{ drag: 0 }, "drag coefficient of the float must be above 0, got 0"],
    [{ drag: Number.NaN }, "drag coefficient of the float must be above 0, got NaN"],
  ])("%o", (wrong, message) => {
    expect(() => float({ ...dry, ...wrong })).toThrow(message);
  });
});
