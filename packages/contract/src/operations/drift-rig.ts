/** driftRig: from the cast to the end of the run. */

import {
  type Drift,
  type DriftOptions,
  type FishWindow,
  heightAboveBed,
  joinGrounds,
  type LieObservation,
  lineLength,
  metres,
  type Observation,
  type Presented,
} from "@plumbdrift/core";
import { type Footing, footing } from "../answer.js";
import { driftExamples } from "../examples.js";
import { driftSteps } from "../explanations/rig.js";
import { type Operation, operation } from "../operation.js";
import { paths } from "../paths.js";
import { encode } from "../quantity/encode.js";
import { strict } from "../quantity/wire.js";
import { DriftSchema, driftOf, type WireDrift } from "../schemas/drift.js";
import { type AskedDrift, DriftRigRequest } from "../schemas/drift-question.js";
import { drifted, PresentedSchema, presentedOf, saidPresented } from "../schemas/presentation.js";
import { type BuiltRig, rigOf, settledSections } from "../schemas/rig.js";
import { observationOf } from "../schemas/water.js";
import { WindowUsedSchema, type WireWindow } from "../schemas/window.js";

interface Answered {
  readonly drift: WireDrift;
  readonly window: WireWindow;
  readonly presented?: ReturnType<typeof saidPresented> | undefined;
}

const Response = strict<Answered & Footing>({
  drift: DriftSchema,
  window: WindowUsedSchema,
  presented: PresentedSchema.optional(),
  ...footing,
}).openapi("DriftRigResponse");

interface Input extends BuiltRig {
  readonly observation: Observation;
  readonly lie: LieObservation;
  readonly options: DriftOptions;
  readonly presented: Presented | null;
  readonly instants: number;
}

/** A drift and the window of the fish it passes, which counts unless the options name another. */
interface DriftPastFish {
  readonly drift: Drift;
  readonly fish: FishWindow;
}

export const driftRig: Operation<Input, DriftPastFish, Answered> = operation<
  AskedDrift,
  Input,
  DriftPastFish,
  Answered
>({
  id: "driftRig",
  path: paths.driftRig,
  summary: "Where does this rig go, from the cast to the end of the run?",
  description:
    "The path of every body, time and distance until the rig has settled, and seconds inside the window.",
  request: DriftRigRequest,
  response: Response,
  examples: driftExamples,
  cost: {
    lessAt: "/timeStep",
    terms: [
      settledSections,
      {
        counts: "steps times points of line: duration over timeStep, times sections times segments and one",
        each: 1,
        of: ({ rig, duration = 60, timeStep = 0.01, segments = 8 }) =>
          Math.ceil(duration / timeStep) * (rig.sections.length * segments + 1),
      },
    ],
  },
  toInput: ({ water, rig, units: _, fish, window, presentation, instants = 50, ...rest }) => {
    const built = rigOf(rig);
    const presented =
      presentation === undefined ? null : presentedOf(presentation, metres(lineLength(built.rig.sections)));
    const options = presented === null ? rest : drifted(presented, rest);
    const edges = window && { low: heightAboveBed(window.low), high: heightAboveBed(window.high) };
    return {
      observation: observationOf(water),
      lie: fish ?? {},
      ...built,
      options: { ...options, ...(edges ? { window: edges } : {}), instants },
      presented,
      instants,
    };
  },
  encode: ({ drift, fish }, units, { grounds, options, presented, instants }) => ({
    answer: {
      drift: driftOf(drift, units, instants),
      window: encode(WindowUsedSchema, options.window ?? fish, units),
      ...(presented === null ? {} : { presented: saidPresented(presented, units) }),
    },
    grounds: joinGrounds(
      grounds,
      drift.grounds,
      ...(options.window ? [] : [fish.grounds]),
      ...(presented === null ? [] : [presented.grounds]),
    ),
  }),
  explain: ({ drift }, { rig, observation }) => driftSteps(drift, rig, observation),
});
