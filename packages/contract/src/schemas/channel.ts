/** A channel that runs down a slope, as a request says it, and what an answer about it rests on. */

import { z } from "@hono/zod-openapi";
import {
  type Celsius,
  type CrossSection,
  celsius,
  type Friction,
  type Grounds,
  joinGrounds,
  type SourceKey,
  type Water,
  waterAt,
} from "@plumbdrift/core";
import { quantity } from "../quantity/schema.js";
import type { Units } from "../quantity/units.js";
import { type Decoded, type Said, type Strict, strict, type Wire } from "../quantity/wire.js";
import type { Places } from "../refusal.js";
import { SectionSchema, sectionOf, type WireSection } from "./section.js";
import { UnitsSchema } from "./water.js";

type Law<L extends Friction["law"]> = Omit<Extract<Friction, { law: L }>, "units" | "viscosity">;

/** Friction with the viscosity left to the temperature. */
export type WireFriction =
  | Wire<Law<"manning">>
  | Wire<Law<"manning-zones">>
  | Wire<Law<"darcy">>
  | Wire<Law<"rough">>
  | Wire<Law<"smooth">>
  | Wire<Law<"transitional">>;

const roughness = quantity("length", "Equivalent sand roughness ks.", 1e-7, 10, "m");

export const FrictionSchema: z.ZodType<WireFriction> = z
  .discriminatedUnion("law", [
    strict<Wire<Law<"manning">>>({
      law: z.enum(["manning"]),
      n: z
        .number()
        .min(0.001)
        .max(1)
        .openapi({ description: "Manning's n in SI, which is that of feet too." }),
    }).openapi("ManningFriction", { description: "One n for the whole section." }),
    strict<Wire<Law<"manning-zones">>>({
      law: z.enum(["manning-zones"]),
      method: z.enum(["divided", "horton-einstein", "pavlovskii", "felkel"]),
    }).openapi("ZonedFriction", {
      description: "The n of each zone of a surveyed section, and how they become one.",
    }),
    strict<Wire<Law<"darcy">>>({
      law: z.enum(["darcy"]),
      f: z.number().min(0.0001).max(1000).openapi({ description: "Darcy-Weisbach f; 8 g/C² for Chezy's C." }),
    }).openapi("DarcyFriction", { description: "A constant friction factor." }),
    strict<Wire<Law<"rough">>>({ law: z.enum(["rough"]), roughness }).openapi("RoughFriction", {
      description: "A fully rough bed.",
    }),
    strict<Wire<Law<"smooth">>>({ law: z.enum(["smooth"]) }).openapi("SmoothFriction", {
      description: "A smooth bed; viscosity by the temperature.",
    }),
    strict<Wire<Law<"transitional">>>({ law: z.enum(["transitional"]), roughness }).openapi(
      "TransitionalFriction",
      { description: "Between smooth and rough; viscosity by the temperature." },
    ),
  ])
  .openapi("Friction", { description: "How the bed holds the water back." });

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
  readonly units: z.ZodOptional<z.ZodType<Units>>;
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

export function frictionOf(
  given: Decoded<WireFriction>,
  temperature: Celsius | undefined,
): { readonly friction: Friction; readonly grounds: Grounds } {
  const { water, grounds } = waterOf(temperature);
  const law = resting("Chow1959", ...(isPower(given) ? [] : (["ASCE1963"] as const)));
  if (given.law !== "smooth" && given.law !== "transitional") return { friction: given, grounds: law };
  const friction = { ...given, viscosity: water.kinematicViscosity };
  return { friction, grounds: joinGrounds(law, grounds) };
}

function isPower({ law }: Decoded<WireFriction>): boolean {
  return law === "manning" || law === "manning-zones" || law === "darcy";
}

export function waterOf(temperature: Celsius | undefined): {
  readonly water: Water;
  readonly grounds: Grounds;
} {
  const water = waterAt(temperature ?? celsius(12));
  const assumed = { name: "water temperature", value: "12 °C", basis: "default" } as const;
  return {
    water,
    grounds: { ...resting("IAPWS2011"), assumptions: temperature === undefined ? [assumed] : [] },
  };
}

/** The grounds of relations without conditions. */
export function resting(...relations: readonly SourceKey[]): Grounds {
  return { relations, assumptions: [], caveats: [] };
}
