/** Scale the units of length, mass and time at random: a kernel's result scales by the exponents of its dimension, or its formula is wrong. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  addedMass,
  celsius,
  cubicMetres,
  explicitWater,
  float,
  floatDraft,
  floatKernel,
  floatReserve,
  kilograms,
  kilogramsPerCubicMetre,
  line,
  lineKernel,
  metres,
  metresPerSecond,
  newtons,
  newtonsPerMetre,
  type Observation,
  rig,
  settle,
  sinker,
  sinkerKernel,
  speedProfile,
  squareMetresPerSecond,
  submergedWeight,
  terminalSpeed,
  turbulenceIntensity,
  waterColumn,
} from "./index.js";

/** What one unit of length, mass and time is worth. */
interface Scale {
  readonly L: number;
  readonly M: number;
  readonly T: number;
}
interface Exponents {
  readonly L?: number;
  readonly M?: number;
  readonly T?: number;
}

const factor = fc.double({ min: 0.7, max: 1.4, noNaN: true });
const free: fc.Arbitrary<Scale> = fc.record({ L: factor, M: factor, T: factor });
/** Gravity is written into a kernel that weighs: lengths go with the square of times. */
const weighed: fc.Arbitrary<Scale> = fc
  .record({ L: factor, M: factor })
  .map(({ L, M }) => ({ L, M, T: Math.sqrt(L) }));
const one: Scale = { L: 1, M: 1, T: 1 };

const waterOf = ({ L, M, T }: Scale) =>
  explicitWater({
    density: kilogramsPerCubicMetre((999 * M) / L ** 3),
    kinematicViscosity: squareMetresPerSecond((1.2e-6 * L * L) / T),
    temperature: celsius(12),
    surfaceTension: newtonsPerMetre((0.074 * M) / T ** 2),
  });
const sinkerOf = ({ L, M }: Scale) =>
  sinker({
    mass: kilograms(2e-4 * M),
    volume: cubicMetres(2.7e-8 * L ** 3),
    bead: metres(2.8e-3 * L),
    body: { length: metres(6e-3 * L), diameter: metres(1.8e-3 * L) },
  });
/** Density of a line and of water scale together, and by little enough for the limits of a line. */
const lineOf = ({ L, M }: Scale) => ({
  ...line({ length: metres(0.5 * L), diameter: metres(1.5e-4 * L), density: kilogramsPerCubicMetre(1780) }),
  density: kilogramsPerCubicMetre((1780 * M) / L ** 3),
});
const floatOf = ({ L, M }: Scale) =>
  float({
    length: metres(0.022 * L),
    width: metres(5e-3 * L),
    height: metres(4.5e-3 * L),
    mass: kilograms(1e-4 * M),
    treatment: 0.3,
  });
const speedOf = ({ L, T }: Scale, speed: number) => (speed * L) / T;
const columnOf = (scale: Scale, more: Partial<Observation> = { roughnessLength: metres(0.004 * scale.L) }) =>
  waterColumn({
    depth: metres(0.9 * scale.L),
    surfaceSpeed: metresPerSecond(speedOf(scale, 0.8)),
    water: waterOf(scale),
    ...more,
  });
const settledOf = (scale: Scale) =>
  settle(rig(floatOf(scale), { line: lineOf(scale), sinker: sinkerOf(scale) }), columnOf(scale));

const speed: Exponents = { L: 1, T: -1 };
const force: Exponents = { L: 1, M: 1, T: -2 };

type Kernel = readonly [name: string, exponents: Exponents, value: (scale: Scale) => number];

const kernels: readonly Kernel[] = [
  [
    "drag over speed of a sinker",
    { M: 1, T: -1 },
    (s) => sinkerKernel(sinkerOf(s), waterOf(s))(speedOf(s, 0.4), 0.3),
  ],
  ["added mass", { M: 1 }, (s) => addedMass(sinkerOf(s), waterOf(s))],
  [
    "drag across a line, over speed",
    { M: 1, L: -1, T: -1 },
    (s) => lineKernel(lineOf(s), waterOf(s)).normal(speedOf(s, 0.3)),
  ],
  [
    "drag along a line, over speed squared",
    { M: 1, L: -2 },
    (s) => lineKernel(lineOf(s), waterOf(s)).tangential,
  ],
  ["drag of a float", force, (s) => floatKernel(floatOf(s), waterOf(s)).dragAt(speedOf(s, 0.2), 2e-3 * s.L)],
  ["support of the film", force, (s) => floatKernel(floatOf(s), waterOf(s)).film],
  ["speed in a log column", speed, (s) => speedProfile(columnOf(s))(0.3 * s.L)],
  [
    "speed in a boulder column",
    speed,
    (s) => speedProfile(columnOf(s, { bed: { d84: metres(0.3 * s.L) } }))(0.3 * s.L),
  ],
  ["speed in a power column", speed, (s) => speedProfile(columnOf(s, { exponent: 6 }))(0.3 * s.L)],
  ["mean speed", speed, (s) => columnOf(s).meanSpeed],
  ["height of the mean", { L: 1 }, (s) => columnOf(s).heightOfMean],
  ["shear velocity", speed, (s) => columnOf(s).shearVelocity],
  [
    "roughness length of a smooth bed",
    { L: 1 },
    (s) => {
      const { profile } = columnOf(s, { roughness: metres(0) });
      return profile.law === "log" ? profile.roughnessLength : Number.NaN;
    },
  ],
  ["turbulence", speed, (s) => turbulenceIntensity(metresPerSecond(speedOf(s, 0.07)), 0.4).along],
];

const weighing: readonly Kernel[] = [
  ["submerged weight", force, (s) => submergedWeight(sinkerOf(s), waterOf(s))],
  ["terminal speed", speed, (s) => terminalSpeed(sinkerOf(s), waterOf(s))],
  ["weight of a metre of line", { M: 1, T: -2 }, (s) => lineKernel(lineOf(s), waterOf(s)).weight],
  ["reserve of a float", force, (s) => floatReserve(floatOf(s), waterOf(s))],
  [
    "draft of a float",
    { L: 1 },
    (s) => floatDraft(floatOf(s), waterOf(s), newtons((1e-3 * s.M * s.L) / s.T ** 2)),
  ],
  ["Froude number", {}, (s) => columnOf(s).froude],
  ["drift speed of a settled rig", speed, (s) => settledOf(s).driftSpeed],
  ["tow of a settled rig", force, (s) => settledOf(s).tow],
  ["lean of a settled rig", {}, (s) => settledOf(s).lean],
];

function scalesAs(
  [, { L = 0, M = 0, T = 0 }, value]: Kernel,
  scales: fc.Arbitrary<Scale>,
  tolerance: number,
): void {
  const base = value(one);
  expect(base).not.toBe(0);
  fc.assert(
    fc.property(scales, (scale) => {
      const expected = base * scale.L ** L * scale.M ** M * scale.T ** T;
      expect(Math.abs(value(scale) / expected - 1)).toBeLessThan(tolerance);
    }),
    { seed: 4, numRuns: 60 },
  );
}

describe("in any units of length, mass and time", () => {
  test.each(kernels)("%s", (...kernel) => scalesAs(kernel, free, 1e-9));
});

describe("in any units that leave gravity as it is", () => {
  test.each(weighing)("%s", (...kernel) => scalesAs(kernel, weighed, 1e-6));
});

test("a formula of the wrong dimension is found out", () => {
  const wrong: Kernel = ["mass for a weight", force, (s) => sinkerOf(s).mass];
  expect(() => scalesAs(wrong, free, 1e-9)).toThrow("Property failed");
});
