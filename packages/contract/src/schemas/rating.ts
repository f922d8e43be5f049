/** A rating curve and what it reads, as an answer says them. */

import { z } from "@hono/zod-openapi";
import type { CubicMetresPerSecond, Metres, RatedDischarge, RatingCurve } from "@plumbdrift/core";
import { quantity } from "../quantity/schema.js";
import { count, plain, type Strict, strict, tag, type Wire } from "../quantity/wire.js";

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

const BetweenSchema = strict<Wire<Between>>({
  min: quantity("discharge", "Lower end."),
  max: quantity("discharge", "Upper end."),
}).openapi("DischargeRange", {
  description: "An interval at the confidence asked for.",
});

export const RatingAnswerSchema: Strict<Wire<RatingAnswer>> = strict<Wire<RatingAnswer>>({
  rating: strict<Wire<Curve>>({
    atOneMetre: quantity(
      "discharge",
      "One metre above zero flow. Elsewhere it goes with the height above zero flow, in metres, to the exponent.",
    ),
    exponent: plain("Of the height above zero flow."),
    exponentStandardError: plain("Standard error of the exponent."),
    zeroFlowStage: quantity("length", "Stage at which nothing flows, on the gauge."),
    zeroFlow: z.enum(["given", "found", "at the end of the bracket"]).openapi({
      description: "At an end of the bracket it is not found: widen it.",
    }),
    scatter: plain("Standard deviation of ln Q about the curve."),
    freedom: count("Degrees of freedom: gaugings less what was fitted."),
    residuals: z
      .array(z.number())
      .openapi({ description: "Natural logarithm of measured over fitted discharge, one for each gauging." }),
    stages: strict<Wire<Curve["stages"]>>({
      min: quantity("length", "The lowest, on the gauge."),
      max: quantity("length", "The highest, on the gauge."),
    }).openapi("StageRange", {
      description: "The gauged stages.",
    }),
  }).openapi("RatingCurve", { description: "Discharge as a power of the height above zero flow." }),
  readings: z
    .array(
      z
        .discriminatedUnion("kind", [
          strict<Wire<Extract<RatingReading, { kind: "flows" }>>>({
            kind: tag("flows"),
            stage: quantity("length", "Height of the water on the gauge."),
            discharge: quantity("discharge", "The middle of what is expected there."),
            confidence: plain("Share of cases that the intervals should hold, 0 to 1."),
            curve: BetweenSchema,
            prediction: BetweenSchema,
          }).openapi("Rated", { description: "Where the curve lies, and where one more gauging would." }),
          strict<Wire<Extract<RatingReading, { kind: "no-flow" }>>>({
            kind: tag("no-flow"),
            stage: quantity("length", "Height of the water on the gauge."),
          }).openapi("RatedDry", { description: "At or below the stage of zero flow." }),
        ])
        .openapi("RatingReading", { description: "The discharge at one stage." }),
    )
    .openapi({ description: "One for each stage asked for." }),
});
