/** What an answer rests on, and how it is named and guarded on its way out. */

import { z } from "@hono/zod-openapi";
import type { Assumption, Caveat, Grounds } from "@plumbdrift/core";
import { StepsSchema } from "./explain.js";
import type { Units } from "./quantity/units.js";
import { plain, strict } from "./quantity/wire.js";
import { UnitsSchema } from "./schemas/water.js";
import { ENGINE_VERSION } from "./version.js";

interface Meta {
  readonly engine: string;
  readonly units: Units;
  readonly relations: readonly string[];
  readonly assumptions: readonly Assumption[];
  readonly request: string;
}

interface WireCaveat extends Omit<Caveat, "relation"> {
  readonly relation: string;
}

/** The fields that end every answer; steps where they are asked for. */
export interface Footing {
  readonly meta: Meta;
  readonly caveats: readonly WireCaveat[];
  readonly steps?: z.output<typeof StepsSchema> | undefined;
}

const AssumptionSchema = strict<Assumption>({
  name: z.string().openapi({ description: "What was assumed." }),
  value: z.string().openapi({ description: "In the words of its source, SI or not." }),
  basis: z
    .enum(["assumption", "practice", "default"])
    .openapi({ description: "Our own choice, common practice of the trade, or a default of the request." }),
}).openapi("Assumption", {
  description: "A value that no measurement gave: a default, a habit of the trade, or our own choice.",
});

const CaveatSchema = strict<WireCaveat>({
  relation: z.string().openapi({ description: "Key of the source." }),
  quantity: z.string().openapi({ description: "What is out of range, with its unit where it has one." }),
  min: plain("Lower end of the published range, in the unit of the quantity."),
  max: plain("Upper end of it."),
  received: plain("What the relation was used at."),
}).openapi("Caveat", {
  description: "A relation used outside the range it was published for. Nothing is clamped.",
});

const MetaSchema = strict<Meta>({
  engine: z.string().openapi({ description: "Version of the engine that computed." }),
  units: UnitsSchema,
  relations: z.array(z.string()).openapi({ description: "Keys of the relations used." }),
  assumptions: z
    .array(AssumptionSchema)
    .openapi({ description: "What was taken for want of a measurement." }),
  request: z
    .string()
    .openapi({ description: "Hash of the request as it was understood, and of the engine." }),
}).openapi("Meta", { description: "What an answer rests on." });

type FootingFields = Omit<{ readonly [K in keyof Footing]-?: z.ZodType<Footing[K]> }, "steps"> & {
  readonly steps: z.ZodOptional<typeof StepsSchema>;
};

export const footing: FootingFields = {
  meta: MetaSchema,
  steps: StepsSchema.optional(),
  caveats: z.array(CaveatSchema).openapi({ description: "Relations used outside their published range." }),
};

export function footingOf(
  { relations, assumptions, caveats }: Grounds,
  units: Units,
  request: string,
): Footing {
  return { meta: { engine: ENGINE_VERSION, units, relations, assumptions, request }, caveats };
}

/** JSON with its keys in order: equal requests give equal text. */
export function canonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonical).join(",")}]`;
  if (typeof value !== "object" || value === null) return JSON.stringify(value) ?? "null";
  const entries = Object.entries(value).filter(([, item]) => item !== undefined);
  const sorted = entries.sort(([a], [b]) => (a < b ? -1 : 1));
  return `{${sorted.map(([key, item]) => `${JSON.stringify(key)}:${canonical(item)}`).join(",")}}`;
}

/** The pointer to the first number that is not finite, or nothing when all are. */
export function nonFinite(value: unknown, at = ""): string | undefined {
  if (typeof value === "number") return Number.isFinite(value) ? undefined : at || "/";
  if (typeof value !== "object" || value === null) return undefined;
  for (const [key, item] of Object.entries(value)) {
    const found = nonFinite(item, `${at}/${key}`);
    if (found !== undefined) return found;
  }
  return undefined;
}
