/** settleRig: where does this rig hang once it has settled? */

import { z } from "@hono/zod-openapi";
import {
  joinGrounds,
  type MetresPerSecond,
  type Newtons,
  type Observation,
  type Settled,
} from "@plumbdrift/core";
import { footing, type Say } from "../answer.js";
import { rigExamples } from "../examples.js";
import { operation } from "../operation.js";
import { pulls } from "../schemas/pulls.js";
import { type BuiltRig, RigSchema, rigOf } from "../schemas/rig.js";
import { SettledSchema, settledOf } from "../schemas/settled.js";
import { observationOf, UnitsSchema, WaterSchema } from "../schemas/water.js";

const Request = z
  .strictObject({
    water: WaterSchema,
    rig: RigSchema,
    held: pulls.held,
    wind: pulls.wind,
    units: UnitsSchema.optional(),
  })
  .openapi("SettleRigRequest");

const Response = z.strictObject({ settled: SettledSchema, ...footing }).openapi("SettleRigResponse");

interface Input extends BuiltRig {
  readonly observation: Observation;
  readonly options: { readonly held?: Newtons; readonly wind?: MetresPerSecond };
}

export const settleRig = operation({
  id: "settleRig",
  path: "/v1/drifts/settled",
  summary: "Where does this rig hang once it has settled?",
  description:
    "The speed, the shape of the line and the height of each sinker at which every force is in balance. A rig that drowns or lies on the bed is an answer, not an error.",
  request: Request,
  response: Response,
  examples: rigExamples,
  toInput: ({ water, rig, units: _, ...options }): Input => ({
    observation: observationOf(water),
    ...rigOf(rig),
    options,
  }),
  encode: (settled: Settled, say: Say, { grounds }: Input) => ({
    answer: { settled: settledOf(settled, say) },
    grounds: joinGrounds(grounds, settled.grounds),
  }),
});
