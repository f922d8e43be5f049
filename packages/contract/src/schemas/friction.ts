/** How a bed holds its water back, as a request says it, and the water that rubs on it. */

import { z } from "@hono/zod-openapi";
import {
  type Celsius,
  celsius,
  type Friction,
  type Grounds,
  joinGrounds,
  type SourceKey,
  type Water,
  waterAt,
} from "@plumbdrift/core";
import { quantity } from "../quantity/schema.js";
import { type Decoded, strict, tag, type Wire } from "../quantity/wire.js";

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
      law: tag("manning"),
      n: z
        .number()
        .min(0.001)
        .max(1)
        .openapi({ description: "Manning's n in SI, which is that of feet too." }),
    }).openapi("ManningFriction", { description: "One n for the whole section." }),
    strict<Wire<Law<"manning-zones">>>({
      law: tag("manning-zones"),
      method: z.enum(["divided", "horton-einstein", "pavlovskii", "felkel"]).openapi({
        description: "How the zones combine: each carries its own flow, or one n stands for all.",
      }),
    }).openapi("ZonedFriction", {
      description: "The n of each zone of a surveyed section, and how they become one.",
    }),
    strict<Wire<Law<"darcy">>>({
      law: tag("darcy"),
      f: z.number().min(0.0001).max(1000).openapi({ description: "Darcy-Weisbach f; 8 g/C² for Chezy's C." }),
    }).openapi("DarcyFriction", { description: "A constant friction factor." }),
    strict<Wire<Law<"rough">>>({ law: tag("rough"), roughness }).openapi("RoughFriction", {
      description: "A fully rough bed.",
    }),
    strict<Wire<Law<"smooth">>>({ law: tag("smooth") }).openapi("SmoothFriction", {
      description: "A smooth bed; viscosity by the temperature.",
    }),
    strict<Wire<Law<"transitional">>>({ law: tag("transitional"), roughness }).openapi(
      "TransitionalFriction",
      { description: "Between smooth and rough; viscosity by the temperature." },
    ),
  ])
  .openapi("Friction", { description: "How the bed holds the water back." });

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
