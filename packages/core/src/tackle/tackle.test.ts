import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { submergedWeight, terminalSpeed } from "../forces/index.js";
import { celsius, grams, inches, metres, millimetres, newtons, QuantityError } from "../units/index.js";
import { waterAt } from "../water/index.js";
import {
  type BeadMaterial,
  beadMass,
  beadMassSpread,
  buildNymph,
  buildShot,
  buildTippet,
  describeNymph,
  describeTippet,
  hook,
  hookMass,
  hookMassSpread,
  hookSizes,
  lostShare,
  type Nymph,
  nymphDressing,
  type ShotMaterial,
  type TippetMaterial,
  tippetDiameter,
  tippetStrength,
} from "./index.js";

const water = waterAt(celsius(15));
const size = fc.constantFrom(...hookSizes);
const beaded = (hookSize: number, diameter: number, material: BeadMaterial = "tungsten"): Nymph => ({
  name: `${material} nymph ${hookSize}`,
  size: hookSize,
  bead: { diameter: millimetres(diameter), material },
});
const within = (value: number, expected: number, relative: number): boolean =>
  Math.abs(value / expected - 1) <= relative;

describe("hooks", () => {
  // Common practice, no source; from memory: a nymph hook of size 16 weighs about 0.02 g, of size 12 about 0.04 g.
  it.each([
    [16, 0.02],
    [12, 0.04],
  ])("a nymph hook of size %i weighs about %f g", (hookSize, mass) => {
    expect(within(hookMass(hook(hookSize), "strong"), grams(mass), hookMassSpread)).toBe(true);
  });

  it("are smaller and lighter as the number rises, and fine wire is lighter than strong", () => {
    for (const [place, larger] of hookSizes.slice(0, -1).entries()) {
      const [a, b] = [hook(larger), hook(hookSizes[place + 1]!)];
      expect(a.shank).toBeGreaterThan(b.shank);
      expect(a.gape).toBeGreaterThan(b.gape);
      expect(hookMass(a, "strong")).toBeGreaterThan(hookMass(b, "strong"));
      expect(hookMass(a, "fine")).toBeLessThan(hookMass(a, "strong"));
    }
  });

  it.each([4, 13, 22, 12.5, Number.NaN, -12])("of size %d are not in the table", (hookSize) => {
    expect(() => hook(hookSize)).toThrow(QuantityError);
    expect(() => hook(hookSize)).toThrow(/hook size must be one of 6, 8, .*20, got/);
  });
});

describe("beads", () => {
  // Common practice, no source; from memory: slotted tungsten beads.
  it.each([
    [2.0, 0.05],
    [2.3, 0.08],
    [2.8, 0.14],
    [3.3, 0.25],
    [3.8, 0.38],
    [4.6, 0.67],
  ])("a slotted tungsten bead of %f mm weighs about %f g", (diameter, mass) => {
    const bead = beadMass({ diameter: millimetres(diameter), material: "tungsten" });
    expect(within(bead, grams(mass), beadMassSpread)).toBe(true);
  });

  it("have lost what their hole and slot take from a sphere, and at most 0.03 more for the countersink", () => {
    const hole = 1 - (1 - 0.3 ** 2) ** 1.5; // volume of a holed sphere, exact
    expect(lostShare.drilled).toBeGreaterThan(hole);
    expect(lostShare.drilled).toBeLessThan(hole + 0.03);
    const slotted = lostToHoleAndSlot(0.3);
    expect(lostShare.slotted).toBeGreaterThan(slotted);
    expect(lostShare.slotted).toBeLessThan(slotted + 0.03);
  });

  it("weigh in proportion to the cube of their diameter, and tungsten > brass > glass", () => {
    const diameter = fc.double({ min: 1, max: 4, noNaN: true });
    fc.assert(
      fc.property(diameter, fc.double({ min: 1.01, max: 2, noNaN: true }), (d, scale) => {
        const mass = (material: BeadMaterial, mm = d) => beadMass({ diameter: millimetres(mm), material });
        expect(within(mass("brass", d * scale), mass("brass") * scale ** 3, 1e-12)).toBe(true);
        expect(mass("tungsten")).toBeGreaterThan(mass("brass"));
        expect(mass("brass")).toBeGreaterThan(mass("glass"));
      }),
      { seed: 1 },
    );
  });

  it("of absurd sizes and unknown materials are refused by name", () => {
    expect(() => beadMass({ diameter: metres(2.8), material: "brass" })).toThrow(/^bead diameter must be/);
    const material = "clay" as never;
    expect(() => beadMass({ diameter: millimetres(2), material })).toThrow(
      "bead material must be one of tungsten, brass, glass, got clay",
    );
  });
});

describe("nymphs", () => {
  it("weigh more with a larger or denser bead, an underbody or a larger hook", () => {
    const mass = (nymph: Nymph): number => buildNymph(nymph).body.mass;
    fc.assert(
      fc.property(size, fc.double({ min: 1, max: 3.5, noNaN: true }), (hookSize, d) => {
        fc.pre(d * 1.05 < 700 * hook(hookSize).shank);
        const nymph = beaded(hookSize, d);
        expect(mass(beaded(hookSize, d * 1.05))).toBeGreaterThan(mass(nymph));
        expect(mass(nymph)).toBeGreaterThan(mass(beaded(hookSize, d, "brass")));
        const underbody = { diameter: millimetres(0.25), turns: 8, material: "lead" as const };
        expect(mass({ ...nymph, underbody })).toBeGreaterThan(mass(nymph));
        if (hookSize > 6) expect(mass(beaded(hookSize - 2, d))).toBeGreaterThan(mass(nymph));
      }),
      { seed: 2 },
    );
  });

  // Common practice, no source; from memory: a beaded nymph falls at 0.3 to 0.7 m/s. Across its path on a tight knot it does;
  // head first the drag laws give up to 0.84 m/s for the largest beads (docs/tackle.md shows both).
  it.each([
    [18, 2.0],
    [16, 2.3],
    [14, 2.8],
    [12, 3.3],
    [12, 3.8],
  ])("a size %i with a tungsten bead of %f mm falls at 0.3 to 0.7 m/s", (hookSize, diameter) => {
    const speed = terminalSpeed(buildNymph(beaded(hookSize, diameter)).body, water);
    expect(speed).toBeGreaterThan(0.3);
    expect(speed).toBeLessThan(0.7);
    const headFirst = buildNymph({ ...beaded(hookSize, diameter), knot: "loop" }).body;
    expect(terminalSpeed(headFirst, water)).toBeGreaterThan(speed);
  });

  it("take each measured value over the tabulated one, and stop calling it an assumption", () => {
    const nymph = beaded(14, 2.8);
    const names = (given: Nymph) => buildNymph(given).grounds.assumptions.map(({ name }) => name);
    const weighed = { ...nymph, measured: { mass: grams(0.2) } };
    expect(buildNymph(weighed).body).toEqual({ ...buildNymph(nymph).body, mass: grams(0.2) });
    expect(names(nymph)).toContain("mass of tungsten nymph 14");
    expect(names(weighed)).not.toContain("mass of tungsten nymph 14");
    expect(buildNymph(weighed).spread).not.toHaveProperty("mass");
    expect(buildNymph({ ...nymph, measured: { dressing: 2 } }).body.dressing).toBe(2);
    expect(buildNymph(nymph).body.dressing).toBe(nymphDressing);
    expect(names({ ...nymph, knot: "loop" })).not.toContain("knot");
  });

  it("refuse a bead too large for the hook, and name it", () => {
    expect(() => buildNymph(beaded(20, 4.6))).toThrow(/^bead diameter on a size 20 nymph must be from/);
    expect(() => buildNymph({ ...beaded(14, 2.8), measured: { mass: grams(-1) } })).toThrow(
      /^mass of the sinker/,
    );
  });

  it("describe themselves in a line", () => {
    expect(describeNymph(beaded(16, 2.3))).toMatch(/^tungsten nymph 16: 0\.\d+ g, 2\.3 mm bead$/);
    expect(describeNymph({ name: "plain nymph 14", size: 14 })).toMatch(/no bead$/);
  });
});

describe("split shot", () => {
  it("is a bare bead; lead is heavier than tin; a weighed one keeps its weight", () => {
    const shot = (material: ShotMaterial) => ({ diameter: millimetres(4), material });
    const lead = buildShot(shot("lead")).body;
    expect(lead.body).toBeUndefined();
    expect(submergedWeight(lead, water)).toBeGreaterThan(submergedWeight(buildShot(shot("tin")).body, water));
    expect(buildShot({ ...shot("lead"), measured: { mass: grams(0.4) } }).body.mass).toBe(grams(0.4));
    expect(() => buildShot({ diameter: metres(4), material: "lead" })).toThrow(/^shot diameter/);
  });
});

describe("tippet", () => {
  // Common practice, no source: the X scale in thousandths of an inch.
  it.each([
    [0, 0.011],
    [3, 0.008],
    [5, 0.006],
    [7, 0.004],
  ])("%iX is %f in", (x, thick) => {
    expect(within(tippetDiameter(x), inches(thick), 1e-12)).toBe(true);
  });

  // Common practice, no source: what old and new spools print, in pounds, lies within the stated spread of one stress.
  it.each([
    [3, 5.2, 8.5],
    [4, 4.3, 6.4],
    [5, 3.3, 4.9],
    [6, 2.1, 3.4],
  ])("%iX bears about what spools print, %f to %f lb", (x, least, most) => {
    const force = tippetStrength({ material: "nylon", diameter: tippetDiameter(x) }) / 4.4482216;
    expect(1.35 * force).toBeGreaterThan(least);
    expect(0.65 * force).toBeLessThan(most);
  });

  it("is thicker and stronger as X falls; fluorocarbon is denser; a printed strength wins", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 8 }), fc.constantFrom("nylon", "fluorocarbon"), (x, kind) => {
        const tippet = (rating: number, material: TippetMaterial = kind) => ({
          material,
          diameter: tippetDiameter(rating),
        });
        expect(tippetDiameter(x - 1)).toBeGreaterThan(tippetDiameter(x));
        expect(tippetStrength(tippet(x - 1))).toBeGreaterThan(tippetStrength(tippet(x)));
        const density = (material: TippetMaterial) =>
          buildTippet(tippet(x, material), metres(1)).body.density;
        expect(density("fluorocarbon")).toBeGreaterThan(density("nylon"));
        expect(tippetStrength({ ...tippet(x), breakingForce: newtons(12) })).toBe(12);
      }),
      { seed: 3 },
    );
  });

  it("is refused by name off the scale, absurd or unknown", () => {
    expect(() => tippetDiameter(12)).toThrow("X rating must be from 0 to 8, got 12");
    expect(() => buildTippet({ material: "nylon", diameter: metres(5) }, metres(1))).toThrow(
      /^tippet diameter/,
    );
    const gut = { material: "gut" as never, diameter: tippetDiameter(5) };
    expect(() => buildTippet(gut, metres(1))).toThrow(/^tippet material must be one of nylon, fluorocarbon/);
  });

  it("is called by its rating, or by its diameter off the scale", () => {
    expect(describeTippet({ material: "fluorocarbon", diameter: tippetDiameter(5) })).toBe("5X fluorocarbon");
    expect(describeTippet({ material: "nylon", diameter: millimetres(0.19) })).toBe("0.190 mm nylon");
  });
});

/** Share of a unit sphere inside its hole of relative width k, or a slot of that width from the axis to one side, by a fine grid. */
function lostToHoleAndSlot(k: number): number {
  let inside = 0;
  let lost = 0;
  const n = 80;
  const at = (i: number) => (2 * i + 1) / n - 1;
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      for (let l = 0; l < n; l++) {
        const [x, y] = [at(i), at(j)];
        if (x * x + y * y + at(l) ** 2 > 1) continue;
        inside++;
        if (x * x + y * y < k * k || (Math.abs(y) < k && x > 0)) lost++;
      }
    }
  }
  return lost / inside;
}
