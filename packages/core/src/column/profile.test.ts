import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { heightAboveBed, metres, metresPerSecond } from "../units/index.js";
import { type Profile, shapeOf, vonKarman } from "./index.js";

const runs = { seed: 8, numRuns: 100 };
const point = (z: number, u: number) => ({ heightAboveBed: heightAboveBed(z), speed: metresPerSecond(u) });

/** Every law over one metre of water. */
const profiles: Readonly<Record<string, Profile>> = {
  log: { law: "log", roughnessLength: metres(0.004) },
  "log-wake": { law: "log-wake", roughnessLength: metres(0.004), wake: 0.2 },
  dip: { law: "dip", roughnessLength: metres(0.004), dip: 0.6 },
  power: { law: "power", exponent: 6 },
  "mixing-layer": { law: "mixing-layer", stoneSize: metres(0.3) },
  measured: { law: "measured", points: [point(0.1, 0.3), point(0.5, 0.8), point(0.8, 0.9), point(1, 0.85)] },
};

/** Composite Simpson: an integral that knows nothing of the closed forms. */
function integral(f: (z: number) => number, from: number, to: number): number {
  const n = 20_000;
  let sum = 0;
  for (let i = 0; i <= n; i++)
    sum += f(from + ((to - from) * i) / n) * (i === 0 || i === n ? 1 : i % 2 ? 4 : 2);
  return (sum * (to - from)) / n / 3;
}

describe.each(Object.entries(profiles))("the %s law", (law, profile) => {
  const shape = shapeOf(profile, 1);

  test("has the depth mean of its own values", () => {
    const foot = "roughnessLength" in profile ? profile.roughnessLength : 0;
    const top = law === "dip" ? 0.99 : 1;
    const mean = integral(shape.at, foot, top) + (1 - top) * shape.at(1);
    expect(Math.abs(mean / shape.mean - 1)).toBeLessThan(law === "power" ? 1e-4 : 1e-7);
  });

  test("is never negative, and runs at its surface value at the surface", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (z) => {
        expect(shape.at(z)).toBeGreaterThanOrEqual(0);
      }),
      runs,
    );
    expect(Math.abs(shape.at(1) / shape.surface - 1)).toBeLessThan(1e-12);
  });

  test("is the same in any unit of length", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        (L, z) => {
          const scaled = shapeOf(stretched(profile, L), L);
          expect(Math.abs(scaled.at(z * L) - shape.at(z))).toBeLessThan(1e-9);
          expect(Math.abs(scaled.mean / shape.mean - 1)).toBeLessThan(1e-12);
          expect(Math.abs(scaled.perShear / shape.perShear - 1)).toBeLessThan(1e-12);
        },
      ),
      runs,
    );
  });
});

function stretched(profile: Profile, L: number): Profile {
  if ("roughnessLength" in profile)
    return { ...profile, roughnessLength: metres(profile.roughnessLength * L) };
  if (profile.law === "mixing-layer") return { ...profile, stoneSize: metres(profile.stoneSize * L) };
  if (profile.law !== "measured") return profile;
  return { ...profile, points: profile.points.map((p) => point(p.heightAboveBed * L, p.speed)) };
}

test.each<Profile>([
  { law: "dip", roughnessLength: metres(0.1), dip: 0.45 },
  { law: "dip", roughnessLength: metres(0.004), dip: 0.6 },
  { law: "log-wake", roughnessLength: metres(0.2), wake: -0.5 },
])(
  "where $law would run backwards just above z0 of $roughnessLength m, the mean counts it as still",
  (profile) => {
    const shape = shapeOf(profile, 1);
    const foot = "roughnessLength" in profile ? profile.roughnessLength : 0;
    expect(shape.at(foot * (1 + 1e-4))).toBe(0);
    const top = profile.law === "dip" ? 0.99 : 1;
    const mean = integral(shape.at, foot, top) + (1 - top) * shape.at(1);
    expect(Math.abs(mean / shape.mean - 1)).toBeLessThan(1e-8);
  },
);

test("a wake of nothing and a dip of nothing are the log law", () => {
  const log = shapeOf({ law: "log", roughnessLength: metres(0.004) }, 1);
  const wake = shapeOf({ law: "log-wake", roughnessLength: metres(0.004), wake: 0 }, 1);
  const dip = shapeOf({ law: "dip", roughnessLength: metres(0.004), dip: 0 }, 1);
  for (const z of [0.001, 0.01, 0.3, 1]) {
    expect(wake.at(z)).toBe(log.at(z));
    expect(dip.at(z)).toBe(log.at(z));
  }
  expect([wake.mean, dip.mean]).toEqual([log.mean, log.mean]);
});

test("the wake adds 2Π at the surface and Π to the mean", () => {
  const z0 = 1e-6;
  const log = shapeOf({ law: "log", roughnessLength: metres(z0) }, 1);
  const wake = shapeOf({ law: "log-wake", roughnessLength: metres(z0), wake: 0.2 }, 1);
  expect(Math.abs((wake.surface - log.surface) / 0.4 - 1)).toBeLessThan(1e-12);
  expect(Math.abs((wake.mean - log.mean) / 0.2 - 1)).toBeLessThan(1e-5);
});

test("the dip puts the fastest water under the surface, at h/(1 + α)", () => {
  const { at } = shapeOf({ law: "dip", roughnessLength: metres(0.004), dip: 0.6 }, 1);
  const fastest = 1 / 1.6;
  for (const z of [0.1, 0.5, 0.62, 0.63, 0.7, 0.95, 1]) expect(at(z)).toBeLessThanOrEqual(at(fastest));
});

test("the mixing layer has its steepest shear at the stones' height, where it runs at half its limit", () => {
  const { at } = shapeOf({ law: "mixing-layer", stoneSize: metres(0.2) }, 1);
  const shear = (z: number) => at(z + 1e-4) - at(z - 1e-4);
  expect(at(0.2)).toBe(1);
  expect(shear(0.2)).toBeGreaterThan(shear(0.25));
  expect(shear(0.2)).toBeGreaterThan(shear(0.15));
});

test("measured points find the shear velocity of the log law they lie on", () => {
  const shear = 0.07;
  const points = [0.1, 0.2, 0.5, 1].map((z) => point(z, (shear / vonKarman) * Math.log(z / 0.01)));
  expect(Math.abs(shapeOf({ law: "measured", points }, 1).perShear / shear - 1)).toBeLessThan(1e-12);
});

test("measured points that do not rise say nothing of the shear", () => {
  const points = [point(0.2, 0.5), point(1, 0.5)];
  expect(shapeOf({ law: "measured", points }, 1).perShear).toBeNaN();
});

describe("refuses", () => {
  test.each(["log", "log-wake", "dip"] as const)("the %s law over less water than z0", (law) => {
    const profile = { law, roughnessLength: metres(0.2), wake: 0, dip: 0.1 };
    expect(() => shapeOf(profile, 0.1)).toThrow(`surface speed of the ${law} law over 0.1 m must be forward`);
  });

  test("two measured points at one height", () => {
    const points = [point(0.2, 0.5), point(0.2, 0.6)];
    expect(() => shapeOf({ law: "measured", points }, 1)).toThrow("x of the points must be strictly rising");
  });
});
