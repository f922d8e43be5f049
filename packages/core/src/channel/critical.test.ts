import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cubicMetresPerSecond, metres } from "../units/index.js";
import { criticalDepth, criticalSlope, type Flow, flowClass, froudeNumber } from "./critical.js";
import { rectangularSection, triangularSection } from "./section.js";
import { kinds, overbanks, sectionOf, surveyOf } from "./sections.fixture.js";
import { normalDepth } from "./uniform.js";

const unit = fc.double({ min: 0, max: 1, noNaN: true });
const six = fc.array(unit, { minLength: 6, maxLength: 6 });
const q = cubicMetresPerSecond;

test.each(kinds)("at critical depth the Froude number is 1: %s", (shape) => {
  let found = 0;
  fc.assert(
    fc.property(six, unit, fc.double({ min: 1, max: 2, noNaN: true }), (numbers, x, energyCoefficient) => {
      const flow: Flow = {
        section: sectionOf(shape, numbers),
        discharge: q(10 ** (4 * x - 2)),
        energyCoefficient,
      };
      const critical = criticalDepth(flow);
      if (critical.kind !== "found") return;
      found++;
      for (const y of critical.depths) {
        // so full that the surface is narrower than the digits of a depth
        if (flow.section.shape === "circular" && y > (1 - 1e-6) * flow.section.diameter) continue;
        expect(Math.abs(froudeNumber(flow, y) - 1)).toBeLessThan(1e-9);
      }
    }),
    { seed: 35, numRuns: 300 },
  );
  expect(found).toBeGreaterThan(150);
});

// y_c = (α q²/g)^(1/3) in a rectangle, (2 α Q²/(g m²))^(1/5) in a V of equal banks: from α Q² B = g A³.
test("closed forms of the rectangle and the V", () => {
  const flow: Flow = {
    section: rectangularSection(metres(4)),
    discharge: q(7),
    gravity: 9.81,
    energyCoefficient: 1.2,
  };
  const rectangle = criticalDepth(flow);
  const exact = Math.cbrt((1.2 * (7 / 4) ** 2) / 9.81);
  expect(rectangle.kind === "found" && Math.abs(rectangle.depth / exact - 1)).toBeLessThan(1e-14);
  const v = criticalDepth({ ...flow, section: triangularSection(3) });
  const exactV = ((2 * 1.2 * 49) / (9.81 * 9)) ** 0.2;
  expect(v.kind === "found" && Math.abs(v.depth / exactV - 1)).toBeLessThan(1e-14);
});

test("a survey with overbanks has two critical depths and names the one of least energy", () => {
  const low = criticalDepth({ section: overbanks, discharge: q(60) });
  const high = criticalDepth({ section: overbanks, discharge: q(80) });
  expect(low.kind === "found" && low.depths.map((y) => y > 2)).toEqual([false, true]);
  expect(low.kind === "found" && low.depth < 2).toBe(true);
  expect(high.kind === "found" && high.depth > 2).toBe(true);
});

test("more than a survey can pass is over its capacity", () => {
  const v = surveyOf([
    [0, 1],
    [1, 0],
    [2, 1],
  ]);
  const critical = criticalDepth({ section: v, discharge: q(100), gravity: 9.81 });
  // √(g A³/B) at its brim: A = 1, B = 2
  expect(critical).toMatchObject({ kind: "over-capacity", atDepth: 1 });
  expect(
    critical.kind === "over-capacity" && Math.abs(critical.greatestDischarge - Math.sqrt(9.81 / 2)),
  ).toBeLessThan(1e-14);
});

test("on the critical slope normal depth is critical", () => {
  const flow: Flow = { section: sectionOf("trapezoidal", [0.4, 0.3, 0.5]), discharge: q(6) };
  const friction = { law: "manning", n: 0.03 } as const;
  const critical = criticalSlope(flow, friction);
  if (critical.kind !== "found") throw new Error(critical.kind);
  const normal = normalDepth({ section: flow.section, friction, slope: critical.slope }, flow.discharge);
  expect(normal.kind === "found" && Math.abs(normal.depth / critical.depth - 1)).toBeLessThan(1e-12);
});

describe("the class of a flow", () => {
  test.each([
    [0, "subcritical"],
    [0.9989, "subcritical"],
    [0.9995, "critical"],
    [1, "critical"],
    [1.0005, "critical"],
    [1.2, "supercritical"],
  ] as const)("%d is %s", (froude, name) => {
    expect(flowClass(froude)).toBe(name);
  });

  test.each([Number.NaN, -1])("%d has none", (froude) => {
    expect(() => flowClass(froude)).toThrow("Froude number must be from 0");
  });
});

describe("degenerate input is named", () => {
  const section = rectangularSection(metres(1));
  test.each([
    [() => criticalDepth({ section, discharge: q(0) }), "discharge must be above 0 m³/s, got 0"],
    [() => criticalDepth({ section, discharge: q(1), gravity: -1 }), "gravity must be above 0 m/s²"],
    [
      () => criticalDepth({ section, discharge: q(1), energyCoefficient: 0 }),
      "energy coefficient must be above 0",
    ],
    [() => froudeNumber({ section, discharge: q(1) }, metres(0)), "depth must be above 0 m, got 0"],
  ])("%s", (make, message) => {
    expect(make).toThrow(message);
  });

  test.each([1e-9, 1e9])("a discharge and a width of %d are answered", (extreme) => {
    for (const flow of [
      { section, discharge: q(extreme) },
      { section: rectangularSection(metres(extreme)), discharge: q(1) },
    ]) {
      const critical = criticalDepth(flow);
      expect(critical.kind === "found" && Math.abs(froudeNumber(flow, critical.depth) - 1)).toBeLessThan(
        1e-12,
      );
    }
  });
});
