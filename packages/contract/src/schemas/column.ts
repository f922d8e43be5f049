/** A water column as an answer says it. */

import { z } from "@hono/zod-openapi";
import type { Celsius, Column, ColumnLaw, KilogramsPerCubicMetre, Metres } from "@plumbdrift/core";
import { encode } from "../quantity/encode.js";
import { quantitySchemas as q, quantity } from "../quantity/schema.js";
import type { Units } from "../quantity/units.js";
import { type Strict, strict, type Wire } from "../quantity/wire.js";
import { LawSchema } from "./water.js";

interface Parameters {
  readonly roughnessLength?: Metres;
  readonly wake?: number;
  readonly dip?: number;
  readonly exponent?: number;
  readonly stoneSize?: Metres;
  readonly points?: number;
}

/** The column with its water and the parameters of its law laid open. */
interface Said extends Omit<Column, "profile" | "water" | "grounds"> {
  readonly law: ColumnLaw;
  readonly parameters: Parameters;
  readonly temperature: Celsius;
  readonly density: KilogramsPerCubicMetre;
}

export type WireColumn = Wire<Said>;

export const ColumnSchema: Strict<WireColumn> = strict<WireColumn>({
  depth: q.length,
  law: LawSchema,
  parameters: strict<Wire<Parameters>>({
    roughnessLength: quantity("length", "Height at which the log law reaches zero.", "mm").optional(),
    wake: z.number().optional(),
    dip: z.number().optional(),
    exponent: z.number().optional(),
    stoneSize: quantity("length", "D84 of the bed.", "mm").optional(),
    points: z.number().int().min(0).max(1000).optional().openapi({ description: "How many were used." }),
  }).openapi("LawParameters", {
    description: "What fixes the law. Only those of the law at hand are present.",
  }),
  surfaceSpeed: q.speed,
  surfaceSpeedUncertainty: quantity(
    "speed",
    "Standard uncertainty; present when several floats were timed.",
  ).optional(),
  meanSpeed: quantity("speed", "Mean over the depth."),
  surfaceRatio: z.number().openapi({ description: "Mean speed over surface speed." }),
  heightOfMean: quantity("length", "Height above the bed that runs at the mean speed."),
  shearVelocity: q.speed,
  froude: z.number().openapi({ description: "Froude number of the mean speed." }),
  relativeSubmergence: z
    .number()
    .optional()
    .openapi({ description: "Depth over D84; present when the bed is known." }),
  temperature: q.temperature,
  density: q.density,
}).openapi("Column", { description: "The water over one spot." });

export function columnOf(column: Column, units: Units): WireColumn {
  const { profile, water } = column;
  const { temperature, density } = water;
  const parameters = profile.law === "measured" ? { points: profile.points.length } : profile;
  return encode(ColumnSchema, { ...column, law: profile.law, parameters, temperature, density }, units);
}
