/** Critical flow: the depth at which a discharge has its least energy. */

import {
  type CubicMetresPerSecond,
  type Metres,
  requirePositive,
  requireWithin,
  standardGravity,
} from "../units/index.js";
import { wetInBand } from "./conveyance.js";
import { type DepthsFor, depthsFor, type InBand, turningPieces } from "./every-root.js";
import type { Friction } from "./friction.js";
import { type CrossSection, requireDepth } from "./section.js";
import { frictionSlope } from "./uniform.js";
import { wetAt } from "./wet.js";

/** A discharge through a section. */
export interface Flow {
  readonly section: CrossSection;
  readonly discharge: CubicMetresPerSecond;
  /** m/s², standard gravity unless given: books take 9.81, 32.2 ft/s² and more. */
  readonly gravity?: number;
  /** α, what uneven speeds add to V²/2g. 1 unless given. */
  readonly energyCoefficient?: number;
  /** β, what uneven speeds add to the momentum of the flow. 1 unless given. */
  readonly momentumCoefficient?: number;
}

/** As in a survey with overbanks there may be several; `depth` is then the one of least energy. */
export type CriticalDepth = DepthsFor;

/** Every depth at which α Q² B/(g A³) = 1. Throws QuantityError for a discharge, gravity or coefficient not above 0.
 *  @example criticalDepth({ section: rectangularSection(metres(3)), discharge: cubicMetresPerSecond(5) }).depth // => 0.6567 */
export function criticalDepth(flow: Flow): CriticalDepth {
  checkFlow(flow);
  const { section, discharge, gravity = standardGravity, energyCoefficient = 1 } = flow;
  const found = criticalFor(section, discharge, gravity / energyCoefficient);
  if (found.kind !== "found" || found.depths.length === 1) return found;
  const energyAt = (y: number): number =>
    y + (energyCoefficient * (discharge / wetAt(section, y).area) ** 2) / (2 * gravity);
  const depth = found.depths.reduce((least, y) => (energyAt(y) < energyAt(least) ? y : least));
  return { ...found, depth };
}

/** Depths at which Q² B = g' A³. */
export function criticalFor(
  section: CrossSection,
  discharge: CubicMetresPerSecond,
  reduced: number,
): DepthsFor {
  const criticalDischarge: InBand = (band, y) => {
    const { area, width } = wetInBand(section, band, y);
    return area > 0 ? area * Math.sqrt((reduced * area) / width) : 0;
  };
  const rise: InBand = (band, y) => {
    const { area, width, widening } = wetInBand(section, band, y);
    return area > 0 ? (3 * width) / area - widening / width : Number.POSITIVE_INFINITY;
  };
  return depthsFor(criticalDischarge, discharge, turningPieces(section, rise));
}

/** V/√(g D/α), D the hydraulic depth. Throws QuantityError as `sectionGeometry` does.
 *  @example froudeNumber({ section: rectangularSection(metres(3.5)), discharge: cubicMetresPerSecond(12.4358) }, metres(2)) // => 0.401144 */
export function froudeNumber(flow: Flow, depth: Metres): number {
  checkFlow(flow);
  requireDepth(flow.section, depth);
  const { discharge, gravity = standardGravity, energyCoefficient = 1 } = flow;
  const { area, width } = wetAt(flow.section, depth);
  return (discharge / area) * Math.sqrt((energyCoefficient * width) / (gravity * area));
}

export type FlowClass = "subcritical" | "critical" | "supercritical";

/** Critical means within `margin` of 1 (0.001 unless given, our choice: no depth is measured better).
 *  @example flowClass(0.65) // => "subcritical" */
export function flowClass(froude: number, margin = 0.001): FlowClass {
  requireWithin("Froude number", froude, 0, Number.MAX_VALUE);
  requireWithin("margin", margin, 0, 1);
  if (Math.abs(froude - 1) <= margin) return "critical";
  return froude < 1 ? "subcritical" : "supercritical";
}

export type CriticalSlope =
  | { readonly kind: "found"; readonly slope: number; readonly depth: Metres }
  | Exclude<DepthsFor, { kind: "found" }>;

/** The slope on which the discharge runs uniformly at critical depth. */
export function criticalSlope(flow: Flow, friction: Friction): CriticalSlope {
  const critical = criticalDepth(flow);
  if (critical.kind !== "found") return critical;
  const { section, discharge, gravity = standardGravity } = flow;
  const { depth } = critical;
  return { kind: "found", depth, slope: frictionSlope({ section, friction, gravity }, depth, discharge) };
}

/** Throws QuantityError unless discharge, gravity and coefficients are above 0. */
export function checkFlow({
  discharge,
  gravity = 1,
  energyCoefficient = 1,
  momentumCoefficient = 1,
}: Flow): void {
  requirePositive("discharge", discharge, "m³/s");
  requirePositive("gravity", gravity, "m/s²");
  requirePositive("energy coefficient", energyCoefficient);
  requirePositive("momentum coefficient", momentumCoefficient);
}
