/** How the speed over a spot was found. */

import { type Column, lawSource, type Observation, vonKarman } from "@plumbdrift/core";
import { ln, tanh } from "@plumbdrift/core/elementary";
import { type Step, si, step } from "../explain.js";

/** From the shape of the law to mean speed, shear velocity and Froude number. */
export function columnSteps(column: Column, { slope }: Pick<Observation, "slope">): readonly Step[] {
  const { profile, depth, surfaceSpeed, meanSpeed, surfaceRatio, shearVelocity, froude } = column;
  const h = si("length", depth);
  const us = si("speed", surfaceSpeed);
  const U = si("speed", meanSpeed);
  return [
    ...shapeSteps(column),
    step("U = r * us", lawSource[profile.law], { U, r: surfaceRatio, us }),
    ...(slope === undefined
      ? shearSteps(column)
      : [
          step("uf = sqrt(9.80665 * h * S)", undefined, {
            uf: si("speed", shearVelocity),
            h,
            S: slope,
          }),
        ]),
    step("Fr = U / sqrt(9.80665 * h)", undefined, { Fr: froude, U, h }),
  ];
}

/** Surface and mean of the shape, where they have a closed form. */
function shapeSteps({ profile, depth, surfaceRatio }: Column): readonly Step[] {
  const relation = lawSource[profile.law];
  const h = si("length", depth);
  switch (profile.law) {
    case "power":
      return [step("r = m / (m + 1)", relation, { r: surfaceRatio, m: profile.exponent })];
    case "mixing-layer": {
      const D = si("length", profile.stoneSize);
      const gs = 1 + tanh((depth - profile.stoneSize) / profile.stoneSize);
      return [
        step("gs = 1 + tanh((h - D) / D)", relation, { gs, h, D }),
        step("gm = 1 + D / h * (ln(cosh((h - D) / D)) - ln(cosh(1)))", relation, {
          gm: surfaceRatio * gs,
          h,
          D,
        }),
      ];
    }
    case "log":
    case "log-wake": {
      const z0 = si("length", profile.roughnessLength);
      const log = ln(depth / profile.roughnessLength);
      if (profile.law === "log") {
        return [
          step("gs = ln(h / z0)", relation, { gs: log, h, z0 }),
          step("gm = ln(h / z0) - 1 + z0 / h", relation, { gm: surfaceRatio * log, h, z0 }),
        ];
      }
      const gs = log + 2 * profile.wake;
      return [step("gs = ln(h / z0) + 2 * W", relation, { gs, h, z0, W: profile.wake })];
    }
    default:
      return [];
  }
}

function shearSteps({ profile, surfaceSpeed, meanSpeed, shearVelocity, depth }: Column): readonly Step[] {
  const uf = si("speed", shearVelocity);
  const us = si("speed", surfaceSpeed);
  switch (profile.law) {
    case "power":
      return [
        step("uf = k * U / m", "ZimmermannKennedy1978", {
          uf,
          k: vonKarman,
          U: si("speed", meanSpeed),
          m: profile.exponent,
        }),
      ];
    case "mixing-layer": {
      const gs = 1 + tanh((depth - profile.stoneSize) / profile.stoneSize);
      return [step("uf = us / gs / 4.5", "Katul2002", { uf, us, gs })];
    }
    case "log":
    case "log-wake": {
      const log = ln(depth / profile.roughnessLength);
      const gs = profile.law === "log" ? log : log + 2 * profile.wake;
      return [step("uf = k * us / gs", lawSource[profile.law], { uf, k: vonKarman, us, gs })];
    }
    default:
      return [];
  }
}
