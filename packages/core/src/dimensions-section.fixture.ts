/** Sections of every shape, and the channels and flows in them. Gravity is an argument: every unit is free. */
import { pointsOf, surveyOf } from "./channel/sections.fixture.js";
import {
  dischargeOf,
  gravityOf,
  type Kernel,
  kernels,
  length,
  lengthOf,
  manning,
  none,
  type Scale,
} from "./dimensions-scaling.fixture.js";
import {
  type Channel,
  type CrossSection,
  circularSection,
  compositeRoughness,
  type Flow,
  type Friction,
  type KilogramsPerCubicMetre,
  kilogramsPerCubicMetre,
  type Metres,
  parabolicSection,
  rectangularSection,
  type SurveyedSection,
  sectionGeometry,
  squareMetresPerSecond,
  stripsAcross,
  surveyedSection,
  trapezoidalSection,
  triangularSection,
  velocityCoefficients,
} from "./index.js";

const manningOf = ({ L, T }: Scale, n: number): number => (n * T) / Math.cbrt(L);
const zonesOf = (s: Scale) => [
  { from: lengthOf(s, 0), manning: manningOf(s, 0.05) },
  { from: lengthOf(s, 5), manning: manningOf(s, 0.03) },
];
const ground = (s: Scale) =>
  (
    [
      [0, 3],
      [2, 1],
      [5, 0.9],
      [6, 0],
      [9, 3],
    ] as const
  ).map(([x, z]) => [x * s.L, z * s.L] as const);
export const survey = (s: Scale): SurveyedSection => surveyOf(ground(s), { zones: zonesOf(s) });
export const frictions: Readonly<Record<Friction["law"], (s: Scale) => Friction>> = {
  manning: (s) => ({ law: "manning", n: manningOf(s, 0.03) }),
  "manning-zones": () => ({ law: "manning-zones", method: "pavlovskii" }),
  chezy: ({ L, T }) => ({ law: "chezy", c: (40 * Math.sqrt(L)) / T }),
  darcy: () => ({ law: "darcy", f: 0.04 }),
  rough: (s) => ({ law: "rough", roughness: lengthOf(s, 0.02) }),
  smooth: ({ L, T }) => ({ law: "smooth", viscosity: squareMetresPerSecond((1e-6 * L * L) / T) }),
  transitional: (s) => ({
    law: "transitional",
    roughness: lengthOf(s, 0.002),
    viscosity: squareMetresPerSecond((1e-6 * s.L * s.L) / s.T),
  }),
};
export const channelOf = (s: Scale, friction: Friction = frictions.manning(s)): Channel => ({
  section: survey(s),
  friction,
  slope: 0.002,
  gravity: gravityOf(s),
});
export const flowOf = (s: Scale): Flow => ({
  section: trapezoidalSection(lengthOf(s, 3), 1.5, 2),
  discharge: dischargeOf(s, 6),
  gravity: gravityOf(s),
  energyCoefficient: 1.1,
  momentumCoefficient: 1.03,
});
export const depth = (s: Scale): Metres => lengthOf(s, 1.4);
export const density = ({ L, M }: Scale): KilogramsPerCubicMetre =>
  kilogramsPerCubicMetre((1000 * M) / L ** 3);
export const firstOf = (answer: { readonly kind: string; readonly depths?: readonly number[] }): number =>
  answer.depths?.[0] ?? Number.NaN;

const at = (section: CrossSection, s: Scale) => sectionGeometry(section, depth(s));

export const sectionKernels: readonly Kernel[] = [
  ...kernels(rectangularSection, ["area", { L: 2 }, (make, s) => at(make(lengthOf(s, 3)), s).area]),
  ...kernels(triangularSection, ["first moment", { L: 3 }, (make, s) => at(make(1.5, 0.5), s).firstMoment]),
  ...kernels(trapezoidalSection, [
    "top width",
    length,
    (make, s) => at(make(lengthOf(s, 3), 2, 1), s).topWidth,
  ]),
  ...kernels(
    circularSection,
    ["wetted perimeter", length, (make, s) => at(make(lengthOf(s, 2)), s).wettedPerimeter],
    ["hydraulic depth per depth", none, (make, s) => at(make(lengthOf(s, 2)), s).perDepth.hydraulicDepth],
    ["first moment", { L: 3 }, (make, s) => at(make(lengthOf(s, 2)), s).firstMoment],
  ),
  ...kernels(
    parabolicSection,
    ["wetted perimeter", length, (make, s) => at(make(lengthOf(s, 5), lengthOf(s, 2)), s).wettedPerimeter],
    ["top width per depth", none, (make, s) => at(make(lengthOf(s, 5), lengthOf(s, 2)), s).perDepth.topWidth],
  ),
  ...kernels(surveyedSection, [
    "greatest depth, and the table behind the area",
    { L: 3 },
    (make, s) => {
      const section = make({ points: pointsOf(ground(s)), zones: zonesOf(s) });
      return section.greatestDepth * at(section, s).area;
    },
  ]),
  ...kernels(
    sectionGeometry,
    ["area", { L: 2 }, (geometry, s) => geometry(survey(s), depth(s)).area],
    ["wetted perimeter", length, (geometry, s) => geometry(survey(s), depth(s)).wettedPerimeter],
    ["top width", length, (geometry, s) => geometry(survey(s), depth(s)).topWidth],
    ["hydraulic radius", length, (geometry, s) => geometry(survey(s), depth(s)).hydraulicRadius],
    ["hydraulic depth", length, (geometry, s) => geometry(survey(s), depth(s)).hydraulicDepth],
    ["first moment", { L: 3 }, (geometry, s) => geometry(survey(s), depth(s)).firstMoment],
    ["area per depth", length, (geometry, s) => geometry(survey(s), depth(s)).perDepth.area],
    ["perimeter per depth", none, (geometry, s) => geometry(survey(s), depth(s)).perDepth.wettedPerimeter],
    ["width per depth", none, (geometry, s) => geometry(survey(s), depth(s)).perDepth.topWidth],
    ["radius per depth", none, (geometry, s) => geometry(survey(s), depth(s)).perDepth.hydraulicRadius],
    ["moment per depth", { L: 2 }, (geometry, s) => geometry(survey(s), depth(s)).perDepth.firstMoment],
  ),
  ...kernels(
    stripsAcross,
    ["depth of a strip", length, (strips, s) => strips(survey(s), depth(s), 8)[4]?.depth ?? Number.NaN],
    ["its station", length, (strips, s) => strips(survey(s), depth(s), 8)[4]?.station ?? Number.NaN],
  ),
  ...kernels(compositeRoughness, [
    "n",
    manning,
    (composite, s) => composite(survey(s), depth(s), "horton-einstein"),
  ]),
  ...kernels(
    velocityCoefficients,
    ["α", none, (of, s) => of(survey(s), depth(s)).energy],
    ["β", none, (of, s) => of(survey(s), depth(s)).momentum],
  ),
];
