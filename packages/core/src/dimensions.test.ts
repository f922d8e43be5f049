/** Scale the units of length, mass and time at random: a kernel's result scales by the exponents of its dimension, or its formula is wrong.
 *  Every exported function has such a kernel, or a reason here. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { columnKernels, weighedColumnKernels } from "./dimensions-column.fixture.js";
import { driftKernels, heldKernels } from "./dimensions-drift.fixture.js";
import { flowKernels } from "./dimensions-flow.fixture.js";
import { gaugedKernels, searchedKernels } from "./dimensions-gauged.fixture.js";
import { outingKernels } from "./dimensions-outing.fixture.js";
import { dragKernels, tackleKernels, weighedRigKernels } from "./dimensions-rig.fixture.js";
import { resistanceKernels, riverKernels, solvedKernels } from "./dimensions-river.fixture.js";
import { force, type Kernel, kernels, one, type Scale } from "./dimensions-scaling.fixture.js";
import { sectionKernels } from "./dimensions-section.fixture.js";
import * as core from "./index.js";
import * as numerics from "./numerics/index.js";
import * as sources from "./sources/index.js";
import * as units from "./units/index.js";

const factor = fc.double({ min: 0.7, max: 1.4, noNaN: true });
/** Every unit on its own: for kernels in which gravity has no part or is an argument. */
const free: fc.Arbitrary<Scale> = fc.record({ L: factor, M: factor, T: factor });
/** Gravity is written into the kernel: lengths go with the square of times, so that it stays as it is. */
const weighed: fc.Arbitrary<Scale> = fc
  .record({ L: factor, M: factor })
  .map(({ L, M }) => ({ L, M, T: Math.sqrt(L) }));
/** Gravity and a time are written into the kernel: the unit of mass alone is free. */
const massOnly: fc.Arbitrary<Scale> = factor.map((M) => ({ L: 1, M, T: 1 }));

function scalesAs(
  { exponents: { L = 0, M = 0, T = 0 }, value }: Kernel,
  scales: fc.Arbitrary<Scale>,
  tolerance: number,
): void {
  const base = value(one);
  expect(Math.abs(base)).toBeGreaterThan(0);
  fc.assert(
    fc.property(scales, (scale) => {
      const expected = base * scale.L ** L * scale.M ** M * scale.T ** T;
      expect(Math.abs(value(scale) / expected - 1)).toBeLessThan(tolerance);
    }),
    { seed: 4, numRuns: 40 },
  );
}

const freely = [
  ...sectionKernels,
  ...flowKernels,
  ...gaugedKernels,
  ...riverKernels,
  ...columnKernels,
  ...dragKernels,
  ...tackleKernels,
  ...outingKernels,
];
const solved = [...solvedKernels, ...searchedKernels];
const keepingGravity = [...resistanceKernels, ...weighedColumnKernels, ...weighedRigKernels];
const rows = (all: readonly Kernel[]) => all.map((one) => [one.title, one] as const);

describe("in any units of length, mass and time", () => {
  test.each(rows(freely))("%s", (_, one) => scalesAs(one, free, 1e-9));
  test.each(rows(solved))("%s", (_, one) => scalesAs(one, free, 1e-6));
});

describe("in any units that leave gravity as it is", () => {
  test.each(rows(keepingGravity))("%s", (_, one) => scalesAs(one, weighed, 1e-6));
  test.each(rows(heldKernels))("%s", (_, one) => scalesAs(one, weighed, 1e-5));
});

describe("in any unit of mass", () => {
  test.each(rows(driftKernels))("%s", (_, one) => scalesAs(one, massOnly, 1e-6));
});

test("a formula of the wrong dimension is found out", () => {
  for (const wrong of kernels(units.kilograms, ["mass for a weight", force, (run, s) => run(s.M)])) {
    expect(() => scalesAs(wrong, free, 1e-9)).toThrow("Property failed");
  }
});

/** Why an exported function has no kernel. */
const reasons: Readonly<Record<string, readonly (keyof typeof core)[]>> = {
  "keeps what it is given": ["line", "sinker", "float", "rig", "land"],
  "of numbers without dimension": [
    "cylinderDrag",
    "sphereDrag",
    "dragCoefficient",
    "flowClass",
    "manningFactor",
  ],
  "a table of words": ["chowRoughness", "cowanRoughness"],
  "a table in millimetres by hook size": ["hook", "greatestBead", "buildNymph", "buildDry"],
  "a scale of trade: X is inches": ["tippetDiameter"],
  text: [
    "mostCautious",
    "nymphName",
    "describeDry",
    "describeNymph",
    "describeTippet",
    "findingMessage",
    "remedyMessage",
    "sayInSi",
    "inUnit",
  ],
  "of days, counts and a temperature as they are stated": ["judgeRules"],
  "fitted to temperature, in SI": ["waterAt", "waterDensity", "waterViscosity", "waterSurfaceTension"],
  "a fit that is not homogeneous: n goes as R^-0.16 of feet, where its dimension asks for R^(1/6)": [
    "jarrettRoughness",
  ],
  "a fit that is not homogeneous: millimetres of prey, centimetres of fish": [
    "reactionDistance",
    "captureSuccess",
    "juvenileCapture",
  ],
  "a fit in turbidity units": ["turbidityFactor"],
  "fits in metres, kilograms and seconds, and what is read off them": [
    "heightTimesMass",
    "abtProduct",
    "karvonenProduct",
    "coxBands",
    "hazardRating",
    "floodVerdicts",
    "wade",
    "heat",
  ],
  "of tackle in its own sizes; what it ranks by is scaled above": [
    "judge",
    "inOrder",
    "changeBetween",
    "rankSetups",
    "check",
    "adjustRig",
  ],
};

/** Units are straight lines by their own tests; numerics and sources know no dimension. */
const withoutDimension = new Set(Object.keys({ ...numerics, ...sources, ...units }));
const exported = Object.entries(core).filter(
  ([name, value]) => typeof value === "function" && !withoutDimension.has(name),
);
const scaled = new Set<unknown>(
  [...freely, ...solved, ...keepingGravity, ...heldKernels, ...driftKernels].map(({ run }) => run),
);

describe("every exported function", () => {
  test.each(exported)("%s is scaled, or has a reason not to be", (name, run) => {
    const given = Object.values(reasons)
      .flat()
      .filter((one) => one === name).length;
    expect(given + Number(scaled.has(run))).toBe(1);
  });

  test("and no reason is for one that is gone", () => {
    const names = exported.map(([name]) => name);
    expect(
      Object.values(reasons)
        .flat()
        .filter((name) => !names.includes(name)),
    ).toEqual([]);
  });
});
