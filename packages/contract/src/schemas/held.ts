/** What holding the float back does, as an answer says it. */

import { z } from "@hono/zod-openapi";
import type { HeldPoint, HoldTarget } from "@plumbdrift/core";
import type { Say } from "../answer.js";
import { quantitySchemas as q } from "../quantity/schema.js";

export const HeldPointSchema = z
  .strictObject({
    force: q.force.openapi({ description: "Steady upstream pull on the float." }),
    driftSpeed: q.speed,
    slip: q.speed.openapi({ description: "Of the float against the foam: the thing to watch." }),
    lean: q.angle,
    excess: q.speed.openapi({ description: "Of the lowest sinker over its own water." }),
    heightAboveBed: q.length.openapi({ description: "Of the lowest sinker." }),
  })
  .openapi("HeldPoint", { description: "Where the rig settles under one pull." });

export const HoldTargetSchema = z
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

export function heldPointOf(point: HeldPoint, say: Say): z.output<typeof HeldPointSchema> {
  return {
    force: say.force(point.force),
    driftSpeed: say.speed(point.driftSpeed),
    slip: say.speed(point.slip),
    lean: say.angle(point.lean),
    excess: say.speed(point.excess),
    heightAboveBed: say.length(point.heightAboveBed),
  };
}

export function holdTargetOf(target: HoldTarget, say: Say): z.output<typeof HoldTargetSchema> {
  if (target.reach !== "held") return target;
  return { reach: "held", point: heldPointOf(target.point, say) };
}
