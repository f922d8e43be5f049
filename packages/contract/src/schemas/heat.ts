/** What the temperature of the water asks for, as an answer says it. */

import { z } from "@hono/zod-openapi";
import type { Heat, HeatCriterion } from "@plumbdrift/core";
import { encode } from "../quantity/encode.js";
import { quantity } from "../quantity/schema.js";
import type { Units } from "../quantity/units.js";
import { type Strict, strict, type Wire } from "../quantity/wire.js";

interface WireCriterion extends Wire<Omit<HeatCriterion, "source">> {
  readonly source: string;
  readonly reached: boolean;
}

export interface WireHeat extends Omit<Wire<Heat>, "grounds" | "criteria"> {
  readonly criteria: readonly WireCriterion[];
}

const CriterionSchema = strict<WireCriterion>({
  source: z.string().openapi({ description: "Key of the source." }),
  limit: quantity("temperature", "Where the criterion draws its line."),
  statistic: z.enum(["seven-day-mean-of-maxima", "sustained", "reading"]).openapi({
    description: "What it counts; one reading is not an average over days.",
  }),
  what: z.string().openapi({ description: "Of what, in words." }),
  reached: z.boolean().openapi({ description: "Whether this reading is at or above it." }),
}).openapi("HeatCriterion", { description: "A published criterion for salmonids." });

export const HeatSchema: Strict<WireHeat> = strict<WireHeat>({
  advice: z.enum(["leave", "last", "quick", "usual"]).openapi({
    description:
      "Leave trout and salmon alone, only a fish or two in the cool, quick handling, or usual care. Common practice.",
  }),
  decided: z
    .enum(["local-closure", "practice"])
    .openapi({ description: "Who decided: a closure stated in the rules goes first." }),
  handling: z.array(z.string()).openapi({ description: "What to do with the fish; grows with temperature." }),
  criteria: z.array(CriterionSchema).openapi({ description: "The lowest first." }),
  cautions: z.array(z.string()).openapi({ description: "For people at this temperature." }),
}).openapi("Heat", { description: "What the temperature of the water asks for." });

export function heatOf({ grounds: _, ...heat }: Heat, units: Units): WireHeat {
  return encode(HeatSchema, heat, units);
}
