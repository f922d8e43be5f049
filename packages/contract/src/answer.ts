/** How an answer says its quantities and what it rests on. */

import { z } from "@hono/zod-openapi";
import type {
  Celsius,
  Grounds,
  Kilograms,
  KilogramsPerCubicMetre,
  Metres,
  MetresPerSecond,
  Newtons,
  Radians,
  Seconds,
} from "@plumbdrift/core";
import type { Dimension, Unit } from "./quantity/units.js";
import { fromSi } from "./quantity/units.js";
import { UnitsSchema } from "./schemas/water.js";
import { ENGINE_VERSION } from "./version.js";

export type Units = z.output<typeof UnitsSchema>;

export interface Said<D extends Dimension> {
  value: number;
  unit: Unit<D>;
}

/** Says SI numbers as quantities of one unit system. */
export interface Say {
  readonly length: (si: Metres) => Said<"length">;
  /** A length of tackle: millimetres or inches. */
  readonly size: (si: Metres) => Said<"length">;
  readonly speed: (si: MetresPerSecond) => Said<"speed">;
  readonly time: (si: Seconds) => Said<"time">;
  readonly mass: (si: Kilograms) => Said<"mass">;
  readonly force: (si: Newtons) => Said<"force">;
  readonly temperature: (si: Celsius) => Said<"temperature">;
  readonly angle: (si: Radians) => Said<"angle">;
  readonly density: (si: KilogramsPerCubicMetre) => Said<"density">;
}

export function sayIn(units: Units): Say {
  const us = units === "us";
  const say =
    <D extends Dimension>(dimension: D, si: Unit<D>, other: Unit<D> = si) =>
    (value: number): Said<D> => {
      const unit = us ? other : si;
      return { value: fromSi(dimension, value, unit), unit };
    };
  return {
    length: say("length", "m", "ft"),
    size: say("length", "mm", "in"),
    speed: say("speed", "m/s", "ft/s"),
    time: say("time", "s"),
    mass: say("mass", "g", "gr"),
    force: say("force", "mN", "lbf"),
    temperature: say("temperature", "degC", "degF"),
    angle: say("angle", "deg"),
    density: say("density", "kg/m3"),
  };
}

const AssumptionSchema = z
  .strictObject({ name: z.string(), value: z.string(), basis: z.enum(["assumption", "practice", "default"]) })
  .openapi("Assumption", {
    description: "A value that no measurement gave: a default, a habit of the trade, or our own choice.",
  });

export const CaveatSchema = z
  .strictObject({
    relation: z.string().openapi({ description: "Key of the source." }),
    quantity: z.string().openapi({ description: "What is out of range, with its unit where it has one." }),
    min: z.number(),
    max: z.number(),
    received: z.number(),
  })
  .openapi("Caveat", {
    description: "A relation used outside the range it was published for. Nothing is clamped.",
  });

export const MetaSchema = z
  .strictObject({
    engine: z.string().openapi({ description: "Version of the engine that computed." }),
    units: UnitsSchema,
    relations: z.array(z.string()).openapi({ description: "Keys of the relations used." }),
    assumptions: z.array(AssumptionSchema),
    request: z
      .string()
      .openapi({ description: "Hash of the request as it was understood, and of the engine." }),
  })
  .openapi("Meta", { description: "What an answer rests on." });

export interface Footing {
  meta: z.output<typeof MetaSchema>;
  caveats: z.output<typeof CaveatSchema>[];
}

/** The two fields that end every answer. */
export const footing = {
  meta: MetaSchema,
  caveats: z.array(CaveatSchema).openapi({ description: "Relations used outside their published range." }),
} as const;

export function footingOf(grounds: Grounds, units: Units, request: string): Footing {
  return {
    meta: {
      engine: ENGINE_VERSION,
      units,
      relations: [...grounds.relations],
      assumptions: grounds.assumptions.map((a) => ({ ...a })),
      request,
    },
    caveats: grounds.caveats.map((c) => ({ ...c })),
  };
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
