/** fitRating: what discharge goes with what stage here? */

import { z } from "@hono/zod-openapi";
import {
  type CubicMetresPerSecond,
  cubicMetresPerSecond,
  type Gauging,
  joinGrounds,
  type Metres,
  type RatedDischarge,
  type RatingCurve,
  type ZeroFlow,
} from "@plumbdrift/core";
import { type Footing, footing } from "../answer.js";
import { ratingExamples } from "../examples-channel.js";
import { type Operation, operation } from "../operation.js";
import { encode } from "../quantity/encode.js";
import { quantitySchemas as q, quantity } from "../quantity/schema.js";
import type { Units } from "../quantity/units.js";
import { strict, type Wire } from "../quantity/wire.js";
import { channelFields, resting } from "../schemas/channel.js";

const MAX_GAUGINGS = 300;
const MAX_STAGES = 200;

type Zero =
  | { readonly kind: "known"; readonly stage: Metres }
  | { readonly kind: "between"; readonly from: Metres; readonly to: Metres };

interface Requested {
  readonly gaugings: readonly Gauging[];
  readonly zeroFlow: Zero;
  readonly stages?: readonly Metres[];
  readonly confidence?: number;
  readonly units?: Units;
}

const stage = (what: string): typeof q.length => quantity("length", what, -1000, 10_000, "m");

const Request = strict<Wire<Requested>>({
  gaugings: z
    .array(
      strict<Wire<Gauging>>({
        stage: stage("Height of the water on the gauge."),
        discharge: channelFields.discharge,
        uncertainty: z.number().min(0.0001).max(10).optional().openapi({
          description: "Relative standard uncertainty, which weights it; for all gaugings or for none.",
        }),
      }).openapi("Gauging", { description: "A discharge measured at a stage." }),
    )
    .min(3)
    .max(MAX_GAUGINGS)
    .openapi({ description: `3 to ${MAX_GAUGINGS}; 4 where zero flow is searched.` }),
  zeroFlow: z
    .discriminatedUnion("kind", [
      strict<Wire<Extract<Zero, { kind: "known" }>>>({
        kind: z.enum(["known"]),
        stage: stage("That stage."),
      }).openapi("ZeroFlowKnown", { description: "Levelled, or seen when the stream was dry." }),
      strict<Wire<Extract<Zero, { kind: "between" }>>>({
        kind: z.enum(["between"]),
        from: stage("The lowest it can be."),
        to: stage("The highest it can be, below every gauging."),
      }).openapi("ZeroFlowBetween", { description: "Searched between two stages." }),
    ])
    .openapi("ZeroFlow", { description: "The stage at which nothing flows." }),
  stages: z
    .array(stage("A stage to read."))
    .max(MAX_STAGES)
    .optional()
    .openapi({ description: `Stages to read; at most ${MAX_STAGES}.` }),
  confidence: channelFields.confidence,
  units: channelFields.units,
}).openapi("FitRatingRequest");

/** The curve in plain data. */
interface Curve extends Omit<RatingCurve, "leverageAt" | "coefficient"> {
  readonly atOneMetre: CubicMetresPerSecond;
}

type Reading =
  | ({ readonly kind: "flows"; readonly stage: Metres } & Omit<RatedDischarge, "caveats">)
  | { readonly kind: "no-flow"; readonly stage: Metres };

interface Answered {
  readonly rating: Curve;
  readonly readings: readonly Reading[];
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

const AnswerFields = {
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
        strict<Wire<Extract<Reading, { kind: "flows" }>>>({
          kind: z.enum(["flows"]),
          stage: q.length,
          discharge: quantity("discharge", "The middle of what is expected there."),
          confidence: z.number(),
          curve: BetweenSchema,
          prediction: BetweenSchema,
        }).openapi("Rated", { description: "Where the curve lies, and where one more gauging would." }),
        strict<Wire<Extract<Reading, { kind: "no-flow" }>>>({
          kind: z.enum(["no-flow"]),
          stage: q.length,
        }).openapi("RatedDry", { description: "At or below the stage of zero flow." }),
      ])
      .openapi("RatingReading", { description: "The discharge at one stage." }),
  ),
};

const Response = strict<Wire<Answered> & Footing>({ ...AnswerFields, ...footing }).openapi(
  "FitRatingResponse",
);

interface Input {
  readonly gaugings: readonly Gauging[];
  readonly zeroFlow: ZeroFlow;
  readonly stages: readonly Metres[];
  readonly confidence: number | undefined;
}

interface Result {
  readonly rating: RatingCurve;
  /** Null where nothing flows. */
  readonly readings: readonly (RatedDischarge | null)[];
}

export const fitRating: Operation<Input, Result, Wire<Answered>> = operation<
  Wire<Requested>,
  Input,
  Result,
  Wire<Answered>
>({
  id: "fitRating",
  path: "/v1/channels/ratings",
  summary: "What discharge goes with what stage here?",
  description:
    "A power of the height above zero flow by weighted least squares, read at any stage with the interval of the curve and that of one more gauging.",
  request: Request,
  response: Response,
  examples: ratingExamples,
  places: [
    ["stage of gauging #", "/gaugings/#/stage"],
    ["bracket of the stage", "/zeroFlow"],
    ["uncertainty of the gaugings", "/gaugings"],
    ["gaugings", "/gaugings"],
  ],
  toInput: ({ gaugings, zeroFlow, stages = [], confidence }) => ({ gaugings, zeroFlow, stages, confidence }),
  encode: ({ rating, readings }, units, { stages }) => ({
    answer: encode(
      strict<Wire<Answered>>(AnswerFields),
      {
        rating: { ...rating, atOneMetre: cubicMetresPerSecond(rating.coefficient) },
        readings: stages.map((at, i): Reading => {
          const reading = readings[i] ?? null;
          return reading === null ? { kind: "no-flow", stage: at } : { kind: "flows", stage: at, ...reading };
        }),
      },
      units,
    ),
    grounds: joinGrounds(
      resting("ISO1100"),
      ...readings.map((reading) => ({ ...resting(), caveats: reading?.caveats ?? [] })),
    ),
  }),
});
