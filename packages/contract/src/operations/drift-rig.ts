/** driftRig: from the cast to the end of the run. */

import { z } from "@hono/zod-openapi";
import {
  type Drift,
  type DriftOptions,
  type FishWindow,
  heightAboveBed,
  joinGrounds,
  type LieObservation,
  lineLength,
  type Mend,
  metres,
  type Observation,
  type Presented,
} from "@plumbdrift/core";
import { type Footing, footing } from "../answer.js";
import { driftExamples } from "../examples.js";
import { driftSteps } from "../explanations/rig.js";
import { type Operation, operation } from "../operation.js";
import { encode } from "../quantity/encode.js";
import { quantity } from "../quantity/schema.js";
import type { Units } from "../quantity/units.js";
import { strict, type Wire } from "../quantity/wire.js";
import { CastSchema } from "../schemas/cast.js";
import { DriftSchema, driftOf, type WireDrift } from "../schemas/drift.js";
import {
  drifted,
  PresentationSchema,
  PresentedSchema,
  presentedOf,
  saidPresented,
  type WirePresentation,
} from "../schemas/presentation.js";
import { pulls } from "../schemas/pulls.js";
import { type BuiltRig, RigSchema, rigOf, settledSections, type WireRig } from "../schemas/rig.js";
import { FishSchema } from "../schemas/stop.js";
import { observationOf, UnitsSchema, WaterSchema, type WireWater } from "../schemas/water.js";
import { WindowSchema, WindowUsedSchema, type WireWindow } from "../schemas/window.js";

interface Asked extends Wire<Omit<DriftOptions, "settled" | "stationary">> {
  readonly water: WireWater;
  readonly rig: WireRig;
  readonly fish?: Wire<LieObservation> | undefined;
  readonly presentation?: WirePresentation | undefined;
  readonly units?: Units | undefined;
}

const Request = strict<Asked>({
  water: WaterSchema,
  rig: RigSchema,
  cast: CastSchema.optional(),
  presentation: PresentationSchema.optional().openapi({
    description:
      "Where the angler stands and casts: gives the cast, and ends the run where the line is straight.",
  }),
  fish: FishSchema.optional(),
  window: WindowSchema.optional().openapi({ description: "In place of the window of the fish." }),
  runLength: quantity("length", "How far the float drifts; 6 m unless given.", 0.1, 200, "m").optional(),
  duration: quantity("time", "How long at most; 60 s unless given.", 0.1, 600, "s").optional(),
  held: pulls.held,
  mends: z
    .array(
      strict<Wire<Mend>>({
        at: quantity("time", "From the landing.", 0, 600, "s"),
        held: quantity("force", "Upstream pull on the float from then on; 0 sets it free.", 0, 10_000, "mN"),
      }).openapi("Mend", { description: "Something done with the line on the way." }),
    )
    .max(50)
    .optional()
    .openapi({ description: "At most 50, in order of time." }),
  wind: pulls.wind,
  excessScale: quantity(
    "speed",
    "Excess at which a second counts half; 0.3 m/s unless given.",
    0.01,
    10,
    "m/s",
  ).optional(),
  timeStep: quantity("time", "Step of the computation; 0.01 s unless given.", 0.0005, 0.1, "s").optional(),
  segments: z
    .number()
    .int()
    .min(1)
    .max(64)
    .optional()
    .openapi({ description: "Per section; 8 unless given." }),
  instants: z
    .number()
    .int()
    .min(2)
    .max(400)
    .optional()
    .openapi({ description: "Most instants of the path; 50 unless given." }),
  units: UnitsSchema.optional(),
}).openapi("DriftRigRequest");

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
  Asked,
  Input,
  DriftPastFish,
  Answered
>({
  id: "driftRig",
  path: "/v1/drifts/unsteady",
  summary: "Where does this rig go, from the cast to the end of the run?",
  description:
    "The path of every body, time and distance until the rig has settled, and seconds inside the window.",
  request: Request,
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
