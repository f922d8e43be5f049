import { describe, expect, test } from "vitest";
import { celsius, heightAboveBed, metres, metresPerSecond } from "../units/index.js";
import { bedClassLimits, type ColumnLaw, type Observation, waterColumn } from "./index.js";

const seen = { depth: metres(0.9), surfaceSpeed: metresPerSecond(1.1) };
const point = (z: number, u: number) => ({ heightAboveBed: heightAboveBed(z), speed: metresPerSecond(u) });
const points = [point(0.1, 0.3), point(0.5, 0.8), point(0.9, 1.1)];

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
