/** The shape of a channel across the stream, and what the water fills of it at a depth. */

import {
  type CubicMetres,
  cubicMetres,
  type Metres,
  metres,
  QuantityError,
  requirePositive,
  type SquareMetres,
  squareMetres,
} from "../units/index.js";
import type { SurveyedSection } from "./survey.js";
import { greatestDepth, wetAt } from "./wet.js";

/** Banks are given as run over rise: metres sideways for each metre up. 0 is a wall. */
export type PrismaticSection =
  | { readonly shape: "rectangular"; readonly width: Metres }
  | { readonly shape: "triangular"; readonly leftRun: number; readonly rightRun: number }
  | {
      readonly shape: "trapezoidal";
      readonly bottomWidth: Metres;
      readonly leftRun: number;
      readonly rightRun: number;
    }
  | { readonly shape: "circular"; readonly diameter: Metres }
  /** As wide as `width` where it is `depth` deep; width goes with the root of depth. */
  | { readonly shape: "parabolic"; readonly width: Metres; readonly depth: Metres };

export type CrossSection = PrismaticSection | SurveyedSection;

/** What the water fills of a section at a depth, with the derivative of each against depth. */
export interface SectionGeometry {
  readonly depth: Metres;
  readonly area: SquareMetres;
  readonly wettedPerimeter: Metres;
  readonly topWidth: Metres;
  /** Area over wetted perimeter. */
  readonly hydraulicRadius: Metres;
  /** Area over top width. */
  readonly hydraulicDepth: Metres;
  /** First moment of the area about the surface: area times the depth of its centroid. */
  readonly firstMoment: CubicMetres;
  /** Derivatives against depth, in SI: m²/m, m/m, m³/m. Where the bed has a flat or a step, those of the water just above it. */
  readonly perDepth: {
    readonly area: number;
    readonly wettedPerimeter: number;
    readonly topWidth: number;
    readonly hydraulicRadius: number;
    readonly hydraulicDepth: number;
    readonly firstMoment: number;
  };
}

/** Throws QuantityError unless the width is above 0. */
export function rectangularSection(width: Metres): PrismaticSection {
  requirePositive("width", width, "m");
  return { shape: "rectangular", width };
}

/** A V. Throws QuantityError for a negative run, or two walls. */
export function triangularSection(leftRun: number, rightRun: number = leftRun): PrismaticSection {
  requireRuns(leftRun, rightRun);
  requirePositive("run of the two banks", leftRun + rightRun);
  return { shape: "triangular", leftRun, rightRun };
}

/** Throws QuantityError unless the bottom is wider than 0 and both runs are at least 0. */
export function trapezoidalSection(
  bottomWidth: Metres,
  leftRun: number,
  rightRun: number = leftRun,
): PrismaticSection {
  requirePositive("bottom width", bottomWidth, "m");
  requireRuns(leftRun, rightRun);
  return { shape: "trapezoidal", bottomWidth, leftRun, rightRun };
}

/** A pipe, up to its crown. Throws QuantityError unless the diameter is above 0. */
export function circularSection(diameter: Metres): PrismaticSection {
  requirePositive("diameter", diameter, "m");
  return { shape: "circular", diameter };
}

/** A parabola through a known width at a known depth. Throws QuantityError unless both are above 0. */
export function parabolicSection(width: Metres, depth: Metres): PrismaticSection {
  requirePositive("width", width, "m");
  requirePositive("depth of the given width", depth, "m");
  return { shape: "parabolic", width, depth };
}

function requireRuns(left: number, right: number): void {
  for (const [name, run] of [
    ["left", left],
    ["right", right],
  ] as const) {
    if (!(run >= 0 && run < Number.POSITIVE_INFINITY)) {
      throw new QuantityError(`run of the ${name} bank`, "at least 0 and finite", run);
    }
  }
}

/** Area, wetted perimeter, top width, hydraulic radius and depth, first moment about the surface, and their derivatives.
 *  Depth is above the lowest point. Throws QuantityError for a depth at or below 0, above the section (the crown of a pipe,
 *  the lower end of a survey without walls), or where nothing that carries water is wet. [Chow1959] table 2-1.
 *  @example sectionGeometry(trapezoidalSection(metres(3), 1.5), metres(1.5)).area // => 7.875 */
export function sectionGeometry(section: CrossSection, depth: Metres): SectionGeometry {
  requireDepth(section, depth);
  const { area, perimeter, width, moment, widening, steepening } = wetAt(section, depth);
  requirePositive("top width of the water", width, "m");
  const radius = area / perimeter;
  return {
    depth,
    area: squareMetres(area),
    wettedPerimeter: metres(perimeter),
    topWidth: metres(width),
    hydraulicRadius: metres(radius),
    hydraulicDepth: metres(area / width),
    firstMoment: cubicMetres(moment),
    perDepth: {
      area: width,
      wettedPerimeter: steepening,
      topWidth: widening,
      hydraulicRadius: (width - radius * steepening) / perimeter,
      hydraulicDepth: 1 - (area / width) * (widening / width),
      firstMoment: area,
    },
  };
}

/** Throws QuantityError unless the section can be filled to this depth and carries water there. */
export function requireDepth(section: CrossSection, depth: number): void {
  requirePositive("depth", depth, "m");
  const greatest = greatestDepth(section);
  if (depth > greatest) {
    const why = section.shape === "circular" ? "the diameter" : "the lower end of the survey";
    throw new QuantityError("depth", `at most ${greatest} m, ${why}`, depth);
  }
  requirePositive("wet area", wetAt(section, depth).area, "m²");
}
