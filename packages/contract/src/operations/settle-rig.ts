/** settleRig: where does this rig hang once it has settled? */

import {
  joinGrounds,
  type MetresPerSecond,
  type Newtons,
  type Observation,
  type Settled,
} from "@plumbdrift/core";
import { type Footing, footing } from "../answer.js";
import { rigExamples } from "../examples.js";
import { settledSteps } from "../explanations/rig.js";
import { type Operation, operation } from "../operation.js";
import { paths } from "../paths.js";
import type { Units } from "../quantity/units.js";
import { strict } from "../quantity/wire.js";
import { type Pulls, pulls } from "../schemas/pulls.js";
import { type BuiltRig, RigSchema, rigOf, settledSections, type WireRig } from "../schemas/rig.js";
import { SettledSchema, settledOf, type WireSettled } from "../schemas/settled.js";
import { observationOf, UnitsSchema, WaterSchema, type WireWater } from "../schemas/water.js";

interface Asked extends Pulls {
  readonly water: WireWater;
  readonly rig: WireRig;
  readonly units?: Units | undefined;
}

const Request = strict<Asked>({
  water: WaterSchema,
  rig: RigSchema,
  held: pulls.held,
  wind: pulls.wind,
  units: UnitsSchema.optional(),
}).openapi("SettleRigRequest");

interface Answered {
  readonly settled: WireSettled;
}

const Response = strict<Answered & Footing>({ settled: SettledSchema, ...footing }).openapi(
  "SettleRigResponse",
);

interface Input extends BuiltRig {
  readonly observation: Observation;
  readonly options: { readonly held?: Newtons; readonly wind?: MetresPerSecond };
}

export const settleRig: Operation<Input, Settled, Answered> = operation<Asked, Input, Settled, Answered>({
  id: "settleRig",
  path: paths.settleRig,
  summary: "Where does this rig hang once it has settled?",
  description:
    "The speed, the shape of the line and the height of each sinker at which every force is in balance. A rig that drowns or lies on the bed is an answer, not an error.",
  request: Request,
  response: Response,
  examples: rigExamples,
  cost: { lessAt: "/rig/sections", terms: [settledSections] },
  toInput: ({ water, rig, units: _, ...options }) => ({
    observation: observationOf(water),
    ...rigOf(rig),
    options,
  }),
  encode: (settled, units, { grounds }) => ({
    answer: { settled: settledOf(settled, units) },
    grounds: joinGrounds(grounds, settled.grounds),
  }),
  explain: (settled, { rig, observation }) => settledSteps(settled, rig, observation),
});
