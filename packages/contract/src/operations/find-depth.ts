/** findDepth: how deep does this discharge run? */

import { z } from "@hono/zod-openapi";
import type { CubicMetresPerSecond, DepthsFor, Metres, NormalDepth } from "@plumbdrift/core";
import { type Footing, footing } from "../answer.js";
import { depthExamples } from "../examples-channel.js";
import { criticalSteps, uniformSteps } from "../explanations/channel.js";
import { type Operation, operation } from "../operation.js";
import { paths } from "../paths.js";
import { encode } from "../quantity/encode.js";
import { quantitySchemas as q, quantity } from "../quantity/schema.js";
import { plain, strict, tag, type Wire } from "../quantity/wire.js";
import {
  type AskedChannel,
  type AskedFlow,
  channelFields,
  channelOf,
  channelPlaces,
  type Understood,
} from "../schemas/channel.js";
import {
  type FlowAtDepth,
  FlowAtDepthSchema,
  NoSlopeSchema,
  OverCapacitySchema,
  WithinStepSchema,
} from "../schemas/depths.js";
import { surveyPoints } from "../schemas/section.js";

interface Asked extends AskedChannel, AskedFlow {}

const { section, friction, slope, discharge, energyCoefficient, temperature, units } = channelFields;

const Request = strict<Asked>({
  section,
  friction,
  slope,
  discharge,
  energyCoefficient,
  temperature,
  units,
}).openapi("FindDepthRequest");

interface NormalFound {
  readonly kind: "found";
  readonly flows: readonly FlowAtDepth[];
}

interface CriticalFound {
  readonly kind: "found";
  readonly depth: Metres;
  readonly depths: readonly Metres[];
  readonly slope: number;
}

interface Depths {
  readonly normal: NormalFound | Exclude<NormalDepth, { kind: "found" }>;
  readonly critical: CriticalFound | Exclude<DepthsFor, { kind: "found" }>;
}

const AnswerFields = {
  normal: z
    .discriminatedUnion("kind", [
      strict<Wire<NormalFound>>({
        kind: tag("found"),
        flows: z.array(FlowAtDepthSchema).openapi({
          description: "Every depth that carries it, shallowest first: a pipe near full has two.",
        }),
      }).openapi("NormalDepthFound", { description: "Friction and slope are in balance." }),
      OverCapacitySchema,
      WithinStepSchema,
      NoSlopeSchema,
    ])
    .openapi("NormalDepth", { description: "Where it runs uniformly, or why nowhere." }),
  critical: z
    .discriminatedUnion("kind", [
      strict<Wire<CriticalFound>>({
        kind: tag("found"),
        depth: quantity("length", "That of least energy."),
        depths: z.array(q.length).openapi({ description: "All of them: overbanks can give several." }),
        slope: plain("The slope on which it would run uniformly so."),
      }).openapi("CriticalDepthFound", { description: "The discharge has its least energy." }),
      OverCapacitySchema,
      WithinStepSchema,
    ])
    .openapi("CriticalDepth", { description: "Where the Froude number is 1, or why nowhere." }),
};

const Response = strict<Wire<Depths> & Footing>({ ...AnswerFields, ...footing }).openapi("FindDepthResponse");

interface Input extends Understood {
  readonly discharge: CubicMetresPerSecond;
  readonly coefficients: { readonly energyCoefficient?: number };
}

export const findDepth: Operation<Input, Depths, Wire<Depths>> = operation<
  Asked,
  Input,
  Depths,
  Wire<Depths>
>({
  id: "findDepth",
  path: paths.findDepth,
  summary: "How deep does this discharge run?",
  description:
    "Normal depths with their speeds, and critical depth. That the section cannot carry it, or that the bed does not fall, is an answer, not an error.",
  request: Request,
  response: Response,
  examples: depthExamples,
  cost: { lessAt: "/section", terms: [surveyPoints] },
  places: channelPlaces,
  toInput: ({ discharge: asked, energyCoefficient: given, units: _, ...channel }) => ({
    ...channelOf(channel),
    discharge: asked,
    coefficients: given === undefined ? {} : { energyCoefficient: given },
  }),
  encode: (depths, system, { grounds }) => ({
    answer: encode(strict<Wire<Depths>>(AnswerFields), depths, system),
    grounds,
  }),
  explain: ({ normal, critical }, { section, discharge, friction, slope, coefficients }) => {
    const flow = { section, discharge, ...coefficients };
    const flows = normal.kind === "found" ? normal.flows : [];
    return [
      ...flows.flatMap(({ depth }, i) => uniformSteps({ flow, depth, friction, slope, mark: String(i + 1) })),
      ...(critical.kind === "found" ? criticalSteps(flow, critical.depth) : []),
    ];
  },
});
