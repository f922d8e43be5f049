/** What holding the float back does, as an answer says it. */

import { z } from "@hono/zod-openapi";
import type { HeldPoint, HoldTarget } from "@plumbdrift/core";
import { quantitySchemas as q, quantity } from "../quantity/schema.js";
import { type Strict, strict, type Wire } from "../quantity/wire.js";

export const HeldPointSchema: Strict<Wire<HeldPoint>> = strict<Wire<HeldPoint>>({
  force: quantity("force", "Steady upstream pull on the float."),
  driftSpeed: q.speed,
  slip: quantity("speed", "Of the float against the foam: the thing to watch."),
  lean: q.angle,
  excess: quantity("speed", "Of the lowest sinker over its own water."),
  heightAboveBed: quantity("length", "Of the lowest sinker."),
}).openapi("HeldPoint", { description: "Where the rig settles under one pull." });

export const HoldTargetSchema: z.ZodType<Wire<HoldTarget>> = z
  .discriminatedUnion("reach", [
    z
      .strictObject({ reach: z.enum(["held"]), point: HeldPointSchema })
      .openapi("HoldReached", { description: "This pull does it." }),
    z
      .strictObject({ reach: z.enum(["unneeded"]) })
      .openapi("HoldUnneeded", { description: "It drifts so with nothing held." }),
    z
      .strictObject({ reach: z.enum(["unreachable"]), reason: z.string() })
      .openapi("HoldUnreachable", { description: "No pull does it." }),
  ])
  .openapi("HoldTarget", { description: "The pull that does it, that none is needed, or why none does." });
