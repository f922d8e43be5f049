/** Depths at which a channel does what is asked, or why it does so at none. */

import { z } from "@hono/zod-openapi";
import type { DepthsFor, FlowClass, Metres, MetresPerSecond } from "@plumbdrift/core";
import { quantitySchemas as q, quantity } from "../quantity/schema.js";
import { type Strict, strict, type Wire } from "../quantity/wire.js";

type OverCapacity = Extract<DepthsFor, { kind: "over-capacity" }>;
type WithinStep = Extract<DepthsFor, { kind: "within-step" }>;

export const FlowClassSchema: z.ZodType<FlowClass> = z
  .enum(["subcritical", "critical", "supercritical"])
  .openapi("FlowClass", { description: "Froude number below, at or above 1." });

export const OverCapacitySchema: Strict<Wire<OverCapacity>> = strict<Wire<OverCapacity>>({
  kind: z.enum(["over-capacity"]),
  greatestDischarge: quantity("discharge", "The most that it can be at any depth of the section."),
  atDepth: q.length,
}).openapi("OverCapacity", { description: "The section cannot carry so much." });

export const WithinStepSchema: Strict<Wire<WithinStep>> = strict<Wire<WithinStep>>({
  kind: z.enum(["within-step"]),
  atDepth: quantity("length", "Where the section begins to carry more by a step."),
}).openapi("WithinStep", { description: "Less than it carries above a step, more than below it." });

interface NoSlope {
  readonly kind: "no-slope";
}

export const NoSlopeSchema: Strict<NoSlope> = strict<NoSlope>({ kind: z.enum(["no-slope"]) }).openapi(
  "NoSlope",
  {
    description: "The bed is level or rises: no depth is uniform.",
  },
);

/** A depth with how fast the discharge runs there. */
export interface FlowAtDepth {
  readonly depth: Metres;
  readonly speed: MetresPerSecond;
  readonly froude: number;
  readonly flow: FlowClass;
}

export const FlowAtDepthSchema: Strict<Wire<FlowAtDepth>> = strict<Wire<FlowAtDepth>>({
  depth: q.length,
  speed: quantity("speed", "Mean over the section."),
  froude: z.number(),
  flow: FlowClassSchema,
}).openapi("FlowAtDepth", { description: "How the discharge runs at one depth." });
