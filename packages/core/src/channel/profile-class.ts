/** The name of a water surface: what kind of slope it lies on, and where it lies against normal and critical depth. */

import type { Metres } from "../units/index.js";
import { type GradualFlow, gradualFlow, type ReachFlow } from "./gradual.js";

export type SlopeClass = "mild" | "steep" | "critical" | "horizontal" | "adverse";

export type CurveName =
  | "M1"
  | "M2"
  | "M3"
  | "S1"
  | "S2"
  | "S3"
  | "C1"
  | "C3"
  | "H2"
  | "H3"
  | "A2"
  | "A3"
  | "uniform"
  | "critical";

export interface ProfileClass {
  readonly slope: SlopeClass;
  readonly curve: CurveName;
}

/** How near two depths or slopes must be to count as one. */
const same = 1e-9;

/** Mild where normal depth is above critical, steep where it is below; zone 1 above both, 2 between, 3 below both. [Chow1959] sec. 9-4.
 *  A section that cannot carry the discharge uniformly at any depth counts as mild.
 *  @example profileClass({ section: rectangularSection(metres(3)), friction: { law: "manning", n: 0.025 }, slope: 0.002, discharge: cubicMetresPerSecond(5) }, metres(1)).curve // => "M2" */
export function profileClass(flow: ReachFlow, depth: Metres): ProfileClass {
  const gradual = gradualFlow(flow);
  return { slope: slopeClass(gradual), curve: curveName(gradual, depth) };
}

export function slopeClass({ slope, critical, excessSlope }: GradualFlow): SlopeClass {
  if (slope === 0) return "horizontal";
  if (slope < 0) return "adverse";
  const excess = excessSlope(critical);
  if (Math.abs(excess) <= same * slope) return "critical";
  return excess < 0 ? "mild" : "steep";
}

const letters = { mild: "M", steep: "S", critical: "C", horizontal: "H", adverse: "A" } as const;

export function curveName(flow: GradualFlow, depth: number): CurveName {
  const near = (other: number): boolean => Math.abs(depth - other) <= same * other;
  if (flow.normals.some(near)) return "uniform";
  if (near(flow.critical)) return "critical";
  const slope = slopeClass(flow);
  const aboveCritical = depth > flow.critical;
  // friction takes less than the bed gives: deeper than normal, whatever the number of normal depths
  const aboveNormal = flow.excessSlope(depth) > 0;
  switch (slope) {
    case "horizontal":
    case "adverse":
      return `${letters[slope]}${aboveCritical ? 2 : 3}`;
    case "critical":
      return aboveCritical ? "C1" : "C3";
    case "mild":
    case "steep":
      return `${letters[slope]}${aboveCritical && aboveNormal ? 1 : aboveCritical || aboveNormal ? 2 : 3}`;
  }
}
