/** Scale the units of length and time at random: each kernel of the room scales by the exponents of its dimension. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  cubicMetresPerSecond,
  kilogramsPerCubicMetre,
  metres,
  squareMetresPerSecond,
} from "../units/index.js";
import { compositeRoughness, velocityCoefficients } from "./composite.js";
import { criticalDepth, criticalSlope, type Flow, froudeNumber } from "./critical.js";
import { alternateDepths, minimumEnergy, specificEnergy } from "./energy.js";
import type { Friction } from "./friction.js";
import { conjugateDepths, hydraulicJump, specificForce } from "./jump.js";
import { circularSection, parabolicSection, sectionGeometry, trapezoidalSection } from "./section.js";
import { surveyOf } from "./sections.fixture.js";
import type { SurveyedSection } from "./survey.js";
import {
  bedShear,
  type Channel,
  conveyance,
  frictionSlope,
  normalDepth,
  uniformDischarge,
} from "./uniform.js";

interface Scale {
  readonly L: number;
  readonly M: number;
  readonly T: number;
}

const factor = fc.double({ min: 0.2, max: 5, noNaN: true });
const scales: fc.Arbitrary<Scale> = fc.record({ L: factor, M: factor, T: factor });

/** Manning's n goes as T/L^(1/3), Chezy's C as L^½/T. */
const manningOf = ({ L, T }: Scale, n: number): number => (n * T) / Math.cbrt(L);
const gravityOf = ({ L, T }: Scale): number => (9.81 * L) / (T * T);
const trapezoid = ({ L }: Scale) => trapezoidalSection(metres(3 * L), 1.5, 2);
const survey = (s: Scale): SurveyedSection =>
  surveyOf(
    [
      [0, 3 * s.L],
      [2 * s.L, s.L],
      [5 * s.L, 0.9 * s.L],
      [6 * s.L, 0],
      [9 * s.L, 3 * s.L],
    ],
    {
      zones: [
        { from: metres(0), manning: manningOf(s, 0.05) },
        { from: metres(5 * s.L), manning: manningOf(s, 0.03) },
      ],
    },
  );
const frictions: Readonly<Record<Friction["law"], (s: Scale) => Friction>> = {
  manning: (s) => ({ law: "manning", n: manningOf(s, 0.03) }),
  "manning-zones": () => ({ law: "manning-zones", method: "pavlovskii" }),
  chezy: ({ L, T }) => ({ law: "chezy", c: (40 * Math.sqrt(L)) / T }),
  darcy: () => ({ law: "darcy", f: 0.04 }),
  rough: ({ L }) => ({ law: "rough", roughness: metres(0.02 * L) }),
  smooth: ({ L, T }) => ({ law: "smooth", viscosity: squareMetresPerSecond((1e-6 * L * L) / T) }),
  transitional: ({ L, T }) => ({
    law: "transitional",
    roughness: metres(0.002 * L),
    viscosity: squareMetresPerSecond((1e-6 * L * L) / T),
  }),
};
const channelOf = (s: Scale, law: Friction["law"] = "manning"): Channel => ({
  section: survey(s),
  friction: frictions[law](s),
  slope: 0.002,
  gravity: gravityOf(s),
});
const dischargeOf = ({ L, T }: Scale, q = 6) => cubicMetresPerSecond((q * L ** 3) / T);
const flowOf = (s: Scale): Flow => ({
  section: trapezoid(s),
  discharge: dischargeOf(s),
  gravity: gravityOf(s),
});
const depthOf = ({ L }: Scale, depth = 1.4) => metres(depth * L);
const firstOf = (answer: { readonly kind: string; readonly depths?: readonly number[] }, n = 0): number =>
  answer.depths?.[n] ?? Number.NaN;

type Kernel = readonly [
  name: string,
  exponents: { readonly L?: number; readonly M?: number; readonly T?: number },
  value: (scale: Scale) => number,
];

const geometry = (["trapezoidal", "circular", "parabolic", "surveyed"] as const).flatMap(
  (shape): Kernel[] => {
    const of = (s: Scale) =>
      sectionGeometry(
        {
          trapezoidal: trapezoid(s),
          circular: circularSection(metres(2 * s.L)),
          parabolic: parabolicSection(metres(5 * s.L), metres(2 * s.L)),
          surveyed: survey(s),
        }[shape],
        depthOf(s),
      );
    return [
      [`area, ${shape}`, { L: 2 }, (s) => of(s).area],
      [`wetted perimeter, ${shape}`, { L: 1 }, (s) => of(s).wettedPerimeter],
      [`top width, ${shape}`, { L: 1 }, (s) => of(s).topWidth],
      [`first moment, ${shape}`, { L: 3 }, (s) => of(s).firstMoment],
      [`radius per depth, ${shape}`, {}, (s) => of(s).perDepth.hydraulicRadius],
      [`hydraulic depth per depth, ${shape}`, {}, (s) => of(s).perDepth.hydraulicDepth],
    ];
  },
);

const friction = Object.keys(frictions).flatMap((name): Kernel[] => {
  const law = Object.values(frictions)
    .map((of) => of({ L: 1, M: 1, T: 1 }).law)
    .find((known) => known === name);
  if (law === undefined) throw new Error(name);
  return [
    [`discharge, ${law}`, { L: 3, T: -1 }, (s) => uniformDischarge(channelOf(s, law), depthOf(s))],
    [
      `conveyance per depth, ${law}`,
      { L: 2, T: -1 },
      (s) => conveyance(channelOf(s, law), depthOf(s)).perDepth,
    ],
    [`normal depth, ${law}`, { L: 1 }, (s) => firstOf(normalDepth(channelOf(s, law), dischargeOf(s)))],
    [`friction slope, ${law}`, {}, (s) => frictionSlope(channelOf(s, law), depthOf(s), dischargeOf(s))],
  ];
});

const flow: readonly Kernel[] = [
  ["critical depth", { L: 1 }, (s) => firstOf(criticalDepth(flowOf(s)))],
  ["Froude number", {}, (s) => froudeNumber(flowOf(s), depthOf(s))],
  [
    "critical slope",
    {},
    (s) => {
      const critical = criticalSlope(flowOf(s), frictions.manning(s));
      return critical.kind === "found" ? critical.slope : Number.NaN;
    },
  ],
  ["specific energy", { L: 1 }, (s) => specificEnergy(flowOf(s), depthOf(s))],
  ["least energy", { L: 1 }, (s) => minimumEnergy(flowOf(s)).energy],
  ["alternate depth", { L: 1 }, (s) => firstOf(alternateDepths(flowOf(s), depthOf(s)))],
  ["specific force", { L: 3 }, (s) => specificForce(flowOf(s), depthOf(s))],
  ["conjugate depth", { L: 1 }, (s) => firstOf(conjugateDepths(flowOf(s), depthOf(s)))],
  [
    "power of a jump",
    { L: 2, M: 1, T: -3 },
    (s) => {
      const jump = hydraulicJump(flowOf(s), depthOf(s, 0.3), kilogramsPerCubicMetre((1000 * s.M) / s.L ** 3));
      return jump.kind === "jump" ? jump.power : Number.NaN;
    },
  ],
  [
    "shear on the bed",
    { L: -1, M: 1, T: -2 },
    (s) => bedShear(channelOf(s), depthOf(s), kilogramsPerCubicMetre((1000 * s.M) / s.L ** 3)).mean,
  ],
  [
    "composite roughness",
    { L: -1 / 3, T: 1 },
    (s) => compositeRoughness(survey(s), depthOf(s), "horton-einstein"),
  ],
  ["α", {}, (s) => velocityCoefficients(survey(s), depthOf(s)).energy],
];

describe("in any units of length, mass and time", () => {
  test.each([...geometry, ...friction, ...flow])("%s", (_, { L = 0, M = 0, T = 0 }, value) => {
    const base = value({ L: 1, M: 1, T: 1 });
    expect(Math.abs(base)).toBeGreaterThan(0);
    fc.assert(
      fc.property(scales, (scale) => {
        const expected = base * scale.L ** L * scale.M ** M * scale.T ** T;
        expect(Math.abs(value(scale) / expected - 1)).toBeLessThan(1e-9);
      }),
      { seed: 40, numRuns: 40 },
    );
  });
});
