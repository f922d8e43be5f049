import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  celsius,
  feet,
  heightAboveBed,
  metres,
  metresPerSecond,
  millimetres,
  QuantityError,
  seconds,
  standardGravity,
} from "../units/index.js";
import {
  bedClassLimits,
  type ColumnLaw,
  type Observation,
  speedAt,
  speedProfile,
  waterColumn,
} from "./index.js";

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

describe("the law is chosen from what is known", () => {
  test.each<[ColumnLaw, Partial<Observation>]>([
    ["power", {}],
    ["power", { bed: "boulder", exponent: 7 }],
    ["mixing-layer", { bed: "boulder" }],
    ["mixing-layer", { bed: { d84: metres(0.9 / 7) } }],
    ["log", { bed: { d84: metres(0.9 / 7.01) } }],
    ["log", { bed: "pebble" }],
    ["log", { roughness: metres(0.1) }],
    ["log", { bed: "boulder", roughnessLength: metres(0.01) }],
    ["log-wake", { bed: "pebble", wake: 0.2 }],
    ["dip", { bed: "pebble", channelWidth: metres(4.4) }],
    ["log", { bed: "pebble", channelWidth: metres(4.6) }],
    ["measured", { points }],
    ["measured", { points, bed: "boulder" }],
    ["power", { points: points.slice(0, 1) }],
    ["log-wake", { bed: "boulder", law: "log-wake" }],
  ])("%s: %o", (law, more) => {
    const column = waterColumn({ ...seen, ...more });
    expect(column.profile.law).toBe(law);
    expect(column.grounds.relations.length).toBeGreaterThan(0);
  });
});

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
});

describe("the grounds", () => {
  test("name the power law's shear only for the power law", () => {
    const relations = (o: Partial<Observation>) => waterColumn({ ...seen, ...o }).grounds.relations;
    expect(relations({ exponent: 6 })).toContain("ZimmermannKennedy1978");
    // a layer one stone deep, and points that end at 1 m/s, also have 1 for their surface
    expect(relations({ bed: { d84: metres(0.9) } })).not.toContain("ZimmermannKennedy1978");
    const one = [point(0.1, 0.3), point(0.9, 1)];
    expect(waterColumn({ depth: metres(0.9), points: one }).grounds.relations).not.toContain(
      "ZimmermannKennedy1978",
    );
  });

  test("say what was assumed", () => {
    const names = (o: Partial<Observation>) =>
      waterColumn({ ...seen, ...o }).grounds.assumptions.map((a) => a.name);
    expect(names({})).toEqual(["water temperature", "exponent of the power law"]);
    expect(names({ temperature: celsius(9), exponent: 7 })).toEqual([]);
    expect(names({ temperature: celsius(9), bed: "pebble" })).toEqual(["D84", "roughness ks"]);
    expect(names({ temperature: celsius(9), bed: "pebble", law: "log-wake" })).toContain("wake strength");
    expect(names({ temperature: celsius(9), exponent: 7, slope: 0.003 })).toEqual(["shear velocity"]);
  });

  test("warn outside the published range", () => {
    const caveats = (o: Partial<Observation>) =>
      waterColumn({ ...seen, ...o }).grounds.caveats.map((c) => c.relation);
    expect(caveats({ bed: { d84: metres(9) }, law: "mixing-layer" })).toEqual(["Katul2002"]);
    expect(caveats({ bed: "pebble", law: "mixing-layer" })).toEqual(["Katul2002"]);
    expect(caveats({ bed: "pebble", channelWidth: metres(1) })).toEqual(["Yang2004"]);
    expect(caveats({ bed: "pebble", channelWidth: metres(4) })).toEqual([]);
    expect(caveats({ exponent: 13 })).toEqual(["ISO748"]);
    expect(caveats({ bed: "boulder" })).toEqual([]);
  });
});

test("a bed by name has the geometric middle of its grade", () => {
  const { relativeSubmergence } = waterColumn({ ...seen, bed: "cobble" });
  const { min, max } = bedClassLimits.cobble;
  expect(Math.abs((relativeSubmergence ?? 0) / (0.9 / Math.sqrt(min * max)) - 1)).toBeLessThan(1e-12);
  expect(waterColumn(seen).relativeSubmergence).toBeNull();
});

test("the grades of the bed follow each other without a gap", () => {
  const grades = Object.values(bedClassLimits);
  grades.slice(1).forEach(({ min }, i) => {
    expect(min).toBe(grades[i]?.max);
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

describe("refuses", () => {
  test.each<[Partial<Observation>, string]>([
    [{ depth: metres(0) }, "depth must be from 0.01 to 50 m, got 0"],
    [{ depth: metres(-1) }, "depth must be from 0.01 to 50 m, got -1"],
    [{ surfaceSpeed: metresPerSecond(-0.1) }, "surface speed must be from 0 to 10 m/s, got -0.1"],
    [{ surfaceSpeed: metresPerSecond(1e308) }, "surface speed must be from 0 to 10 m/s, got 1e+308"],
    [{ roughness: metres(-1) }, "roughness must be from 0 to 10 m"],
    [{ roughnessLength: metres(0) }, "roughness length must be above 0 m, got 0"],
    [{ wake: Number.NaN }, "wake strength must be from -0.5 to 2, got NaN"],
    [{ exponent: 0.5 }, "exponent of the power law must be from 1 to 100, got 0.5"],
    [{ channelWidth: metres(0) }, "channel width must be above 0 m"],
    [{ slope: -0.1 }, "slope must be from 0 to 1"],
    [{ bed: { d84: metres(0) } }, "D84 must be from 0.000001 to 10 m, got 0"],
    [{ temperature: celsius(200) }, "water temperature must be from -20 to 110 °C, got 200"],
    [
      { points: [point(1, 1), point(0.2, 1)] },
      "height above the bed of a measured point must be from 0 to 0.9 m",
    ],
    [{ points: [point(0.1, -1), point(0.2, 1)] }, "speed of a measured point must be from 0 to 10 m/s"],
    [{ law: "measured" }, "measured points must be two or more, got 0"],
    [{ law: "mixing-layer" }, "bed must be given for the mixing-layer law"],
    [{ law: "log" }, "bed must be given (or a roughness) for the log law"],
    [{ law: "dip", bed: "pebble" }, "channel width must be given for the dip law"],
    [{ roughness: metres(40) }, "roughness must be from 0 to 10 m"],
  ])("%o", (wrong, message) => {
    expect(() => waterColumn({ ...seen, ...wrong })).toThrow(message);
    expect(() => waterColumn({ ...seen, ...wrong })).toThrow(QuantityError);
  });

  test("a spot without any speed, and floats that take no time", () => {
    expect(() => waterColumn({ depth: metres(1) })).toThrow("surface speed must be given, or timed floats");
    const timedFloats = [{ distance: metres(1), time: seconds(0) }];
    expect(() => waterColumn({ depth: metres(1), timedFloats })).toThrow(
      "time of a timed float must be above 0 s",
    );
    const slow = [{ distance: metres(0), time: seconds(1) }];
    expect(() => waterColumn({ depth: metres(1), timedFloats: slow })).toThrow("distance of a timed float");
  });
});
