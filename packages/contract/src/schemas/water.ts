/** What a person can see at the water, as a request says it. */

import { z } from "@hono/zod-openapi";
import {
  type BedClass,
  type ColumnLaw,
  heightAboveBed,
  type MeasuredPoint,
  type Metres,
  type Observation,
  type TimedFloat,
} from "@plumbdrift/core";
import { encode } from "../quantity/encode.js";
import { quantity } from "../quantity/schema.js";
import type { Units } from "../quantity/units.js";
import { type Decoded, type Enumeration, type Strict, strict, type Wire } from "../quantity/wire.js";
import { RefusedError } from "../refusal.js";

/** An observation with its D84 beside its grade, and no water of stated properties. */
interface Seen extends Omit<Observation, "bed" | "water"> {
  readonly bed?: BedClass;
  readonly d84?: Metres;
}

export type WireWater = Wire<Seen>;

export const UnitsSchema: Enumeration<Units> = z
  .enum(["si", "us"])
  .openapi("Units", { description: "The system the answer speaks: SI unless asked otherwise." });

export const LawSchema: Enumeration<ColumnLaw> = z
  .enum(["log", "log-wake", "dip", "power", "mixing-layer", "measured"])
  .openapi("Law", {
    description: "How speed grows with height above the bed.",
  });

const TimedFloatSchema = strict<Wire<TimedFloat>>({
  distance: quantity("length", "Distance that it drifted.", 0.1, 1000, "m"),
  time: quantity("time", "Time that it took.", 0.1, 3600, "s"),
}).openapi("TimedFloat", { description: "One run of something that drifts on the surface." });

const MeasuredPointSchema = strict<Wire<MeasuredPoint>>({
  heightAboveBed: quantity("length", "Height above the bed; at most the depth.", 0, 50, "m"),
  speed: quantity("speed", "Speed of the water there.", 0, 10, "m/s"),
}).openapi("MeasuredPoint", { description: "A speed measured at a height above the bed." });

export const WaterSchema: Strict<WireWater> = strict<WireWater>({
  depth: quantity("length", "Depth of the water over the spot.", 0.01, 50, "m"),
  surfaceSpeed: quantity("speed", "Speed of the surface over the spot.", 0, 10, "m/s").optional(),
  timedFloats: z.array(TimedFloatSchema).min(1).max(50).optional().openapi({
    description: "Timed runs on the surface, in place of surfaceSpeed. Several give an uncertainty.",
  }),
  points: z
    .array(MeasuredPointSchema)
    .min(2)
    .max(200)
    .optional()
    .openapi({ description: "Speeds measured at two heights or more: used as they are." }),
  bed: z
    .enum(["silt", "sand", "granule", "pebble", "cobble", "boulder"])
    .optional()
    .openapi({ description: "Wentworth grade of the bed. Give this or d84, not both." }),
  d84: quantity("length", "Size that 84 % of the stones stay below.", 0.001, 10_000, "mm").optional(),
  roughness: quantity("length", "Equivalent sand roughness; 3.5 d84 unless given.", 0, 10, "m").optional(),
  roughnessLength: quantity(
    "length",
    "Height at which the log law reaches zero; overrides roughness.",
    1e-6,
    10,
    "m",
  ).optional(),
  wake: z.number().min(-0.5).max(2).optional().openapi({ description: "Coles wake strength of log-wake." }),
  exponent: z
    .number()
    .min(1)
    .max(100)
    .optional()
    .openapi({ description: "Exponent m of the power law; 6 unless given." }),
  channelWidth: quantity("length", "Width of the channel.", 0.01, 10_000, "m").optional(),
  slope: z.number().min(0).max(1).optional().openapi({ description: "Fall of the surface over its length." }),
  temperature: quantity(
    "temperature",
    "Temperature of the water; 12 degC unless given.",
    0,
    40,
    "degC",
  ).optional(),
  law: LawSchema.optional().openapi({
    description: "Forces a law in place of the choice by depth over d84.",
  }),
}).openapi("Water", {
  description:
    "Depth, a speed of the surface, and whatever else is known. All but depth and one speed can be left out.",
});

/** What the core calls an observation. */
export function observationOf({ d84, points, bed, ...water }: Decoded<WireWater>): Observation {
  if (bed !== undefined && d84 !== undefined) {
    throw new RefusedError("impossible", "The bed has a grade or a D84, one of the two.", {
      path: "/water/d84",
      expected: "bed or d84, one of the two",
      received: "both",
    });
  }
  const grade = d84 === undefined ? bed : { d84 };
  return {
    ...water,
    ...(grade === undefined ? {} : { bed: grade }),
    ...(points === undefined
      ? {}
      : {
          points: points.map((p) => ({ heightAboveBed: heightAboveBed(p.heightAboveBed), speed: p.speed })),
        }),
  };
}

/** An observation as a request would say it. */
export function waterOf({ bed, ...observation }: Observation, units: Units): WireWater {
  if (bed === undefined) return encode(WaterSchema, observation, units);
  const stones = typeof bed === "object" ? { d84: bed.d84 } : { bed };
  return encode(WaterSchema, { ...observation, ...stones }, units);
}
