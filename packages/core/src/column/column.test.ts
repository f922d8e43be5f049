import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  feet,
  heightAboveBed,
  metres,
  metresPerSecond,
  millimetres,
  seconds,
  standardGravity,
} from "../units/index.js";
import { type Observation, speedAt, speedProfile, waterColumn } from "./index.js";

const runs = { seed: 9, numRuns: 150 };
const seen = { depth: metres(0.9), surfaceSpeed: metresPerSecond(1.1) };
const point = (z: number, u: number) => ({ heightAboveBed: heightAboveBed(z), speed: metresPerSecond(u) });
const points = [point(0.1, 0.3), point(0.5, 0.8), point(0.9, 1.1)];
const laws: readonly Observation[] = [
  { ...seen, bed: { d84: millimetres(40) } },
  { ...seen, bed: { d84: millimetres(40) }, wake: 0.2 },
  { ...seen, bed: { d84: millimetres(40) }, channelWidth: metres(2) },
  { ...seen, exponent: 7 },
  { ...seen, bed: "boulder" },
  { ...seen, points },
];

describe.each(laws.map((observation) => ({ observation, law: waterColumn(observation).profile.law })))(
  "the column of the $law law",
  ({ observation }) => {
    const column = waterColumn(observation);

    test("runs at the measured speed at its surface, above it too", () => {
      for (const height of [0.9, 0.91, 100]) {
        expect(Math.abs(speedAt(column, heightAboveBed(height)) / 1.1 - 1)).toBeLessThan(1e-12);
      }
      expect(speedAt(column, heightAboveBed(-1))).toBeGreaterThanOrEqual(0);
    });

    test("runs at its mean at the height of the mean, and not above it", () => {
      const { meanSpeed, heightOfMean, depth } = column;
      expect(Math.abs(speedAt(column, heightOfMean) / meanSpeed - 1)).toBeLessThan(1e-9);
      const over = [0.01, 0.3, 0.9].map((share) =>
        speedAt(column, heightAboveBed(heightOfMean + share * (depth - heightOfMean))),
      );
      const sides = over.map((speed) => speed > meanSpeed);
      expect(new Set(sides).size).toBe(1);
    });

    test("has a Froude number, a ratio and a submergence of its own numbers", () => {
      expect(column.surfaceRatio).toBeCloseTo(column.meanSpeed / column.surfaceSpeed, 12);
      expect(
        Math.abs(column.froude / (column.meanSpeed / Math.sqrt(standardGravity * 0.9)) - 1),
      ).toBeLessThan(1e-12);
      expect(column.shearVelocity).toBeGreaterThan(0);
      expect(column.shearVelocity).toBeLessThan(column.meanSpeed);
    });

    test("scales with its surface speed (its roughness length held)", () => {
      const { points: _, ...rest } = observation;
      if (observation.points) return expect(column.profile.law).toBe("measured");
      const { law } = column.profile;
      const at = (u: number) =>
        waterColumn({ ...rest, law, roughnessLength: metres(0.002), surfaceSpeed: metresPerSecond(u) });
      const still = at(1);
      fc.assert(
        fc.property(
          fc.double({ min: 0.01, max: 3, noNaN: true }),
          fc.double({ min: 0, max: 0.9, noNaN: true }),
          (u, z) => {
            const quick = at(u);
            expect(Math.abs(speedProfile(quick)(z) - u * speedProfile(still)(z))).toBeLessThan(1e-12);
            expect(Math.abs(quick.shearVelocity / (u * still.shearVelocity) - 1)).toBeLessThan(1e-12);
          },
        ),
        runs,
      );
    });
  },
);

describe("still water", () => {
  test.each(laws.slice(0, 5))("has no speed anywhere: %#", (observation) => {
    const column = waterColumn({ ...observation, surfaceSpeed: metresPerSecond(0) });
    expect([0, 0.2, 0.9].map((z) => speedAt(column, heightAboveBed(z)))).toEqual([0, 0, 0]);
    expect([column.meanSpeed, column.shearVelocity, column.froude]).toEqual([0, 0, 0]);
  });

  test("has none where it was measured as still either", () => {
    const column = waterColumn({ depth: metres(0.9), points: [point(0.2, 0), point(0.8, 0)] });
    expect([column.surfaceSpeed, column.meanSpeed, speedAt(column, heightAboveBed(0.5))]).toEqual([0, 0, 0]);
  });
});

test("a slope gives the shear velocity √(g h S)", () => {
  const { shearVelocity } = waterColumn({ ...seen, exponent: 6, slope: 0.004 });
  expect(Math.abs(shearVelocity / Math.sqrt(standardGravity * 0.9 * 0.004) - 1)).toBeLessThan(1e-12);
});

test("a smooth bed is rough by its viscous layer: z0 = ν/(9 u*)", () => {
  const column = waterColumn({ ...seen, roughness: metres(0) });
  const z0 = column.profile.law === "log" ? column.profile.roughnessLength : Number.NaN;
  expect(Math.abs(z0 / (column.water.kinematicViscosity / (9 * column.shearVelocity)) - 1)).toBeLessThan(
    1e-12,
  );
});

describe("timed floats", () => {
  const run = (time: number) => ({ distance: feet(20), time: seconds(time) });

  test("give their mean speed and its standard uncertainty", () => {
    // speeds 1, 2 and 3 m/s: standard deviation 1, over √3
    const timedFloats = [1, 2, 3].map((u) => ({ distance: metres(6), time: seconds(6 / u) }));
    const column = waterColumn({ depth: metres(0.9), timedFloats });
    expect(column.surfaceSpeed).toBeCloseTo(2, 12);
    expect(column.surfaceSpeedUncertainty).toBeCloseTo(1 / Math.sqrt(3), 12);
    expect(column.grounds.relations).toContain("JCGM100");
  });

  test("one alone gives a speed and no uncertainty; a stated speed goes before them", () => {
    expect(waterColumn({ depth: metres(0.9), timedFloats: [run(6)] })).toMatchObject({
      surfaceSpeed: 6.096 / 6,
      surfaceSpeedUncertainty: null,
    });
    expect(waterColumn({ ...seen, timedFloats: [run(6)] }).surfaceSpeed).toBe(1.1);
  });
});

describe("measured points", () => {
  test("are gone through, in any order", () => {
    const column = waterColumn({ depth: metres(0.9), points: [...points].reverse() });
    for (const { heightAboveBed: z, speed } of points) expect(speedAt(column, z)).toBeCloseTo(speed, 12);
  });

  test("end at the surface speed where one is given too", () => {
    const column = waterColumn({ ...seen, points: points.slice(0, 2) });
    expect(speedAt(column, heightAboveBed(0.9))).toBe(1.1);
    expect(speedAt(column, heightAboveBed(0.5))).toBeCloseTo(0.8, 12);
  });

  test("of one speed all the way are uniform water, its mean up to the surface", () => {
    const column = waterColumn({ depth: metres(0.9), points: [point(0, 0.7), point(0.9, 0.7)] });
    expect(column).toMatchObject({ surfaceSpeed: 0.7, heightOfMean: 0.9 });
    expect(column.meanSpeed).toBeCloseTo(0.7, 12);
    expect(column.surfaceRatio).toBeCloseTo(1, 12);
    expect(speedAt(column, heightAboveBed(0))).toBe(0.7);
  });
});
