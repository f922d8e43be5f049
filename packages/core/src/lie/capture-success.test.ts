import { expect, test } from "vitest";
import {
  captureSuccess,
  centimetres,
  juvenileCapture,
  metres,
  metresPerSecond,
  millimetres,
  turbidityFactor,
} from "../index.js";

const chance = (speed: number, distance: number) =>
  captureSuccess({
    preyLength: millimetres(6),
    fishLength: centimetres(20),
    waterSpeed: metresPerSecond(speed),
    distance: metres(distance),
  });

test("quicker water and farther prey are missed more often", () => {
  expect(chance(0.5, 0.3)).toBeLessThan(chance(0.2, 0.3));
  expect(chance(0.3, 0.6)).toBeLessThan(chance(0.3, 0.2));
});

test("it stays a probability at the ends", () => {
  expect(chance(0, 0)).toBeLessThanOrEqual(1);
  expect(chance(20, 100)).toBeGreaterThanOrEqual(0);
});

test("the factor of sight is 1 where its source says, and falls with murk", () => {
  expect(Math.abs(turbidityFactor(0.47036) - 1)).toBeLessThan(1e-5);
  expect(turbidityFactor(50)).toBeLessThan(turbidityFactor(5));
  expect(() => turbidityFactor(400)).toThrow("turbidity must be from 0.01 to 237 NTU, got 400");
});

test("between the two published speeds a juvenile's chance falls; outside them there is a caveat, and still a probability", () => {
  const at = (speed: number) => juvenileCapture(metresPerSecond(speed));
  expect(at(0.45).grounds.caveats).toEqual([]);
  expect(at(0.5).probability).toBeLessThan(at(0.4).probability);
  for (const outside of [0, 0.28, 0.62, 20]) {
    expect(at(outside).grounds.caveats).toMatchObject([{ relation: "Piccolo2008", min: 0.29, max: 0.61 }]);
    expect(at(outside).probability).toBeGreaterThanOrEqual(0);
    expect(at(outside).probability).toBeLessThanOrEqual(1);
  }
  expect(() => at(-1)).toThrow("speed of the water at the fish must be from 0 to 20 m/s, got -1");
});
