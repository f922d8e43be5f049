/** A water column as an answer says it. */

import { z } from "@hono/zod-openapi";
import type { Celsius, Column, ColumnLaw, KilogramsPerCubicMetre, Metres } from "@plumbdrift/core";
import { encode } from "../quantity/encode.js";
import { quantity } from "../quantity/schema.js";
import type { Units } from "../quantity/units.js";
import { plain, type Strict, strict, type Wire } from "../quantity/wire.js";
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
  depth: quantity("length", "Of the water over the spot."),
  law: LawSchema,
  parameters: strict<Wire<Parameters>>({
    roughnessLength: quantity("length", "Height at which the log law reaches zero.", "mm").optional(),
    wake: plain("Coles wake strength of log-wake.").optional(),
    dip: plain("Strength of the dip below the surface, of dip.").optional(),
    exponent: plain("Exponent m of the power law.").optional(),
    stoneSize: quantity("length", "D84 of the bed.", "mm").optional(),
    points: z.number().int().min(0).max(1000).optional().openapi({ description: "How many were used." }),
  }).openapi("LawParameters", {
    description: "What fixes the law. Only those of the law at hand are present.",
  }),
  surfaceSpeed: quantity("speed", "At the surface, as stated or fitted."),
  surfaceSpeedUncertainty: quantity(
    "speed",
    "Standard uncertainty; present when several floats were timed.",
  ).optional(),
  meanSpeed: quantity("speed", "Mean over the depth."),
  surfaceRatio: plain("Mean speed over surface speed."),
  heightOfMean: quantity("length", "Height above the bed that runs at the mean speed."),
  shearVelocity: quantity("speed", "Root of bed shear over density."),
  froude: plain("Froude number of the mean speed."),
  relativeSubmergence: plain("Depth over D84; present when the bed is known.").optional(),
  temperature: quantity("temperature", "Of the water."),
  density: quantity("density", "Of the water."),
}).openapi("Column", { description: "The water over one spot." });

export function columnOf(column: Column, units: Units): WireColumn {
  const { profile, water } = column;
  const { temperature, density } = water;
  const parameters = profile.law === "measured" ? { points: profile.points.length } : profile;
  return encode(ColumnSchema, { ...column, law: profile.law, parameters, temperature, density }, units);
}
