/** jumpFlow: where shooting water jumps, how high does it rise and what does it lose? */

import { z } from "@hono/zod-openapi";
import {
  type Flow,
  type Grounds,
  type HydraulicJump,
  joinGrounds,
  type Metres,
  type Water,
} from "@plumbdrift/core";
import { type Footing, footing } from "../answer.js";
import { jumpExamples } from "../examples-channel.js";
import { jumpSteps } from "../explanations/channel.js";
import { type Operation, operation } from "../operation.js";
import { paths } from "../paths.js";
import { encode } from "../quantity/encode.js";
import { quantity } from "../quantity/schema.js";
import type { Units } from "../quantity/units.js";
import { plain, type Said, strict, tag, type Wire } from "../quantity/wire.js";
import { type AskedFlow, channelFields, channelPlaces } from "../schemas/channel.js";
import { resting, waterOf } from "../schemas/friction.js";
import { sectionOf, surveyPoints } from "../schemas/section.js";

interface Asked extends AskedFlow {
  readonly before: Said<"length">;
  readonly momentumCoefficient?: number | undefined;
  readonly temperature?: Said<"temperature"> | undefined;
  readonly units?: Units | undefined;
}

const { section, discharge, energyCoefficient, momentumCoefficient, temperature, units } = channelFields;

const Request = strict<Asked>({
  section,
  discharge,
  before: quantity("length", "Depth of the shooting water.", 1e-4, 1000, "m"),
  energyCoefficient,
  momentumCoefficient,
  temperature,
  units,
}).openapi("JumpFlowRequest");

type Kind<K extends HydraulicJump["kind"]> = Wire<Extract<HydraulicJump, { kind: K }>>;

interface Answered {
  readonly jump: Wire<HydraulicJump>;
}

const AnswerFields = {
  jump: z
    .discriminatedUnion("kind", [
      strict<Kind<"jump">>({
        kind: tag("jump"),
        before: quantity("length", "Depth of the shooting water."),
        after: quantity("length", "Depth behind the jump."),
        froudeBefore: plain("Froude number before: above 1."),
        froudeAfter: plain("Froude number after: below 1."),
        headLoss: quantity("length", "Energy before less energy after."),
        power: quantity("power", "What the loss turns into eddies and heat."),
      }).openapi("Jumps", { description: "From the depth before to the first deeper one of equal force." }),
      strict<Kind<"not-supercritical">>({
        kind: tag("not-supercritical"),
        froude: plain("Froude number: at most 1."),
      }).openapi("NoJump", { description: "Only water faster than its waves jumps." }),
      strict<Kind<"over-capacity">>({ kind: tag("over-capacity") }).openapi("JumpOverCapacity", {
        description: "The depth after the jump is above the section.",
      }),
    ])
    .openapi("HydraulicJump", { description: "The jump, or why there is none." }),
};

const Response = strict<Answered & Footing>({ ...AnswerFields, ...footing }).openapi("JumpFlowResponse");

interface Input {
  readonly flow: Flow;
  readonly before: Metres;
  readonly water: Water;
  readonly grounds: Grounds;
}

export const jumpFlow: Operation<Input, HydraulicJump, Answered> = operation<
  Asked,
  Input,
  HydraulicJump,
  Answered
>({
  id: "jumpFlow",
  path: paths.jumpFlow,
  summary: "Where shooting water jumps, how high does it rise and what does it lose?",
  description:
    "The depth after the jump by specific force, in any section; the slope and the friction over its length are left out. That there is no jump is an answer, not an error.",
  request: Request,
  response: Response,
  examples: jumpExamples,
  cost: { lessAt: "/section", terms: [surveyPoints] },
  places: [["depth", "/before"], ["wet area", "/before"], ["top width", "/before"], ...channelPlaces],
  toInput: ({ section: shape, before, temperature: degrees, units: _, ...flow }) => ({
    flow: { ...flow, section: sectionOf(shape) },
    before,
    ...waterOf(degrees),
  }),
  encode: (jump, system, { grounds }) => ({
    answer: { jump: encode(AnswerFields.jump, jump, system) },
    grounds: joinGrounds(resting("Chow1959"), grounds),
  }),
  explain: (jump, { flow, before, water: { density } }) => jumpSteps(jump, { flow, before, density }),
});
