/** A settled rig as an answer says it. */

import { z } from "@hono/zod-openapi";
import type { Settled } from "@plumbdrift/core";
import type { Say } from "../answer.js";
import { quantitySchemas as q } from "../quantity/schema.js";

export const RegimeSchema = z.enum(["hanging", "on-bed", "drowned", "slack-water"]).openapi("Regime", {
  description:
    "hanging: clear of the bed. on-bed: the lowest sinker touches. drowned: the load is beyond what the float can carry. slack-water: no shear, it hangs plumb.",
});

const SinkerStateSchema = z
  .strictObject({
    heightAboveBed: q.length,
    depthBelowSurface: q.length,
    downstreamOfFloat: q.length,
    excess: q.speed.openapi({
      description: "Drift speed less the speed of its own water: positive when towed.",
    }),
    tension: q.force.openapi({ description: "Tension of the line just above it." }),
  })
  .openapi("SinkerState", { description: "Where a sinker hangs." });

const LinePointSchema = z
  .strictObject({ downstreamOfFloat: q.length, heightAboveBed: q.length, tension: q.force })
  .openapi("LinePoint", { description: "A point of the line." });

const BedContactSchema = z
  .strictObject({
    reaction: q.force.openapi({ description: "Upward push of the bed." }),
    friction: q.force.openapi({ description: "Positive downstream." }),
    anchored: z.boolean().openapi({ description: "Whether friction holds the rig still." }),
    lyingLine: q.length.openapi({ description: "Line that lies on the bed." }),
  })
  .openapi("BedContact", { description: "What the bed does to a rig that touches it." });

export const SettledSchema = z
  .strictObject({
    regime: RegimeSchema,
    driftSpeed: q.speed,
    slip: q.speed.openapi({
      description: "Drift speed less surface speed: negative when slower than the foam.",
    }),
    lean: q.angle.openapi({
      description: "Of the chord from the vertical, positive when the sinker trails upstream.",
    }),
    sinkers: z.array(SinkerStateSchema).openapi({ description: "From the top down." }),
    shape: z.array(LinePointSchema).openapi({ description: "The line from the float down." }),
    load: q.force.openapi({ description: "Downward pull of the line on the float." }),
    tow: q.force.openapi({ description: "Pull of the float on the line, positive downstream." }),
    draft: q.length.openapi({ description: "How deep the float sits." }),
    reserve: q.force.openapi({ description: "What the float can carry before it drowns." }),
    floatMargin: z
      .number()
      .optional()
      .openapi({ description: "Reserve over load; absent when nothing pulls." }),
    bed: BedContactSchema.optional(),
    alternative: RegimeSchema.openapi({
      description: "Another steady state that the rig also has.",
    }).optional(),
    residual: z
      .strictObject({ force: q.force, length: q.length })
      .openapi("Residual", { description: "What is left of the equations." }),
    iterations: z.number().int().min(0).max(1e9),
  })
  .openapi("Settled", { description: "Where a rig hangs once every force is in balance." });

export function settledOf(settled: Settled, say: Say): z.output<typeof SettledSchema> {
  const { bed, alternative, residual } = settled;
  return {
    regime: settled.regime,
    driftSpeed: say.speed(settled.driftSpeed),
    slip: say.speed(settled.slip),
    lean: say.angle(settled.lean),
    sinkers: settled.sinkers.map((s) => ({
      heightAboveBed: say.length(s.heightAboveBed),
      depthBelowSurface: say.length(s.depthBelowSurface),
      downstreamOfFloat: say.length(s.downstreamOfFloat),
      excess: say.speed(s.excess),
      tension: say.force(s.tension),
    })),
    shape: thinned(settled.shape).map((p) => ({
      downstreamOfFloat: say.length(p.downstreamOfFloat),
      heightAboveBed: say.length(p.heightAboveBed),
      tension: say.force(p.tension),
    })),
    load: say.force(settled.load),
    tow: say.force(settled.tow),
    draft: say.size(settled.draft),
    reserve: say.force(settled.reserve),
    ...marginOf(settled.floatMargin),
    ...(bed === null ? {} : { bed: contactOf(bed, say) }),
    ...(alternative === null ? {} : { alternative }),
    residual: { force: say.force(residual.force), length: say.length(residual.length) },
    iterations: settled.iterations,
  };
}

/** A float that nothing pulls has no margin to speak of. */
export function marginOf(floatMargin: number): { floatMargin?: number } {
  return Number.isFinite(floatMargin) ? { floatMargin } : {};
}

function contactOf(bed: NonNullable<Settled["bed"]>, say: Say): z.output<typeof BedContactSchema> {
  return {
    reaction: say.force(bed.reaction),
    friction: say.force(bed.friction),
    anchored: bed.anchored,
    lyingLine: say.length(bed.lyingLine),
  };
}

/** At most about fifty items of a list, the first and the last among them. */
export function thinned<T>(items: readonly T[], most = 50): readonly T[] {
  const every = Math.max(1, Math.ceil((items.length - 1) / most));
  return items.filter((_, i) => i % every === 0 || i === items.length - 1);
}
