/** A section of any kind from six numbers between 0 and 1, and surveys from bare pairs. */

import { metres } from "../units/index.js";
import {
  type CrossSection,
  circularSection,
  parabolicSection,
  rectangularSection,
  trapezoidalSection,
  triangularSection,
} from "./section.js";
import { type Survey, type SurveyedSection, type SurveyPoint, surveyedSection } from "./survey.js";

export const kinds: readonly CrossSection["shape"][] = [
  "rectangular",
  "triangular",
  "trapezoidal",
  "circular",
  "parabolic",
  "surveyed",
];

export function sectionOf(
  shape: CrossSection["shape"],
  [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0]: readonly number[],
): CrossSection {
  const size = 10 ** (3 * a - 1);
  switch (shape) {
    case "rectangular":
      return rectangularSection(metres(size));
    case "triangular":
      return triangularSection(4 * b, 0.01 + 4 * c);
    case "trapezoidal":
      return trapezoidalSection(metres(size), 4 * b, 4 * c);
    case "circular":
      return circularSection(metres(Math.sqrt(10 * size)));
    case "parabolic":
      return parabolicSection(metres(size), metres(0.1 + 5 * b));
    case "surveyed":
      return surveyOf([
        [0, 3],
        [1 + b, 1 + c],
        [4 + b, 0.9 + c],
        [5 + d, 0.2 * inMillimetres(e)],
        [7 + d, 0],
        [8 + d, 0.3 * inMillimetres(f)],
        [8 + d, 0.6 + 0.3 * inMillimetres(f)],
        [12, 1.2 * inMillimetres(e)],
        [14 + f, 3.5],
      ]);
  }
}

/** As a level is read: no two points nearly equal. */
const inMillimetres = (x: number): number => Math.round(1000 * x) / 1000;

export function pointsOf(
  pairs: readonly (readonly [station: number, elevation: number])[],
): readonly SurveyPoint[] {
  return pairs.map(([station, elevation]) => ({ station: metres(station), elevation: metres(elevation) }));
}

export function surveyOf(
  pairs: readonly (readonly [station: number, elevation: number])[],
  more: Omit<Survey, "points"> = {},
): SurveyedSection {
  return surveyedSection({ points: pointsOf(pairs), ...more });
}

/** A main channel 10 m wide and 2 m deep between two overbanks of other roughness. */
export const overbanks: SurveyedSection = surveyOf(
  [
    [0, 5],
    [2, 2],
    [30, 2],
    [32, 0],
    [42, 0],
    [44, 2],
    [60, 2],
    [63, 5],
  ],
  {
    zones: [
      { from: metres(0), manning: 0.08 },
      { from: metres(30), manning: 0.03 },
      { from: metres(44), manning: 0.06 },
    ],
  },
);
