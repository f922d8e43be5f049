/** spreadFlow: how fast does the stream run at each place across? */

import { z } from "@hono/zod-openapi";
import { type CubicMetresPerSecond, joinGrounds, type Lane, type LateralFlow } from "@plumbdrift/core";
import { type Footing, footing } from "../answer.js";
import { laneExamples } from "../examples-channel.js";
import { uniformSteps } from "../explanations/channel.js";
import { type Operation, operation } from "../operation.js";
import { paths } from "../paths.js";
import { encode } from "../quantity/encode.js";
import { quantity } from "../quantity/schema.js";
import { plain, type Said, strict, tag, type Wire } from "../quantity/wire.js";
import {
  type AskedChannel,
  channelFields,
  channelOf,
  channelPlaces,
  type Understood,
} from "../schemas/channel.js";
import { NoSlopeSchema, OverCapacitySchema, WithinStepSchema } from "../schemas/depths.js";
import { surveyPoints } from "../schemas/section.js";

interface Asked extends AskedChannel {
  readonly discharge: Said<"discharge">;
  readonly lanes?: number | undefined;
}

const { section, friction, slope, discharge, temperature, units } = channelFields;

const Request = strict<Asked>({
  section,
  friction,
  slope,
  discharge,
  lanes: z
    .number()
    .int()
    .min(3)
    .max(500)
    .optional()
    .openapi({ description: "Into how many strips the water is divided; 41 unless given." }),
  temperature,
  units,
}).openapi("SpreadFlowRequest");

type Found = Extract<LateralFlow, { kind: "found" }>;
type Spread = Omit<Found, "grounds"> | Exclude<LateralFlow, Found>;

interface Answered {
  readonly across: Wire<Spread>;
}

const SpreadSchema: z.ZodType<Wire<Spread>> = z
  .discriminatedUnion("kind", [
    strict<Wire<Omit<Found, "grounds">>>({
      kind: tag("found"),
      depth: quantity("length", "At the deepest point."),
      lanes: z
        .array(
          strict<Wire<Lane>>({
            station: quantity("length", "Middle of the lane: of a survey its own, else from the left edge."),
            width: quantity("length", "Across the stream."),
            depth: quantity("length", "Of the water in the middle of the lane."),
            meanSpeed: quantity("speed", "Over the depth."),
            discharge: quantity("discharge", "Through the lane."),
          }).openapi("Lane", { description: "A strip along the stream." }),
        )
        .openapi({ description: "From the left edge of the water to the right." }),
      correction: plain("The discharge over that of the lanes by themselves."),
    }).openapi("LanesFound", { description: "From the left edge of the water to the right." }),
    OverCapacitySchema,
    WithinStepSchema,
    NoSlopeSchema,
  ])
  .openapi("LateralFlow", { description: "The stream in lanes, or why it does not run uniformly." });

const Response = strict<Answered & Footing>({ across: SpreadSchema, ...footing }).openapi(
  "SpreadFlowResponse",
);

interface Input extends Understood {
  readonly discharge: CubicMetresPerSecond;
  readonly lanes: number;
}

export const spreadFlow: Operation<Input, LateralFlow, Answered> = operation<
  Asked,
  Input,
  LateralFlow,
  Answered
>({
  id: "spreadFlow",
  path: paths.spreadFlow,
  summary: "How fast does the stream run at each place across?",
  description:
    "Uniform flow with a balance of weight and friction for every vertical, scaled to carry the discharge: speeds for the lanes of a cast.",
  request: Request,
  response: Response,
  examples: laneExamples,
  cost: {
    lessAt: "/lanes",
    terms: [surveyPoints, { counts: "lanes", each: 50, of: ({ lanes = 41 }) => lanes }],
  },
  places: channelPlaces,
  toInput: ({ discharge: asked, lanes = 41, units: _, ...channel }) => ({
    ...channelOf(channel),
    discharge: asked,
    lanes,
  }),
  encode: (across, system, { grounds }) => ({
    answer: { across: encode(SpreadSchema, across, system) },
    grounds: joinGrounds(grounds, ...(across.kind === "found" ? [across.grounds] : [])),
  }),
  explain: (across, input) => {
    const { section, discharge: carried, friction, slope } = input;
    if (across.kind === "no-slope") return [];
    const most = across.kind === "over-capacity" ? across.greatestDischarge : carried;
    const depth = across.kind === "found" ? across.depth : across.atDepth;
    return uniformSteps({ flow: { section, discharge: most }, depth, friction, slope });
  },
});
