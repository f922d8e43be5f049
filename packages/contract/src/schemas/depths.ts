/** Depths at which a channel does what is asked, or why it does so at none. */

import { z } from "@hono/zod-openapi";
import type { DepthsFor, FlowClass, Metres, MetresPerSecond } from "@plumbdrift/core";
import { quantity } from "../quantity/schema.js";
import { type Enumeration, plain, type Strict, strict, tag, type Wire } from "../quantity/wire.js";

type OverCapacity = Extract<DepthsFor, { kind: "over-capacity" }>;
type WithinStep = Extract<DepthsFor, { kind: "within-step" }>;

export const FlowClassSchema: Enumeration<FlowClass> = z
  .enum(["subcritical", "critical", "supercritical"])
  .openapi("FlowClass", { description: "Froude number below, at or above 1." });

export const OverCapacitySchema: Strict<Wire<OverCapacity>> = strict<Wire<OverCapacity>>({
  kind: tag("over-capacity"),
  greatestDischarge: quantity("discharge", "The most that it can be at any depth of the section."),
  atDepth: quantity("length", "Depth above the lowest point of the bed at which it is so."),
}).openapi("OverCapacity", { description: "The section cannot carry so much." });

export const WithinStepSchema: Strict<Wire<WithinStep>> = strict<Wire<WithinStep>>({
  kind: tag("within-step"),
  atDepth: quantity("length", "Where the section begins to carry more by a step."),
}).openapi("WithinStep", { description: "Less than it carries above a step, more than below it." });

interface NoSlope {
  readonly kind: "no-slope";
}

export const NoSlopeSchema: Strict<NoSlope> = strict<NoSlope>({ kind: tag("no-slope") }).openapi("NoSlope", {
  description: "The bed is level or rises: no depth is uniform.",
});

/** A depth with how fast the discharge runs there. */
export interface FlowAtDepth {
  readonly depth: Metres;
  readonly speed: MetresPerSecond;
  readonly froude: number;
  readonly flow: FlowClass;
}

export const FlowAtDepthSchema: Strict<Wire<FlowAtDepth>> = strict<Wire<FlowAtDepth>>({
  depth: quantity("length", "Above the lowest point of the bed."),
  speed: quantity("speed", "Mean over the section."),
  froude: plain("Froude number: 1 is critical."),
  flow: FlowClassSchema,
}).openapi("FlowAtDepth", { description: "How the discharge runs at one depth." });
