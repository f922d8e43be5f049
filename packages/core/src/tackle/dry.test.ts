import { describe, expect, it } from "vitest";
import { floatReserve, submergedWeight } from "../forces/index.js";
import { celsius, grams, millimetres, QuantityError } from "../units/index.js";
import { waterAt } from "../water/index.js";
import {
  type BeadMaterial,
  buildDry,
  buildNymph,
  buildTippet,
  type Dry,
  type DryStyle,
  describeDry,
  dryStyles,
  generalBox,
  hookSizes,
  type Nymph,
} from "./index.js";

const water = waterAt(celsius(15));
const dry = (style: DryStyle, size: number): Dry => ({ name: `${style} dry ${size}`, style, size });
const nymph = (size: number, diameter: number, material: BeadMaterial = "tungsten"): Nymph => ({
  name: `nymph ${size}`,
  size,
  bead: { diameter: millimetres(diameter), material },
});
const reserve = (given: Dry): number => floatReserve(buildDry(given).body, water);
/** Reserve over the submerged weight of the nymph: what a plumb rig has, line left out. */
const margin = (float: Dry, sinker: Nymph): number =>
  reserve(float) / submergedWeight(buildNymph(sinker).body, water);
/** The margin from which a pair counts as balanced: an assumption of the project. */
const balanced = 1.5;

describe("dries", () => {
  it("carry less as they get smaller, in every style that holds more than the film and for all nymphs of the box", () => {
    for (const style of ["foam", "yarn", "hair", "hackle"] as const) {
      for (const size of hookSizes.slice(1)) {
        for (const sinker of generalBox.nymphs) {
          expect(margin(dry(style, size), sinker)).toBeLessThan(margin(dry(style, size - 2), sinker));
        }
      }
    }
  });

  it("carried by the film alone gain less than their perimeter as they grow; carried by foam they gain more", () => {
    // A size 6 hook is twice a size 16: film grows twofold, volume and weight eightfold (but for the wire).
    const gain = (style: DryStyle) => reserve(dry(style, 6)) / reserve(dry(style, 16));
    expect(gain("low-profile")).toBeLessThan(2);
    expect(gain("foam")).toBeGreaterThan(2);
    expect(reserve(dry("low-profile", 6))).toBeLessThan(reserve(dry("low-profile", 10)));
  });

  it("float by what their style says once the film is gone: foam, yarn and hair stay up, hackle and low-profile sink", () => {
    const soaked = (style: DryStyle) => reserve({ ...dry(style, 12), measured: { treatment: 0 } });
    for (const style of ["foam", "yarn", "hair"] as const) expect(soaked(style)).toBeGreaterThan(0);
    for (const style of ["hackle", "low-profile"] as const) expect(soaked(style)).toBe(0);
  });

  it("take each measured value over the tabulated one, and stop calling it an assumption", () => {
    const tabulated = buildDry(dry("hair", 12));
    const weighed = buildDry({ ...dry("hair", 12), measured: { mass: grams(0.06), treatment: 1 } });
    expect(weighed.body).toEqual({ ...tabulated.body, mass: grams(0.06), treatment: 1 });
    expect(Object.keys(tabulated.spread)).toEqual(expect.arrayContaining(["mass", "treatment"]));
    expect(weighed.spread).not.toHaveProperty("mass");
    expect(weighed.grounds.assumptions).toHaveLength(tabulated.grounds.assumptions.length - 2);
  });

  it("keep the buoyant share within 0 to 1 over its spread", () => {
    for (const { buoyantShare, shareSpread } of Object.values(dryStyles)) {
      expect(buoyantShare * (1 + shareSpread)).toBeLessThan(1);
      expect(buoyantShare * (1 - shareSpread)).toBeGreaterThan(0);
    }
  });

  it("are refused by name when unknown or absurd", () => {
    const style = "cork" as never;
    expect(() => buildDry({ name: "x", size: 12, style })).toThrow(
      /^style of the dry must be one of foam, yarn/,
    );
    expect(() => buildDry(dry("foam", 13))).toThrow(QuantityError);
    expect(() => buildDry({ ...dry("foam", 12), measured: { treatment: 2 } })).toThrow(
      /^treatment of the float/,
    );
    expect(describeDry(dry("foam", 12))).toMatch(/^foam dry 12: 16\.5 × 5\.0 × 4\.0 mm, 0\.\d+ g$/);
  });
});

// Common practice, no source. docs/tackle.md tells how firm each pair is over the spread of the tables.
describe("pairs that balance", () => {
  it("a beaded nymph 16 under a foam, yarn or hair dry 12 or 10", () => {
    for (const style of ["foam", "yarn", "hair"] as const) {
      for (const size of [12, 10]) {
        expect(margin(dry(style, size), nymph(16, 2.3))).toBeGreaterThan(balanced);
      }
    }
  });

  it("a nymph 12 with a big tungsten bead under a foam dry 8, and under no dry 12", () => {
    expect(margin(dry("foam", 8), nymph(12, 3.3))).toBeGreaterThan(balanced);
    for (const style of ["foam", "yarn", "hair", "hackle", "low-profile"] as const) {
      expect(margin(dry(style, 12), nymph(12, 3.3))).toBeLessThan(balanced);
    }
  });

  it("with a bead of 3.8 mm the nymph 12 wants more than a foam 8: it floats, below the margin", () => {
    const foam8 = margin(dry("foam", 8), nymph(12, 3.8));
    expect(foam8).toBeGreaterThan(1);
    expect(foam8).toBeLessThan(balanced);
    expect(margin(dry("foam", 6), nymph(12, 3.8))).toBeGreaterThan(balanced);
  });

  it("a low-profile dry balances no nymph with a tungsten or brass bead on a hook of 16 or larger", () => {
    for (const sinker of [nymph(16, 2.3), nymph(16, 2.3, "brass"), nymph(14, 2.8), nymph(12, 3.3)]) {
      for (const size of [14, 12]) expect(margin(dry("low-profile", size), sinker)).toBeLessThan(balanced);
    }
  });
});

describe("the general box", () => {
  it("holds 12 dries, 12 nymphs, 5 tippets and 6 lengths, all of them different and all of them buildable", () => {
    const { dries, nymphs, tippets, dropperLengths } = generalBox;
    expect([dries.length, nymphs.length, tippets.length]).toEqual([12, 12, 5]);
    expect(new Set(dropperLengths).size).toBe(6);
    for (const all of [dries, nymphs, tippets])
      expect(new Set(all.map(({ name }) => name)).size).toBe(all.length);
    for (const each of dries) expect(buildDry(each).body.mass).toBeGreaterThan(0);
    for (const each of nymphs) expect(submergedWeight(buildNymph(each).body, water)).toBeGreaterThan(0);
    for (const each of tippets)
      expect(buildTippet(each, dropperLengths[0]!).body.length).toBe(dropperLengths[0]);
    expect(Math.min(...dropperLengths)).toBeGreaterThan(0.3);
    expect(Math.max(...dropperLengths)).toBeLessThan(1.25);
  });
});
