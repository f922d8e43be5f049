/** One discharge in one reach of one section, in plain numbers: what gradually varied flow is made of. */

import {
  type CubicMetresPerSecond,
  type Metres,
  QuantityError,
  requirePositive,
  requireWithin,
  standardGravity,
} from "../units/index.js";
import { carrying } from "./conveyance.js";
import { criticalDepth } from "./critical.js";
import type { Friction } from "./friction.js";
import type { CrossSection } from "./section.js";
import { type NormalDepth, normalDepth } from "./uniform.js";
import { greatestDepth, wetAt } from "./wet.js";

/** A steady discharge down a prismatic reach. */
export interface ReachFlow {
  readonly section: CrossSection;
  readonly friction: Friction;
  /** Fall over length; 0 is level, below 0 rises downstream. */
  readonly slope: number;
  readonly discharge: CubicMetresPerSecond;
  /** m/s², standard gravity unless given. */
  readonly gravity?: number;
  /** α of the kinetic energy, 1 unless given. */
  readonly energyCoefficient?: number;
}

/** SI numbers. Depths that are not there: an empty list. */
export interface GradualFlow {
  readonly slope: number;
  readonly critical: number;
  readonly normals: readonly number[];
  readonly greatest: number;
  /** S0 − Sf: above 0 where the bed falls faster than friction takes. */
  readonly excessSlope: (depth: number) => number;
  readonly frictionSlope: (depth: number) => number;
  /** |1 − F²|/(S0 − Sf): distance over rise, whichever way it is followed. */
  readonly perRise: (depth: number) => number;
  /** α Q² B/(g A³). */
  readonly froudeSquared: (depth: number) => number;
  /** y + α Q²/(2 g A²). */
  readonly energy: (depth: number) => number;
  /** Q²/(g A) + A ȳ. */
  readonly force: (depth: number) => number;
  readonly speed: (depth: number) => number;
}

/** Throws QuantityError for a discharge, gravity or coefficient not above 0, a slope outside -1 to 1, or a section too small for critical flow. */
export function gradualFlow(flow: ReachFlow): GradualFlow {
  const { section, friction, slope, discharge, gravity = standardGravity, energyCoefficient = 1 } = flow;
  requirePositive("discharge", discharge, "m³/s");
  if (!(slope > -1 && slope < 1)) throw new QuantityError("slope", "between -1 and 1", slope);
  const critical = criticalDepth({ section, discharge, gravity, energyCoefficient });
  if (critical.kind !== "found")
    throw new QuantityError(
      "discharge",
      `one that the section passes at critical depth (${critical.kind})`,
      discharge,
    );
  const normal = slope > 0 ? normalDepth({ section, friction, slope, gravity }, discharge) : null;
  const { slopeAt } = carrying(section, friction, gravity);
  const frictionSlope = (y: number): number => slopeAt(y, discharge);
  const head = (energyCoefficient * discharge ** 2) / gravity;
  const froudeSquared = (y: number): number => {
    const { area, width } = wetAt(section, y);
    return (head * width) / (area * area * area);
  };
  return {
    slope,
    critical: critical.depth,
    normals: normalsOf(normal),
    greatest: greatestDepth(section),
    frictionSlope,
    excessSlope: (y) => slope - frictionSlope(y),
    perRise: (y) => Math.abs(1 - froudeSquared(y)) / (slope - frictionSlope(y)),
    froudeSquared,
    energy: (y) => y + head / (2 * wetAt(section, y).area ** 2),
    force: (y) => {
      const { area, moment } = wetAt(section, y);
      return discharge ** 2 / (gravity * area) + moment;
    },
    speed: (y) => discharge / wetAt(section, y).area,
  };
}

/** Where the section begins to carry more by a step, the flow settles at that step. */
function normalsOf(normal: NormalDepth | null): readonly number[] {
  if (normal?.kind === "within-step") return [normal.atDepth];
  return normal?.kind === "found" ? normal.depths : [];
}

/** The depth of a stretch of water is a control of the whole profile: given, or uniform, or critical there. */
export type Control = { readonly depth: Metres } | "normal" | "critical";

/** The depth of a control. Throws QuantityError for "normal" where there is none. */
export function controlDepth(control: Control, flow: GradualFlow, side: string): number {
  if (control === "critical") return flow.critical;
  if (control !== "normal") {
    requireWithin(`depth of the ${side} control`, control.depth, Number.MIN_VALUE, flow.greatest, "m");
    return control.depth;
  }
  const [depth] = flow.normals;
  if (depth === undefined)
    throw new QuantityError(`${side} control`, "a depth: there is no normal depth", control);
  return depth;
}
