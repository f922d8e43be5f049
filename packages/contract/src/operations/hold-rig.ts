/** holdRig: how much upstream tension brings the nymph in step with its water? */

import { z } from "@hono/zod-openapi";
import { type Held, type HoldOptions, joinGrounds, type Observation } from "@plumbdrift/core";
import { type Footing, footing } from "../answer.js";
import { holdExamples } from "../examples.js";
import { heldSteps } from "../explanations/rig.js";
import { type Operation, operation } from "../operation.js";
import { paths } from "../paths.js";
import { encode } from "../quantity/encode.js";
import { quantity } from "../quantity/schema.js";
import type { Units } from "../quantity/units.js";
import { strict, type Wire } from "../quantity/wire.js";
import { HeldPointSchema, HoldTargetSchema } from "../schemas/held.js";
import { pulls } from "../schemas/pulls.js";
import { type BuiltRig, RigSchema, rigOf, type WireRig } from "../schemas/rig.js";
import { type SaidSettled, SettledSchema, saidSettled } from "../schemas/settled.js";
import { observationOf, UnitsSchema, WaterSchema, type WireWater } from "../schemas/water.js";

interface Asked extends Wire<HoldOptions> {
  readonly water: WireWater;
  readonly rig: WireRig;
  readonly units?: Units | undefined;
}

const Request = strict<Asked>({
  water: WaterSchema,
  rig: RigSchema,
  wind: pulls.wind,
  greatest: quantity("force", "The greatest pull to try.", 0.001, 1000, "mN").optional(),
  points: z.number().int().min(2).max(200).optional().openapi({ description: "Points of the curve." }),
  units: UnitsSchema.optional(),
}).openapi("HoldRigRequest");

interface Answered extends Omit<Held, "free" | "grounds"> {
  readonly free: SaidSettled;
}

const AnswerFields = {
  free: SettledSchema.openapi({ description: "The rig with nothing held." }),
  curve: z.array(HeldPointSchema).openapi({ description: "From no pull to the greatest." }),
  inStep: HoldTargetSchema.openapi({ description: "The lowest sinker drifts exactly with its own water." }),
  halvedExcess: HoldTargetSchema.openapi({ description: "The smallest pull that halves its excess." }),
};

const Response = strict<Wire<Answered> & Footing>({ ...AnswerFields, ...footing }).openapi("HoldRigResponse");

interface Input extends BuiltRig {
  readonly observation: Observation;
  readonly options: HoldOptions;
}

export const holdRig: Operation<Input, Held, Wire<Answered>> = operation<Asked, Input, Held, Wire<Answered>>({
  id: "holdRig",
  path: paths.holdRig,
  summary: "How much upstream tension brings the nymph in step with its water?",
  description:
    "The settled rig against a steady upstream pull on the float: the whole curve, and the two pulls worth knowing. Watch the slip of the float against the foam to judge the pull.",
  request: Request,
  response: Response,
  examples: holdExamples,
  cost: {
    lessAt: "/points",
    terms: [
      {
        counts: "sections times settled states: of the points, the free drift and the two that are searched",
        each: 500,
        of: ({ rig, points = 9 }) => rig.sections.length * (points + 3),
      },
      {
        counts: "sections times balances of two searches, 100 each",
        each: 200,
        of: ({ rig }) => rig.sections.length * 200,
      },
    ],
  },
  toInput: ({ water, rig, units: _, ...options }) => ({
    observation: observationOf(water),
    ...rigOf(rig),
    options,
  }),
  encode: (held, units, { grounds }) => ({
    answer: encode(strict<Wire<Answered>>(AnswerFields), { ...held, free: saidSettled(held.free) }, units),
    grounds: joinGrounds(grounds, held.grounds),
  }),
  explain: (held, { rig, observation }) => heldSteps(held, rig, observation),
});
