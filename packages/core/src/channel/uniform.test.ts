import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  cubicMetresPerSecond,
  kilogramsPerCubicMetre,
  type Metres,
  metres,
  squareMetresPerSecond,
} from "../units/index.js";
import type { Friction } from "./friction.js";
import { circularSection, rectangularSection, sectionGeometry } from "./section.js";
import { kinds, overbanks, sectionOf, surveyOf } from "./sections.fixture.js";
import {
  bedShear,
  type Channel,
  conveyance,
  frictionSlope,
  normalDepth,
  uniformDischarge,
  uniformVelocity,
} from "./uniform.js";
import { greatestDepth } from "./wet.js";

const unit = fc.double({ min: 0, max: 1, noNaN: true });
const six = fc.array(unit, { minLength: 6, maxLength: 6 });
const viscosity = squareMetresPerSecond(1.1e-6);

const frictionOf = (law: Friction["law"], x: number): Friction => {
  switch (law) {
    case "manning":
      return { law, n: 0.01 + 0.1 * x };
    case "chezy":
      return { law, c: 10 + 60 * x };
    case "darcy":
      return { law, f: 0.01 + 0.2 * x };
    case "rough":
      return { law, roughness: metres(1e-4 + 0.01 * x) };
    case "smooth":
      return { law, viscosity };
    case "transitional":
      return { law, roughness: metres(1e-4 + 0.01 * x), viscosity };
    case "manning-zones":
      return { law, method: "divided" };
  }
};
const laws = ["manning", "chezy", "darcy", "rough", "smooth", "transitional"] as const;

/** A logarithmic law has a speed only where the water is deeper than the roughness and the viscous film. */
function isDeepEnough({ section, friction, slope }: Channel, depth: Metres): boolean {
  const { hydraulicRadius } = sectionGeometry(section, depth);
  const rough = "roughness" in friction ? friction.roughness / (14.84 * hydraulicRadius) : 0;
  const film =
    "viscosity" in friction
      ? (0.63 * viscosity) / (hydraulicRadius * Math.sqrt(78 * hydraulicRadius * slope))
      : 0;
  return rough + film < 0.9;
}

// 6 kinds of section × 840 random sections, slopes, laws and flows: 5,040 in all.
test.each(kinds)("normal depth inverts discharge to 1e-10: %s", (shape) => {
  let several = 0;
  fc.assert(
    fc.property(six, fc.constantFrom(...laws), unit, unit, unit, (numbers, law, x, s, part) => {
      const section = sectionOf(shape, numbers);
      const channel: Channel = { section, friction: frictionOf(law, x), slope: 10 ** (-5 + 4 * s) };
      // within a billionth of the crown of a pipe no depth in 53 bits holds ten digits of discharge
      const depth = metres((0.01 + 0.98 * part) * Math.min(greatestDepth(section), 4));
      fc.pre(isDeepEnough(channel, depth));
      const discharge = uniformDischarge(channel, depth);
      const normal = normalDepth(channel, discharge);
      if (normal.kind !== "found") throw new Error(normal.kind);
      if (normal.depths.length > 1) several++;
      for (const y of normal.depths) {
        expect(Math.abs(uniformDischarge(channel, y) / discharge - 1)).toBeLessThan(1e-10);
      }
      const nearest = Math.min(...normal.depths.map((y) => Math.abs(y / depth - 1)));
      // where discharge turns, the depth is known to the root of its digits only
      expect(nearest).toBeLessThan(1e-6);
      expect([...normal.depths].sort((a, b) => a - b)).toEqual(normal.depths);
    }),
    { seed: 33, numRuns: 840 },
  );
  if (shape === "circular") expect(several).toBeGreaterThan(20);
  else if (shape !== "surveyed") expect(several).toBe(0);
});

describe("a pipe", () => {
  const channel: Channel = {
    section: circularSection(metres(1)),
    friction: { law: "manning", n: 0.013 },
    slope: 0.001,
  };
  const full = uniformDischarge(channel, metres(1));

  // Chow 1959 fig. 6-5, from memory: Q is greatest at 0.938 d, 1.076 of full; it equals full at 0.82 d.
  test("carries most at 0.938 of its diameter, 1.076 of full", () => {
    const more = normalDepth(channel, cubicMetresPerSecond(1.08 * full));
    if (more.kind !== "over-capacity") throw new Error(more.kind);
    expect(Math.abs(more.greatestDischarge / full - 1.076)).toBeLessThan(5e-4);
    expect(Math.abs(more.atDepth - 0.938)).toBeLessThan(5e-4);
  });

  test("has two normal depths above full flow, and one below", () => {
    const two = normalDepth(channel, cubicMetresPerSecond(1.03 * full));
    expect(two.kind === "found" && two.depths.map((y) => y > 0.938)).toEqual([false, true]);
    const one = normalDepth(channel, cubicMetresPerSecond(0.97 * full));
    expect(one.kind === "found" && one.depths).toHaveLength(1);
    const atFull = normalDepth(channel, full);
    expect(atFull.kind === "found" && Math.abs((atFull.depths[0] ?? 0) - 0.82)).toBeLessThan(5e-3);
    expect(atFull.kind === "found" && atFull.depths[1]).toBe(1);
  });
});

test("an overbank makes three of one: the main channel full, and the shallow sheet over it", () => {
  const channel: Channel = { section: overbanks, friction: { law: "manning", n: 0.03 }, slope: 0.001 };
  const normal = normalDepth(channel, cubicMetresPerSecond(30));
  if (normal.kind !== "found") throw new Error(normal.kind);
  expect(normal.depths.map((y) => y > 2)).toEqual([false, true]);
  // the sheet adds perimeter before it adds area: divided into zones there is one depth again
  const zoned = normalDepth(
    { ...channel, friction: { law: "manning-zones", method: "divided" } },
    cubicMetresPerSecond(30),
  );
  expect(zoned.kind === "found" && zoned.depths).toHaveLength(1);
});

test("a discharge inside the step of an ineffective end has no depth", () => {
  const section = surveyOf(
    [
      [0, 4],
      [0, 1],
      [20, 1],
      [20, 0],
      [25, 0],
      [25, 4],
    ],
    { ineffective: { left: { station: metres(20), elevation: metres(2) } } },
  );
  const channel: Channel = { section, friction: { law: "manning", n: 0.03 }, slope: 0.001 };
  const below = uniformDischarge(channel, metres(1.999999));
  const above = uniformDischarge(channel, metres(2));
  expect(above).toBeGreaterThan(1.5 * below);
  expect(normalDepth(channel, cubicMetresPerSecond(1.2 * below))).toEqual({
    kind: "within-step",
    atDepth: 2,
  });
});

test.each([0, -0.01])("a bed of slope %d has no normal depth, and says so", (slope) => {
  const channel: Channel = {
    section: rectangularSection(metres(2)),
    friction: { law: "manning", n: 0.03 },
    slope,
  };
  expect(normalDepth(channel, cubicMetresPerSecond(1))).toEqual({ kind: "no-slope" });
  expect(() => uniformDischarge(channel, metres(1))).toThrow(`slope must be above 0, got ${slope}`);
});

test.each(laws)("friction slope is the slope of uniform flow: %s", (law) => {
  fc.assert(
    fc.property(six, unit, unit, (numbers, x, s) => {
      const slope = 10 ** (-5 + 4 * s);
      const channel: Channel = {
        section: sectionOf("trapezoidal", numbers),
        friction: frictionOf(law, x),
        slope,
      };
      const discharge = uniformDischarge(channel, metres(0.8));
      expect(Math.abs(frictionSlope(channel, metres(0.8), discharge) / slope - 1)).toBeLessThan(1e-12);
    }),
    { seed: 34, numRuns: 200 },
  );
});

test.each([...laws, "manning-zones"] as const)(
  "conveyance has the derivative that its values have: %s",
  (law) => {
    const channel: Channel = { section: overbanks, friction: frictionOf(law, 0.2), slope: 0.002 };
    for (const depth of [0.5, 1.7, 2.4, 4]) {
      const h = 1e-6;
      const at = (y: number): number => conveyance(channel, metres(y)).conveyance;
      const slope = (at(depth + h) - at(depth - h)) / (2 * h);
      expect(Math.abs(conveyance(channel, metres(depth)).perDepth / slope - 1)).toBeLessThan(1e-6);
    }
  },
);

test("fully rough and smooth are the two ends of the transition", () => {
  const at = (friction: Friction): number =>
    uniformVelocity({ section: rectangularSection(metres(3)), friction, slope: 0.001 }, metres(1));
  const [thin, coarse] = [metres(1e-9), metres(0.1)];
  const toSmooth = at({ law: "transitional", roughness: thin, viscosity }) / at({ law: "smooth", viscosity });
  const toRough =
    at({ law: "transitional", roughness: coarse, viscosity }) / at({ law: "rough", roughness: coarse });
  expect(Math.abs(toSmooth - 1)).toBeLessThan(1e-4);
  expect(Math.abs(toRough - 1)).toBeLessThan(2e-4);
});

// C = R^(1/6)/n and f = 8 g n²/R^(1/3) are the same flow as Manning's n (Chow 1959 eq. 5-9 and 5-11).
test("Manning, Chezy and Darcy agree where their coefficients do", () => {
  const section = rectangularSection(metres(4));
  const radius = 4 / 6;
  const n = 0.03;
  const at = (friction: Friction): number =>
    uniformVelocity({ section, friction, slope: 0.003, gravity: 9.81 }, metres(1));
  const manning = at({ law: "manning", n });
  expect(Math.abs(at({ law: "chezy", c: radius ** (1 / 6) / n }) / manning - 1)).toBeLessThan(1e-14);
  expect(
    Math.abs(at({ law: "darcy", f: (8 * 9.81 * n * n) / Math.cbrt(radius) }) / manning - 1),
  ).toBeLessThan(1e-14);
});

test("shear is ρ g R S on the mean and √(τ/ρ) as a speed", () => {
  const channel: Channel = {
    section: rectangularSection(metres(4)),
    friction: { law: "manning", n: 0.03 },
    slope: 0.003,
    gravity: 10,
  };
  const shear = bedShear(channel, metres(1), kilogramsPerCubicMetre(1000));
  expect(Math.abs(shear.mean - 20)).toBeLessThan(1e-12);
  expect(Math.abs(shear.greatest - 30)).toBeLessThan(1e-12);
  expect(Math.abs(shear.shearVelocity ** 2 * 1000 - 20)).toBeLessThan(1e-12);
});

describe("degenerate input is named", () => {
  const section = rectangularSection(metres(2));
  const good: Channel = { section, friction: { law: "manning", n: 0.03 }, slope: 0.001 };
  const one = cubicMetresPerSecond(1);
  test.each([
    [() => normalDepth(good, cubicMetresPerSecond(0)), "discharge must be above 0 m³/s, got 0"],
    [
      () => normalDepth({ ...good, friction: { law: "manning", n: 0 } }, one),
      "Manning n must be above 0, got 0",
    ],
    [() => normalDepth({ ...good, friction: { law: "chezy", c: 0 } }, one), "Chezy C must be above 0, got 0"],
    [
      () => normalDepth({ ...good, friction: { law: "darcy", f: -1 } }, one),
      "Darcy friction factor must be above 0",
    ],
    [
      () => normalDepth({ ...good, friction: { law: "rough", roughness: metres(0) } }, one),
      "roughness must be above 0 m",
    ],
    [
      () => normalDepth({ ...good, friction: { law: "smooth", viscosity: squareMetresPerSecond(0) } }, one),
      "viscosity must be above 0 m²/s",
    ],
    [() => normalDepth({ ...good, gravity: 0 }, one), "gravity must be above 0 m/s²"],
    [
      () => normalDepth({ ...good, friction: { law: "manning-zones", method: "divided" } }, one),
      "section must be surveyed, with zones of roughness, got rectangular",
    ],
    [() => uniformDischarge(good, metres(0)), "depth must be above 0 m, got 0"],
    [
      () => uniformDischarge({ ...good, friction: { law: "rough", roughness: metres(20) } }, metres(1)),
      "hydraulic radius too small for the roughness",
    ],
  ])("%s", (make, message) => {
    expect(make).toThrow(message);
  });

  test.each([1e-9, 1e9])("%d of anything is answered", (extreme) => {
    for (const channel of [
      { ...good, slope: extreme },
      { ...good, friction: { law: "manning", n: extreme } as const },
      { ...good, section: rectangularSection(metres(extreme)) },
    ]) {
      const normal = normalDepth(channel, one);
      expect(normal.kind === "found" && Math.abs(uniformDischarge(channel, normal.depth) - 1)).toBeLessThan(
        1e-10,
      );
    }
    const normal = normalDepth(good, cubicMetresPerSecond(extreme));
    expect(
      normal.kind === "found" && Math.abs(uniformDischarge(good, normal.depth) / extreme - 1),
    ).toBeLessThan(1e-10);
  });
});
