/** holdRig: how much upstream tension brings the nymph in step with its water? */

import { z } from "@hono/zod-openapi";
import {
  type Held,
  joinGrounds,
  type MetresPerSecond,
  type Newtons,
  type Observation,
} from "@plumbdrift/core";
import { footing, type Say } from "../answer.js";
import { holdExamples } from "../examples.js";
import { operation } from "../operation.js";
import { quantity } from "../quantity/schema.js";
import { HeldPointSchema, HoldTargetSchema, heldPointOf, holdTargetOf } from "../schemas/held.js";
import { pulls } from "../schemas/pulls.js";
import { type BuiltRig, RigSchema, rigOf } from "../schemas/rig.js";
import { SettledSchema, settledOf } from "../schemas/settled.js";
import { observationOf, UnitsSchema, WaterSchema } from "../schemas/water.js";

const Request = z
  .strictObject({
    water: WaterSchema,
    rig: RigSchema,
    wind: pulls.wind,
    greatest: quantity("force", "The greatest pull to try.", 0.001, 1000, "mN").optional(),
    points: z.number().int().min(2).max(200).optional().openapi({ description: "Points of the curve." }),
    units: UnitsSchema.optional(),
  })
  .openapi("HoldRigRequest");

const Response = z
  .strictObject({
    free: SettledSchema.openapi({ description: "The rig with nothing held." }),
    curve: z.array(HeldPointSchema).openapi({ description: "From no pull to the greatest." }),
    inStep: HoldTargetSchema.openapi({ description: "The lowest sinker drifts exactly with its own water." }),
    halvedExcess: HoldTargetSchema.openapi({ description: "The smallest pull that halves its excess." }),
    ...footing,
  })
  .openapi("HoldRigResponse");

interface Input extends BuiltRig {
  readonly observation: Observation;
  readonly options: {
    readonly wind?: MetresPerSecond;
    readonly greatest?: Newtons;
    readonly points?: number;
  };
}

export const holdRig = operation({
  id: "holdRig",
  path: "/v1/drifts/held",
  summary: "How much upstream tension brings the nymph in step with its water?",
  description:
    "The settled rig against a steady upstream pull on the float: the whole curve, and the two pulls worth knowing. Watch the slip of the float against the foam to judge the pull.",
  request: Request,
  response: Response,
  examples: holdExamples,
  toInput: ({ water, rig, units: _, ...options }): Input => ({
    observation: observationOf(water),
    ...rigOf(rig),
    options,
  }),
  encode: (held: Held, say: Say, { grounds }: Input) => ({
    answer: {
      free: settledOf(held.free, say),
      curve: held.curve.map((point) => heldPointOf(point, say)),
      inStep: holdTargetOf(held.inStep, say),
      halvedExcess: holdTargetOf(held.halvedExcess, say),
    },
    grounds: joinGrounds(grounds, held.grounds),
  }),
});
