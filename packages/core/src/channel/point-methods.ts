/** The mean speed of a vertical from speeds at a few depths. Fractions of the depth count from the surface. */

import type { Assumption, SourceKey } from "../sources/index.js";
import { type MetresPerSecond, metresPerSecond, requireWithin } from "../units/index.js";

/** Speeds at fractions of the depth below the surface. */
export type PointSpeeds =
  | { readonly method: "six-tenths"; readonly at60: MetresPerSecond }
  | { readonly method: "two-point"; readonly at20: MetresPerSecond; readonly at80: MetresPerSecond }
  | {
      readonly method: "three-point";
      readonly at20: MetresPerSecond;
      readonly at60: MetresPerSecond;
      readonly at80: MetresPerSecond;
    }
  | {
      readonly method: "five-point";
      readonly atSurface: MetresPerSecond;
      readonly at20: MetresPerSecond;
      readonly at60: MetresPerSecond;
      readonly at80: MetresPerSecond;
      readonly atBed: MetresPerSecond;
    }
  | {
      readonly method: "surface";
      readonly atSurface: MetresPerSecond;
      /** Mean over surface: 0.85 unless given (natural channels 0.84 to 0.90). */
      readonly coefficient?: number;
    };

export interface VerticalMean {
  readonly speed: MetresPerSecond;
  readonly relation: SourceKey;
  readonly assumptions: readonly Assumption[];
}

/** Mean speed: u0.6 · (u0.2 + u0.8)/2 · (u0.2 + 2 u0.6 + u0.8)/4 [Rantz1982] · (us + 3 u0.2 + 3 u0.6 + 2 u0.8 + ub)/10 [ISO748] · coefficient × us [Rantz1982].
 *  In a log profile the first three are high by 0.204 u*, 1 to 2 % over a stony bed; below 0.75 m the single point is the usual choice.
 *  Throws QuantityError for a surface coefficient outside 0 to 1.5.
 *  @example verticalMean({ method: "two-point", at20: metresPerSecond(0.6), at80: metresPerSecond(0.4) }).speed // => 0.5 */
export function verticalMean(points: PointSpeeds): VerticalMean {
  switch (points.method) {
    case "six-tenths":
      return mean(points.at60, "Rantz1982");
    case "two-point":
      return mean((points.at20 + points.at80) / 2, "Rantz1982");
    case "three-point":
      return mean((points.at20 + 2 * points.at60 + points.at80) / 4, "Rantz1982");
    case "five-point": {
      const { atSurface, at20, at60, at80, atBed } = points;
      return mean((atSurface + 3 * at20 + 3 * at60 + 2 * at80 + atBed) / 10, "ISO748");
    }
    case "surface": {
      const { coefficient = 0.85 } = points;
      requireWithin("surface coefficient", coefficient, 0, 1.5);
      const taken = { name: "surface coefficient", value: "0.85", basis: "default" } as const;
      return mean(
        coefficient * points.atSurface,
        "Rantz1982",
        points.coefficient === undefined ? [taken] : [],
      );
    }
  }
}

function mean(speed: number, relation: SourceKey, assumptions: readonly Assumption[] = []): VerticalMean {
  return { speed: metresPerSecond(speed), relation, assumptions };
}
