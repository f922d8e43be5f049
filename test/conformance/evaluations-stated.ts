/** Limits of validity and numbers that the model states, as the cases ask for them. */
import * as core from "@plumbdrift/core";
import type { Inputs } from "./case.js";
import { number, text } from "./inputs.js";

const ranges = {
  "surface tension": core.surfaceTensionValidity,
  sphere: core.sphereDragValidity,
  cylinder: core.cylinderDragValidity,
  "mixing layer": core.mixingLayerValidity,
  dip: core.dipValidity,
  power: core.powerValidity,
  turbulence: core.turbulenceValidity,
  wake: core.wakeValidity,
} as const;

function rangeOf(i: Inputs): core.Validity {
  const name = text(i, "of");
  const found = Object.entries(ranges).find(([key]) => key === name);
  if (found === undefined) throw new TypeError(`no range is called ${name}`);
  return found[1];
}

/** What a path of names leads to in a value; a missing one is an error. */
function at(value: unknown, ...names: readonly string[]): unknown {
  let here = value;
  for (const name of names) {
    const found =
      typeof here === "object" && here !== null && Object.entries(here).find(([key]) => key === name);
    if (!found) throw new TypeError(`nothing is called ${name}`);
    here = found[1];
  }
  return here;
}

function limitOf(i: Inputs): { readonly min: number; readonly max: number } {
  const law = core.resistanceLaws.find((one) => one.law === text(i, "law"));
  const limit = law?.limits.find((one) => one.quantity === text(i, "quantity"));
  if (limit === undefined) throw new TypeError(`no limit of ${text(i, "law")} on ${text(i, "quantity")}`);
  return limit;
}

const { metres, metresPerSecond, waterColumn } = core;
const unit = { depth: metres(1), surfaceSpeed: metresPerSecond(1) };

function gradeOf(i: Inputs): { readonly min: number; readonly max: number } {
  const name = text(i, "grade");
  const found = Object.entries(core.bedClassLimits).find(([key]) => key === name);
  if (found === undefined) throw new TypeError(`no bed is called ${name}`);
  return found[1];
}

/** z0 of the log law of an observation. */
function roughnessLength(more: Partial<core.Observation>): {
  readonly z0: number;
  readonly column: core.Column;
} {
  const column = waterColumn({ ...unit, law: "log", ...more });
  const { profile } = column;
  return { z0: profile.law === "log" ? profile.roughnessLength : Number.NaN, column };
}

const rough = { bed: { d84: metres(0.1) }, roughness: metres(0.1) };

export const statedEvaluations = {
  "least value of a range": (i: Inputs): number => rangeOf(i).min,
  "greatest value of a range": (i: Inputs): number => rangeOf(i).max,
  "least value of a law's range": (i: Inputs): number => limitOf(i).min,
  "greatest value of a law's range": (i: Inputs): number => limitOf(i).max,
  "entry of Cowan's table": (i: Inputs): number =>
    Number(at(core.cowanTable, text(i, "part"), text(i, "word"), text(i, "bound"))),
  "lower limit of a grade, mm": (i: Inputs): number => 1e3 * gradeOf(i).min,
  "upper limit of a grade, mm": (i: Inputs): number => 1e3 * gradeOf(i).max,
  "30 z0 over ks, rough bed": (_: Inputs): number => {
    const { z0, column } = roughnessLength({ roughness: metres(0.1) });
    const viscous = column.water.kinematicViscosity / (9 * column.shearVelocity);
    return (30 * (z0 - viscous)) / 0.1;
  },
  "ks over D84": (_: Inputs): number =>
    (roughnessLength({ bed: { d84: metres(0.1) } }).z0 / roughnessLength(rough).z0) * 1,
  "z0 u*/ν, smooth bed": (_: Inputs): number => {
    const { z0, column } = roughnessLength({ roughness: metres(0) });
    return (z0 * column.shearVelocity) / column.water.kinematicViscosity;
  },
  "wake strength by default": (_: Inputs): number => {
    const { profile } = waterColumn({ ...unit, law: "log-wake", bed: "pebble" });
    return profile.law === "log-wake" ? profile.wake : Number.NaN;
  },
  "exponent by default": (_: Inputs): number => {
    const { profile } = waterColumn(unit);
    return profile.law === "power" ? profile.exponent : Number.NaN;
  },
  "water temperature by default, °C": (_: Inputs): number => waterColumn(unit).water.temperature,
  "dip strength at the wall": (i: Inputs): number => {
    const { profile } = waterColumn({
      ...unit,
      law: "dip",
      bed: "pebble",
      channelWidth: metres(number(i, "width")),
    });
    return profile.law === "dip" ? profile.dip : Number.NaN;
  },
  "shear velocity over mean speed, unknown": (_: Inputs): number => {
    const points = [0, 1].map((z) => ({ heightAboveBed: core.heightAboveBed(z), speed: metresPerSecond(1) }));
    const column = waterColumn({ ...unit, points });
    return column.shearVelocity / column.meanSpeed;
  },
  "turbulence across over u*": (i: Inputs): number =>
    core.turbulenceIntensity(metresPerSecond(1), number(i, "relativeHeight")).across,
  "turbulence upright over u*": (i: Inputs): number =>
    core.turbulenceIntensity(metresPerSecond(1), number(i, "relativeHeight")).upright,
  "f (V/u*)² of an estimate": (i: Inputs): number => {
    const answer = core.resistanceOf({ hydraulicRadius: metres(0.5), d84: metres(number(i, "d84")) });
    const [first] = answer.kind === "estimated" ? answer.estimates : [];
    return first === undefined ? Number.NaN : first.frictionFactor * first.velocityRatio ** 2;
  },
  "middle of the first strip over its width": (_: Inputs): number => {
    const [strip] = core.stripsAcross(core.rectangularSection(metres(6)), metres(1), 4);
    return strip === undefined ? Number.NaN : strip.station / strip.width;
  },
  "friction over reaction on the bed": (_: Inputs): number => core.bedFriction,
  "holding height in deep water, m": (_: Inputs): number =>
    core.fishWindow(waterColumn({ ...unit, depth: metres(3) })).holding,
  "reach of a fish by default, m": (_: Inputs): number => core.fishWindow(waterColumn(unit)).reach,
  "holding height over depth, shallow": (i: Inputs): number =>
    core.fishWindow(waterColumn({ ...unit, depth: metres(number(i, "depth")) })).holding / number(i, "depth"),
} as const;
