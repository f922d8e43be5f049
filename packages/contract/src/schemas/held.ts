/** What holding the float back does, as an answer says it. */

import { z } from "@hono/zod-openapi";
import type { HeldPoint, HoldTarget } from "@plumbdrift/core";
import { quantity } from "../quantity/schema.js";
import { type Strict, strict, tag, type Wire } from "../quantity/wire.js";

export const HeldPointSchema: Strict<Wire<HeldPoint>> = strict<Wire<HeldPoint>>({
  force: quantity("force", "Steady upstream pull on the float."),
  driftSpeed: quantity("speed", "Of the whole rig, along the stream."),
  slip: quantity("speed", "Of the float against the foam: the thing to watch."),
  lean: quantity("angle", "Of the chord from the vertical, positive when the sinker trails upstream."),
  excess: quantity("speed", "Of the lowest sinker over its own water."),
  heightAboveBed: quantity("length", "Height above the bed of the lowest sinker."),
}).openapi("HeldPoint", { description: "Where the rig settles under one pull." });

export const HoldTargetSchema: z.ZodType<Wire<HoldTarget>> = z
  .discriminatedUnion("reach", [
    z
      .strictObject({ reach: tag("held"), point: HeldPointSchema })
      .openapi("HoldReached", { description: "This pull does it." }),
    z
      .strictObject({ reach: tag("unneeded") })
      .openapi("HoldUnneeded", { description: "It drifts so with nothing held." }),
    z
      .strictObject({
        reach: tag("unreachable"),
        reason: z.string().openapi({ description: "Why, in words." }),
      })
      .openapi("HoldUnreachable", { description: "No pull does it." }),
  ])
  .openapi("HoldTarget", { description: "The pull that does it, that none is needed, or why none does." });
