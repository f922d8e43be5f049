/** fitRating: what discharge goes with what stage here? */

import { z } from "@hono/zod-openapi";
import {
  cubicMetresPerSecond,
  type Gauging,
  joinGrounds,
  type Metres,
  type RatedDischarge,
  type RatingCurve,
  type ZeroFlow,
} from "@plumbdrift/core";
import { type Footing, footing } from "../answer.js";
import { ratingExamples } from "../examples-measured.js";
import { ratingSteps } from "../explanations/measured.js";
import { type Operation, operation } from "../operation.js";
import { paths } from "../paths.js";
import { encode } from "../quantity/encode.js";
import { type quantitySchemas as q, quantity } from "../quantity/schema.js";
import type { Units } from "../quantity/units.js";
import { strict, tag, type Wire } from "../quantity/wire.js";
import { channelFields } from "../schemas/channel.js";
import { resting } from "../schemas/friction.js";
import { type RatingAnswer, RatingAnswerSchema, type RatingReading } from "../schemas/rating.js";

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
        kind: tag("known"),
        stage: stage("That stage."),
      }).openapi("ZeroFlowKnown", { description: "Levelled, or seen when the stream was dry." }),
      strict<Wire<Extract<Zero, { kind: "between" }>>>({
        kind: tag("between"),
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

const Response = strict<Wire<RatingAnswer> & Footing>({ ...RatingAnswerSchema.shape, ...footing }).openapi(
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

export const fitRating: Operation<Input, Result, Wire<RatingAnswer>> = operation<
  Wire<Requested>,
  Input,
  Result,
  Wire<RatingAnswer>
>({
  id: "fitRating",
  path: paths.fitRating,
  summary: "What discharge goes with what stage here?",
  description:
    "A power of the height above zero flow by weighted least squares, read at any stage with the interval of the curve and that of one more gauging.",
  request: Request,
  response: Response,
  examples: ratingExamples,
  cost: {
    lessAt: "/gaugings",
    terms: [
      { counts: "gaugings", each: 1000, of: ({ gaugings }) => gaugings.length },
      { counts: "stages to read", each: 50, of: ({ stages = [] }) => stages.length },
    ],
  },
  places: [
    ["stage of gauging #", "/gaugings/#/stage"],
    ["bracket of the stage", "/zeroFlow"],
    ["uncertainty of the gaugings", "/gaugings"],
    ["gaugings", "/gaugings"],
  ],
  toInput: ({ gaugings, zeroFlow, stages = [], confidence }) => ({ gaugings, zeroFlow, stages, confidence }),
  encode: ({ rating, readings }, units, { stages }) => ({
    answer: encode(
      RatingAnswerSchema,
      {
        rating: { ...rating, atOneMetre: cubicMetresPerSecond(rating.coefficient) },
        readings: stages.map((at, i): RatingReading => {
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
  explain: ({ rating }, { stages }) => ratingSteps(rating, stages),
});
