/** How far a measured discharge may be off, from the stated uncertainties of what went into it. */

import {
  type CubicMetresPerSecond,
  cubicMetresPerSecond,
  requirePositive,
  requireWithin,
} from "../units/index.js";
import type { MeasuredDischarge } from "./discharge.js";

/** Relative standard uncertainties (0.01 is 1 %), each stated by whoever measured. None has a default. */
export interface DischargeComponents {
  /** Calibration of tape, sounding and meter together: common to all verticals. */
  readonly calibration: number;
  /** That the section is known only at so many verticals. */
  readonly verticals: number;
  /** Of one width, one depth. */
  readonly width: number;
  readonly depth: number;
  /** That the speed of a vertical is known only at so many points. */
  readonly points: number;
  /** Calibration of the meter at the speed of one point. */
  readonly meter: number;
  /** Pulsation of the water during the exposure at one point. */
  readonly exposure: number;
  /** Points measured in each vertical. */
  readonly pointsPerVertical: number;
}

export interface DischargeUncertainty {
  /** Standard uncertainty over discharge. */
  readonly relative: number;
  readonly standard: CubicMetresPerSecond;
  /** Coverage factor k times the standard uncertainty. */
  readonly expanded: CubicMetresPerSecond;
  readonly coverageFactor: number;
  /** Share of the variance that each component has, adding up to 1 (all 0 where the variance is 0). */
  readonly shares: Readonly<Record<Exclude<keyof DischargeComponents, "pointsPerVertical">, number>>;
}

/** u²(Q)/Q² = u_m² + u_s² + Σ q_i² (u_b² + u_d² + u_p² + (u_c² + u_e²)/n)/(Σ q_i)², over the panels of a measurement; expanded by k = 2 unless given.
 *  Structure of [ISO748] annex on uncertainty, combined as [JCGM100] 5.1. Correlated errors of neighbouring panels are only in u_s.
 *  Throws QuantityError for a component outside 0 to 1, fewer than one point, or a discharge of 0. */
export function dischargeUncertainty(
  measured: Pick<MeasuredDischarge, "panels" | "discharge">,
  components: DischargeComponents,
  coverageFactor = 2,
): DischargeUncertainty {
  checkComponents(components);
  requirePositive("coverage factor", coverageFactor);
  const q = Math.abs(measured.discharge);
  requirePositive("discharge", q, "m³/s");
  // 1/m for m equal panels
  const concentration = measured.panels.reduce((sum, p) => sum + (p.discharge / q) ** 2, 0);
  const perPoint = concentration / components.pointsPerVertical;
  const variances = {
    calibration: components.calibration ** 2,
    verticals: components.verticals ** 2,
    width: concentration * components.width ** 2,
    depth: concentration * components.depth ** 2,
    points: concentration * components.points ** 2,
    meter: perPoint * components.meter ** 2,
    exposure: perPoint * components.exposure ** 2,
  };
  const variance = Object.values(variances).reduce((sum, v) => sum + v, 0);
  const relative = Math.sqrt(variance);
  const share = (v: number): number => (variance === 0 ? 0 : v / variance);
  return {
    relative,
    standard: cubicMetresPerSecond(relative * q),
    expanded: cubicMetresPerSecond(coverageFactor * relative * q),
    coverageFactor,
    shares: {
      calibration: share(variances.calibration),
      verticals: share(variances.verticals),
      width: share(variances.width),
      depth: share(variances.depth),
      points: share(variances.points),
      meter: share(variances.meter),
      exposure: share(variances.exposure),
    },
  };
}

function checkComponents({ pointsPerVertical, ...components }: DischargeComponents): void {
  for (const [name, value] of Object.entries(components)) {
    requireWithin(`relative uncertainty of ${name}`, value, 0, 1);
  }
  requireWithin("points in each vertical", pointsPerVertical, 1, 1000);
}
