/** A channel that runs down a slope, as a request says it, and what an answer about it rests on. */

import { z } from "@hono/zod-openapi";
import type { CrossSection, Friction, Grounds, Water } from "@plumbdrift/core";
import { quantity } from "../quantity/schema.js";
import type { Units } from "../quantity/units.js";
import type { Decoded, Enumeration, Said, Strict } from "../quantity/wire.js";
import type { Places } from "../refusal.js";
import { FrictionSchema, frictionOf, type WireFriction, waterOf } from "./friction.js";
import { SectionSchema, sectionOf, type WireSection } from "./section.js";
import { UnitsSchema } from "./water.js";

/** What requests about one discharge share. */
export interface AskedFlow {
  readonly section: WireSection;
  readonly discharge: Said<"discharge">;
  readonly energyCoefficient?: number | undefined;
}

/** What requests about a channel share. */
export interface AskedChannel {
  readonly section: WireSection;
  readonly friction: WireFriction;
  readonly slope: number;
  readonly temperature?: Said<"temperature"> | undefined;
  readonly units?: Units | undefined;
}

const coefficient = (what: string): z.ZodOptional<z.ZodNumber> =>
  z
    .number()
    .min(1)
    .max(10)
    .optional()
    .openapi({ description: `${what}; 1 unless given.` });

interface ChannelFields {
  readonly section: z.ZodType<WireSection>;
  readonly friction: z.ZodType<WireFriction>;
  readonly slope: z.ZodNumber;
  readonly discharge: Strict<Said<"discharge">>;
  readonly depth: Strict<Said<"length">>;
  readonly energyCoefficient: z.ZodOptional<z.ZodNumber>;
  readonly momentumCoefficient: z.ZodOptional<z.ZodNumber>;
  readonly temperature: z.ZodOptional<Strict<Said<"temperature">>>;
  readonly confidence: z.ZodOptional<z.ZodNumber>;
  readonly units: z.ZodOptional<Enumeration<Units>>;
}

/** The fields of requests about channels, by name. */
export const channelFields: ChannelFields = {
  section: SectionSchema,
  friction: FrictionSchema,
  slope: z.number().min(-0.5).max(0.5).openapi({ description: "Fall of the bed over its length." }),
  discharge: quantity("discharge", "Discharge.", 1e-6, 1e6, "m3/s"),
  depth: quantity("length", "Depth above the lowest point of the bed.", 1e-4, 1000, "m"),
  energyCoefficient: coefficient("α, what uneven speeds add to the kinetic energy"),
  momentumCoefficient: coefficient("β, what uneven speeds add to the momentum"),
  temperature: quantity(
    "temperature",
    "Temperature of the water; 12 degC unless given.",
    0,
    40,
    "degC",
  ).optional(),
  confidence: z
    .number()
    .min(0.5)
    .max(0.9999)
    .optional()
    .openapi({ description: "Share of cases that an interval should hold; 0.95 unless given." }),
  units: UnitsSchema.optional(),
};

/** Where requests about channels say what the core names. */
export const channelPlaces: Places = [
  ["discharge", "/discharge"],
  ["slope", "/slope"],
  ["depth", "/depth"],
  ["wet area", "/depth"],
  ["top width", "/depth"],
  ["section", "/section"],
  ["roughness over 14.84", "/friction/roughness"],
  ["speed by the law of friction", "/friction"],
];

/** A channel of the core and the water in it, with the grounds of each. */
export interface Understood {
  readonly section: CrossSection;
  readonly friction: Friction;
  readonly slope: number;
  readonly water: Water;
  readonly waterGrounds: Grounds;
  /** Of the friction: with those of the water where its viscosity counts. */
  readonly grounds: Grounds;
}

export function channelOf(given: Decoded<Omit<AskedChannel, "units">>): Understood {
  const { water, grounds: waterGrounds } = waterOf(given.temperature);
  return {
    section: sectionOf(given.section),
    ...frictionOf(given.friction, given.temperature),
    slope: given.slope,
    water,
    waterGrounds,
  };
}
