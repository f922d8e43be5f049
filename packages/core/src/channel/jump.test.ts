import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cubicMetresPerSecond, kilogramsPerCubicMetre, metres } from "../units/index.js";
import { criticalDepth, type Flow } from "./critical.js";
import { specificEnergy } from "./energy.js";
import { conjugateDepths, hydraulicJump, specificForce } from "./jump.js";
import { circularSection, rectangularSection } from "./section.js";
import { kinds, sectionOf } from "./sections.fixture.js";
import { greatestDepth } from "./wet.js";

const unit = fc.double({ min: 0, max: 1, noNaN: true });
const six = fc.array(unit, { minLength: 6, maxLength: 6 });
const q = cubicMetresPerSecond;
const density = kilogramsPerCubicMetre(1000);

test.each(kinds)("conjugate depths conserve specific force: %s", (shape) => {
  let found = 0;
  fc.assert(
    fc.property(
      six,
      unit,
      unit,
      fc.double({ min: 1, max: 1.2, noNaN: true }),
      (numbers, x, part, momentumCoefficient) => {
        const section = sectionOf(shape, numbers);
        const flow: Flow = { section, discharge: q(10 ** (3 * x - 2)), momentumCoefficient };
        const depth = metres((0.02 + 0.97 * part) * Math.min(greatestDepth(section), 4));
        const force = specificForce(flow, depth);
        const conjugate = conjugateDepths(flow, depth);
        if (conjugate.kind !== "found") return;
        found++;
        for (const y of conjugate.depths) {
          expect(y).not.toBe(depth);
          expect(Math.abs(specificForce(flow, metres(y)) / force - 1)).toBeLessThan(1e-12);
        }
      },
    ),
    { seed: 37, numRuns: 300 },
  );
  expect(found).toBeGreaterThan(80);
});

test.each(kinds)("the conjugate of the conjugate is the depth itself: %s", (shape) => {
  let found = 0;
  fc.assert(
    fc.property(six, unit, (numbers, x) => {
      const flow: Flow = { section: sectionOf(shape, numbers), discharge: q(10 ** (2 * x - 1)) };
      const critical = criticalDepth(flow);
      if (critical.kind !== "found" || critical.depths.length > 1) return;
      const before = metres(0.6 * critical.depth);
      const jump = hydraulicJump(flow, before, density);
      if (jump.kind !== "jump") return;
      found++;
      const back = conjugateDepths(flow, jump.after);
      const nearest =
        back.kind === "found" ? Math.min(...back.depths.map((y) => Math.abs(y / before - 1))) : 1;
      expect(nearest).toBeLessThan(1e-11);
      expect(jump.headLoss).toBeGreaterThan(0);
      expect(jump.froudeAfter).toBeLessThan(1);
    }),
    { seed: 38, numRuns: 200 },
  );
  expect(found).toBeGreaterThan(50);
});

// y2/y1 = (√(1 + 8 F²) − 1)/2 and h = (y2 − y1)³/(4 y1 y2), Chow 1959 eq. 3-21 and 3-24.
test("closed forms of the rectangle", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1.3, max: 12, noNaN: true }),
      fc.double({ min: 0.05, max: 2, noNaN: true }),
      (froude, y1) => {
        const flow: Flow = {
          section: rectangularSection(metres(3)),
          discharge: q(3 * y1 * froude * Math.sqrt(9.81 * y1)),
          gravity: 9.81,
        };
        const jump = hydraulicJump(flow, metres(y1), density);
        if (jump.kind !== "jump") throw new Error(jump.kind);
        const y2 = (y1 * (Math.sqrt(1 + 8 * froude * froude) - 1)) / 2;
        const loss = (y2 - y1) ** 3 / (4 * y1 * y2);
        expect(Math.abs(jump.after / y2 - 1)).toBeLessThan(1e-12);
        // the loss is the difference of two energies that may be a hundred times it
        expect(Math.abs(jump.headLoss - loss)).toBeLessThan(1e-12 * specificEnergy(flow, metres(y1)));
        expect(Math.abs(jump.power / (1000 * 9.81 * flow.discharge * loss) - 1)).toBeLessThan(1e-9);
      },
    ),
    { seed: 39, numRuns: 300 },
  );
});

test("what does not jump is an answer", () => {
  const flow: Flow = { section: rectangularSection(metres(1)), discharge: q(1), gravity: 1 };
  expect(hydraulicJump(flow, metres(2), density)).toMatchObject({ kind: "not-supercritical" });
  // q = 1, g = 1: critical at 1 m exactly
  expect(conjugateDepths(flow, metres(1))).toEqual({ kind: "critical" });
  const pipe: Flow = { section: circularSection(metres(1)), discharge: q(2) };
  expect(hydraulicJump(pipe, metres(0.4), density)).toEqual({ kind: "over-capacity" });
});

describe("degenerate input is named", () => {
  const flow: Flow = { section: rectangularSection(metres(1)), discharge: q(1) };
  test.each([
    [() => specificForce(flow, metres(0)), "depth must be above 0 m, got 0"],
    [
      () => conjugateDepths({ ...flow, momentumCoefficient: 0 }, metres(1)),
      "momentum coefficient must be above 0",
    ],
    [() => hydraulicJump(flow, metres(0.1), kilogramsPerCubicMetre(0)), "density must be above 0 kg/m³"],
    [
      () => hydraulicJump({ ...flow, discharge: q(0) }, metres(0.1), density),
      "discharge must be above 0 m³/s",
    ],
  ])("%s", (make, message) => {
    expect(make).toThrow(message);
  });
});
