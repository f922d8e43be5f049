/** Wading as a request and an answer say it. */

import { z } from "@hono/zod-openapi";
import type { Footing as Ground, Wader, Wading, WadingVerdict } from "@plumbdrift/core";
import { encode } from "../quantity/encode.js";
import { quantity } from "../quantity/schema.js";
import type { Units } from "../quantity/units.js";
import { type Enumeration, type Strict, strict, type Wire } from "../quantity/wire.js";

export const WaderSchema: Strict<Wire<Wader>> = strict<Wire<Wader>>({
  height: quantity("length", "Height of the person.", 0.5, 2.5, "m"),
  mass: quantity("mass", "Mass of the person.", 10, 300, "kg"),
}).openapi("Wader", {
  description:
    "Who wades: the published limits go by height times mass. Unless given, doubt begins where the smallest adult may fall.",
});

export const GroundSchema: Enumeration<Ground> = z.enum(["good", "normal", "poor"]).openapi("WadingGround", {
  description:
    "How well a person stands there: poor on slippery or uneven beds, in the dark, alone or tired. Poor unless given.",
});

const LevelSchema = z.enum(["beyond", "doubtful", "under", "silent"]).openapi("WadingLevel", {
  description:
    "Beyond a limit, doubtful where some lose their footing, under the limit, or silent where the source only says when not to. None is a permission.",
});

interface WireVerdict extends Wire<Omit<WadingVerdict, "source">> {
  readonly source: string;
}

const VerdictSchema = strict<WireVerdict>({
  source: z.string().openapi({ description: "Key of the source." }),
  level: LevelSchema,
  rests: z
    .enum(["depth-times-speed", "depth", "speed", "height-and-mass"])
    .openapi({ description: "What the level rests on." }),
  limit: quantity("unitDischarge", "Depth times speed at which this source draws its line.", "m2/s"),
  class: z.string().optional().openapi({
    description: "Of a classification of floods (streets, houses, below dams): its class. Only warns.",
  }),
}).openapi("WadingVerdict", { description: "What one source says." });

type Said = Omit<Wading, "grounds">;

export interface WireWading extends Omit<Wire<Said>, "verdicts"> {
  readonly verdicts: readonly WireVerdict[];
}

export const WadingSchema: Strict<WireWading> = strict<WireWading>({
  level: LevelSchema.openapi({ description: "The most cautious of the verdicts." }),
  product: quantity("unitDischarge", "Depth times mean speed.", "m2/s"),
  verdicts: z.array(VerdictSchema).openapi({ description: "Source by source." }),
  limits: strict<Wire<Wading["limits"]>>({
    least: quantity("unitDischarge", "Least limit of the sources.", "m2/s"),
    greatest: quantity("unitDischarge", "Greatest limit of the sources.", "m2/s"),
  }).openapi("WadingLimits", { description: "How far the sources disagree." }),
  unknown: z
    .array(z.enum(["wader", "footing"]))
    .openapi({ description: "What was not said and would change the answer." }),
  cautions: z.array(z.string()).openapi({ description: "For everyone who wades." }),
}).openapi("Wading", {
  description: "Published limits of standing in moving water, side by side. No level is a permission.",
});

export function wadingOf({ grounds: _, ...wading }: Wading, units: Units): WireWading {
  return encode(WadingSchema, wading, units);
}
