/** A rating curve and what it reads, as an answer says them. */

import { z } from "@hono/zod-openapi";
import type { CubicMetresPerSecond, Metres, RatedDischarge, RatingCurve } from "@plumbdrift/core";
import { quantitySchemas as q, quantity } from "../quantity/schema.js";
import { type Strict, strict, type Wire } from "../quantity/wire.js";

/** The curve in plain data. */
interface Curve extends Omit<RatingCurve, "leverageAt" | "coefficient"> {
  readonly atOneMetre: CubicMetresPerSecond;
}

export type RatingReading =
  | ({ readonly kind: "flows"; readonly stage: Metres } & Omit<RatedDischarge, "caveats">)
  | { readonly kind: "no-flow"; readonly stage: Metres };

export interface RatingAnswer {
  readonly rating: Curve;
  readonly readings: readonly RatingReading[];
}

interface Between {
  readonly min: CubicMetresPerSecond;
  readonly max: CubicMetresPerSecond;
}

const BetweenSchema = strict<Wire<Between>>({ min: q.discharge, max: q.discharge }).openapi(
  "DischargeRange",
  {
    description: "An interval at the confidence asked for.",
  },
);

export const RatingAnswerSchema: Strict<Wire<RatingAnswer>> = strict<Wire<RatingAnswer>>({
  rating: strict<Wire<Curve>>({
    atOneMetre: quantity(
      "discharge",
      "One metre above zero flow. Elsewhere it goes with the height above zero flow, in metres, to the exponent.",
    ),
    exponent: z.number(),
    exponentStandardError: z.number(),
    zeroFlowStage: q.length,
    zeroFlow: z.enum(["given", "found", "at the end of the bracket"]).openapi({
      description: "At an end of the bracket it is not found: widen it.",
    }),
    scatter: z.number().openapi({ description: "Standard deviation of ln Q about the curve." }),
    freedom: z.number().int().min(0).max(1e9),
    residuals: z.array(z.number()).openapi({ description: "ln of measured over fitted, one per gauging." }),
    stages: strict<Wire<Curve["stages"]>>({ min: q.length, max: q.length }).openapi("StageRange", {
      description: "The gauged stages.",
    }),
  }).openapi("RatingCurve", { description: "Discharge as a power of the height above zero flow." }),
  readings: z.array(
    z
      .discriminatedUnion("kind", [
        strict<Wire<Extract<RatingReading, { kind: "flows" }>>>({
          kind: z.enum(["flows"]),
          stage: q.length,
          discharge: quantity("discharge", "The middle of what is expected there."),
          confidence: z.number(),
          curve: BetweenSchema,
          prediction: BetweenSchema,
        }).openapi("Rated", { description: "Where the curve lies, and where one more gauging would." }),
        strict<Wire<Extract<RatingReading, { kind: "no-flow" }>>>({
          kind: z.enum(["no-flow"]),
          stage: q.length,
        }).openapi("RatedDry", { description: "At or below the stage of zero flow." }),
      ])
      .openapi("RatingReading", { description: "The discharge at one stage." }),
  ),
});
