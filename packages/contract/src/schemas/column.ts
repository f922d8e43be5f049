/** A water column as an answer says it. */

import { z } from "@hono/zod-openapi";
import type { Column, Profile } from "@plumbdrift/core";
import type { Say } from "../answer.js";
import { quantitySchemas as q } from "../quantity/schema.js";
import { LawSchema } from "./water.js";

export const ColumnSchema = z
  .strictObject({
    depth: q.length,
    law: LawSchema,
    parameters: z
      .strictObject({
        roughnessLength: q.length.optional(),
        wake: z.number().optional(),
        dip: z.number().optional(),
        exponent: z.number().optional(),
        stoneSize: q.length.optional(),
        points: z.number().int().min(0).max(1000).optional().openapi({ description: "How many were used." }),
      })
      .openapi("LawParameters", {
        description: "What fixes the law. Only those of the law at hand are present.",
      }),
    surfaceSpeed: q.speed,
    surfaceSpeedUncertainty: q.speed
      .openapi({ description: "Standard uncertainty; present when several floats were timed." })
      .optional(),
    meanSpeed: q.speed.openapi({ description: "Mean over the depth." }),
    surfaceRatio: z.number().openapi({ description: "Mean speed over surface speed." }),
    heightOfMean: q.length.openapi({ description: "Height above the bed that runs at the mean speed." }),
    shearVelocity: q.speed,
    froude: z.number().openapi({ description: "Froude number of the mean speed." }),
    relativeSubmergence: z
      .number()
      .optional()
      .openapi({ description: "Depth over D84; present when the bed is known." }),
    temperature: q.temperature,
    density: q.density,
  })
  .openapi("Column", { description: "The water over one spot." });

export function columnOf(column: Column, say: Say): z.output<typeof ColumnSchema> {
  const { surfaceSpeedUncertainty: uncertainty, relativeSubmergence } = column;
  return {
    depth: say.length(column.depth),
    law: column.profile.law,
    parameters: parametersOf(column.profile, say),
    surfaceSpeed: say.speed(column.surfaceSpeed),
    ...(uncertainty === null ? {} : { surfaceSpeedUncertainty: say.speed(uncertainty) }),
    meanSpeed: say.speed(column.meanSpeed),
    surfaceRatio: column.surfaceRatio,
    heightOfMean: say.length(column.heightOfMean),
    shearVelocity: say.speed(column.shearVelocity),
    froude: column.froude,
    ...(relativeSubmergence === null ? {} : { relativeSubmergence }),
    temperature: say.temperature(column.water.temperature),
    density: say.density(column.water.density),
  };
}

function parametersOf(profile: Profile, say: Say): z.output<typeof ColumnSchema>["parameters"] {
  switch (profile.law) {
    case "power":
      return { exponent: profile.exponent };
    case "mixing-layer":
      return { stoneSize: say.length(profile.stoneSize) };
    case "measured":
      return { points: profile.points.length };
    case "log":
      return { roughnessLength: say.length(profile.roughnessLength) };
    case "log-wake":
      return { roughnessLength: say.length(profile.roughnessLength), wake: profile.wake };
    case "dip":
      return { roughnessLength: say.length(profile.roughnessLength), dip: profile.dip };
  }
}
