/** How a flow through a section was found. */

import {
  type CubicMetresPerSecond,
  type Flow,
  type Friction,
  froudeNumber,
  type HydraulicJump,
  type Jump,
  type KilogramsPerCubicMetre,
  type Metres,
  sectionGeometry,
  specificEnergy,
  specificForce,
} from "@plumbdrift/core";
import { type Step, si, step } from "../explain.js";

interface AtDepth {
  readonly flow: Flow;
  readonly depth: Metres;
  /** What tells the symbols of several depths apart. */
  readonly mark?: string;
}

/** Speed and Froude number of a flow at a depth. */
export function stateSteps({ flow, depth, mark = "" }: AtDepth): readonly Step[] {
  const { area, topWidth } = sectionGeometry(flow.section, depth);
  const V = si("speed", flow.discharge / area);
  const A = si("area", area);
  return [
    step(`V${mark} = Q / A${mark}`, undefined, {
      [`V${mark}`]: V,
      Q: si("discharge", flow.discharge),
      [`A${mark}`]: A,
    }),
    step(`Fr${mark} = V${mark} * sqrt(a * B${mark} / (9.80665 * A${mark}))`, "Chow1959", {
      [`Fr${mark}`]: froudeNumber(flow, depth),
      [`V${mark}`]: V,
      a: flow.energyCoefficient ?? 1,
      [`B${mark}`]: si("length", topWidth),
      [`A${mark}`]: A,
    }),
  ];
}

/** Specific energy and specific force of a flow at a depth. */
export function energySteps({ flow, depth, mark = "" }: AtDepth): readonly Step[] {
  const { area, firstMoment } = sectionGeometry(flow.section, depth);
  const A = si("area", area);
  const Q = si("discharge", flow.discharge);
  return [
    step(`E${mark} = y${mark} + a * Q^2 / (2 * 9.80665 * A${mark}^2)`, "Chow1959", {
      [`E${mark}`]: si("length", specificEnergy(flow, depth)),
      [`y${mark}`]: si("length", depth),
      a: flow.energyCoefficient ?? 1,
      Q,
      [`A${mark}`]: A,
    }),
    step(`M${mark} = b * Q^2 / (9.80665 * A${mark}) + m${mark}`, "Chow1959", {
      [`M${mark}`]: si("volume", specificForce(flow, depth)),
      b: flow.momentumCoefficient ?? 1,
      Q,
      [`A${mark}`]: A,
      [`m${mark}`]: si("volume", firstMoment),
    }),
  ];
}

interface Uniform {
  readonly flow: Flow;
  readonly depth: Metres;
  readonly friction: Friction;
  readonly slope: number;
  readonly mark?: string;
}

/** Hydraulic radius and, where one Manning's n says all, the discharge that friction and slope allow; then the state. */
export function uniformSteps({ flow, depth, friction, slope, mark = "" }: Uniform): readonly Step[] {
  const { area, wettedPerimeter, hydraulicRadius } = sectionGeometry(flow.section, depth);
  const A = si("area", area);
  const R = si("length", hydraulicRadius);
  const manning = friction.law === "manning" && (friction.units ?? "si") === "si" ? friction : undefined;
  return [
    step(`R${mark} = A${mark} / P${mark}`, undefined, {
      [`R${mark}`]: R,
      [`A${mark}`]: A,
      [`P${mark}`]: si("length", wettedPerimeter),
    }),
    ...(manning === undefined
      ? []
      : [
          step(`Q = A${mark} * R${mark}^(2 / 3) * sqrt(S) / n`, "Chow1959", {
            Q: si("discharge", flow.discharge),
            [`A${mark}`]: A,
            [`R${mark}`]: R,
            S: slope,
            n: manning.n,
          }),
        ]),
    ...stateSteps({ flow, depth, mark }),
  ];
}

/** What makes a depth critical. */
export function criticalSteps(flow: Flow, depth: Metres): readonly Step[] {
  const { area, topWidth } = sectionGeometry(flow.section, depth);
  return [
    step("F2 = a * Q^2 * Bc / (9.80665 * Ac^3)", "Chow1959", {
      F2: froudeNumber(flow, depth) ** 2,
      a: flow.energyCoefficient ?? 1,
      Q: si("discharge", flow.discharge),
      Bc: si("length", topWidth),
      Ac: si("area", area),
    }),
  ];
}

/** How hard the water rubs on the bed. */
export function shearSteps(
  mean: number,
  shearVelocity: number,
  given: { readonly density: KilogramsPerCubicMetre; readonly slope: number; readonly radius: Metres },
): readonly Step[] {
  const tau = si("stress", mean);
  const rho = si("density", given.density);
  return [
    step("tau = rho * 9.80665 * R * S", undefined, {
      tau,
      rho,
      R: si("length", given.radius),
      S: given.slope,
    }),
    step("uf = sqrt(tau / rho)", undefined, { uf: si("speed", shearVelocity), tau, rho }),
  ];
}

/** A jump: equal force before and after, and what is lost. */
export function jumpSteps(
  jump: HydraulicJump,
  {
    flow,
    before,
    density,
  }: { readonly flow: Flow; readonly before: Metres; readonly density: KilogramsPerCubicMetre },
): readonly Step[] {
  if (jump.kind !== "jump") return stateSteps({ flow, depth: before, mark: "1" });
  const dE = si("length", jump.headLoss);
  const Q: CubicMetresPerSecond = flow.discharge;
  return [
    ...lossSteps(flow, { before, after: jump.after, headLoss: jump.headLoss }, ["dE", "1", "2"]),
    step("N = rho * 9.80665 * Q * dE", undefined, {
      N: si("power", jump.power),
      rho: si("density", density),
      Q: si("discharge", Q),
      dE,
    }),
  ];
}

/** State and energy of a flow at a depth. */
function wholeSteps(flow: Flow, depth: Metres, mark: string): readonly Step[] {
  return [...stateSteps({ flow, depth, mark }), ...energySteps({ flow, depth, mark })];
}

/** Both sides of a jump, and the energy that it takes. */
function lossSteps(
  flow: Flow,
  { before, after, headLoss }: Pick<Jump, "before" | "after" | "headLoss">,
  [loss, first, second]: readonly [string, string, string],
): readonly Step[] {
  return [
    ...wholeSteps(flow, before, first),
    ...wholeSteps(flow, after, second),
    step(`${loss} = E${first} - E${second}`, "Chow1959", {
      [loss]: si("length", headLoss),
      [`E${first}`]: si("length", specificEnergy(flow, before)),
      [`E${second}`]: si("length", specificEnergy(flow, after)),
    }),
  ];
}

/** Both ends of a traced surface, then its jumps. */
export function surfaceSteps(flow: Flow, depths: readonly Metres[], jumps: readonly Jump[]): readonly Step[] {
  return [
    ...depths.flatMap((depth, i) => wholeSteps(flow, depth, String(i + 1))),
    ...jumps.flatMap((jump, i) => lossSteps(flow, jump, [`dE${i + 1}`, `b${i + 1}`, `a${i + 1}`])),
  ];
}
