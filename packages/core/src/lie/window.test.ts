import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { waterColumn } from "../column/index.js";
import { centimetres, feet, metres, metresPerSecond, millimetres } from "../units/index.js";
import { captureReach, fishWindow, reactionDistance } from "./index.js";

const runs = { seed: 13, numRuns: 200 };
const over = (depth: number) =>
  waterColumn({ depth: metres(depth), surfaceSpeed: metresPerSecond(0.8), exponent: 6 });
const trout = {
  preyLength: millimetres(6),
  fishLength: centimetres(25),
  greatestSpeed: metresPerSecond(0.9),
};

describe("the window", () => {
  test("is 12 in above the bed and 12 in each way, in water deep enough (common practice, no source)", () => {
    const window = fishWindow(over(1));
    expect(window).toMatchObject({ holding: feet(1), reach: feet(1), low: 0, high: 2 * feet(1) });
    expect(window.grounds.assumptions.map((a) => a.basis)).toEqual(["assumption", "practice", "practice"]);
  });

  test("is held at a third of the depth in thin water, and cut off at the surface", () => {
    expect(fishWindow(over(0.3))).toMatchObject({ holding: 0.3 / 3, low: 0, high: 0.3 });
  });

  test("lies between bed and surface whatever is seen", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 4, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 3, noNaN: true }),
        (depth, share, reach) => {
          const window = fishWindow(over(depth), {
            holdingHeight: metres(share * depth),
            reach: metres(reach),
          });
          expect(window.low).toBeGreaterThanOrEqual(0);
          expect(window.high).toBeLessThanOrEqual(depth);
          expect(window.low).toBeLessThanOrEqual(window.holding);
          expect(window.high).toBeGreaterThanOrEqual(window.holding);
          expect(window.high - window.low).toBeLessThanOrEqual(2 * reach + 1e-12);
        },
      ),
      runs,
    );
  });

  test("takes the published reach where prey and fish are known", () => {
    const window = fishWindow(over(1), { capture: trout });
    expect(window.reach).toBeGreaterThan(0);
    expect(window.reach).toBeLessThan(reactionDistance(trout.preyLength, trout.fishLength));
    expect(window.grounds.relations).toEqual(["HughesDill1990"]);
  });

  test("closes to the holding height where the water outruns the fish", () => {
    const slow = { ...trout, greatestSpeed: metresPerSecond(0.3) };
    const window = fishWindow(over(1), { capture: slow, holdingHeight: metres(0.5) });
    expect(window).toMatchObject({ reach: 0, low: 0.5, high: 0.5 });
  });

  test("what is computed from prey and fish goes before what is said of the reach", () => {
    const window = fishWindow(over(1), { capture: trout, reach: metres(0.01) });
    expect(window.reach).toBe(fishWindow(over(1), { capture: trout }).reach);
    expect(window.reach).not.toBe(0.01);
  });

  test.each([
    [{ holdingHeight: metres(1.1) }, "holding height must be from 0 to 1 m, got 1.1"],
    [{ holdingHeight: metres(-0.1) }, "holding height"],
    [{ reach: metres(-1) }, "reach of the fish must be from 0 to 10 m, got -1"],
    [{ capture: { ...trout, preyLength: metres(0) } }, "prey length must be above 0 m, got 0"],
    [
      { capture: { ...trout, greatestSpeed: metresPerSecond(0) } },
      "greatest speed of the fish must be above 0 m/s",
    ],
  ])("refuses %o", (lie, message) => {
    expect(() => fishWindow(over(1), lie)).toThrow(message);
  });
});

describe("the published reach", () => {
  test("is the reaction distance in still water, and nothing in water as quick as the fish", () => {
    const distance = reactionDistance(trout.preyLength, trout.fishLength);
    expect(captureReach(trout, metresPerSecond(0))).toBe(distance);
    expect(captureReach(trout, metresPerSecond(0.9))).toBe(0);
    expect(captureReach(trout, metresPerSecond(2))).toBe(0);
  });

  test("is further for larger prey and longer fish, and shorter in quicker water", () => {
    const speed = fc.double({ min: 0.01, max: 0.8, noNaN: true });
    fc.assert(
      fc.property(speed, (v) => {
        const reach = captureReach(trout, metresPerSecond(v));
        expect(captureReach({ ...trout, preyLength: millimetres(8) }, metresPerSecond(v))).toBeGreaterThan(
          reach,
        );
        expect(captureReach({ ...trout, fishLength: centimetres(30) }, metresPerSecond(v))).toBeGreaterThan(
          reach,
        );
        expect(captureReach(trout, metresPerSecond(1.05 * v))).toBeLessThan(reach);
      }),
      runs,
    );
  });
});
