/** A water surface as an answer says it. */

import { z } from "@hono/zod-openapi";
import type { DepthsFor, Jump, SurfacePoint, SurfaceProfile } from "@plumbdrift/core";
import { quantity } from "../quantity/schema.js";
import { plain, strict, tag, type Wire } from "../quantity/wire.js";
import { OverCapacitySchema, WithinStepSchema } from "./depths.js";

type Traced = { readonly kind: "traced" } & SurfaceProfile;
/** The profile, or why there is none. */
export type Surface = Traced | Exclude<DepthsFor, { kind: "found" }>;

const PointSchema = strict<Wire<SurfacePoint>>({
  distance: quantity("length", "Along the bed from the upstream end."),
  depth: quantity("length", "Above the lowest point of the bed."),
  speed: quantity("speed", "Mean over the section."),
  froude: plain("Froude number: 1 is critical."),
  specificEnergy: quantity("length", "Depth and velocity head."),
  frictionSlope: plain("Fall of the energy over length."),
  curve: z
    .enum(["M1", "M2", "M3", "S1", "S2", "S3", "C1", "C3", "H2", "H3", "A2", "A3", "uniform", "critical"])
    .openapi({ description: "Its kind: the slope, and where it lies against normal and critical depth." }),
  residual: quantity("length", "Energy gained beyond what bed and friction give: how exact it is.", "mm"),
}).openapi("SurfacePoint", { description: "The water at one distance." });

export const SurfaceSchema: z.ZodType<Wire<Surface>> = z
  .discriminatedUnion("kind", [
    strict<Wire<Traced>>({
      kind: tag("traced"),
      points: z.array(PointSchema).openapi({ description: "A jump has two points at one distance." }),
      jumps: z
        .array(
          strict<Wire<Jump>>({
            distance: quantity("length", "Along the bed from the upstream end."),
            before: quantity("length", "Depth just upstream of it."),
            after: quantity("length", "Depth just downstream of it."),
            headLoss: quantity("length", "Energy before less energy after, as a height of water."),
          }).openapi("SurfaceJump", {
            description: "Taken as of no length: about six times the depth behind it in truth.",
          }),
        )
        .openapi({ description: "From upstream to downstream." }),
      unused: z.array(z.enum(["upstream", "downstream"])).openapi({
        description: "Controls that the water from the other end drowns, or does not reach.",
      }),
    }).openapi("SurfaceTraced", { description: "The whole profile." }),
    OverCapacitySchema,
    WithinStepSchema,
  ])
  .openapi("Surface", { description: "The profile, or why the section does not pass the discharge." });
