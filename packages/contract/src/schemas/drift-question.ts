/** What is asked of a drift: the water, the rig, how it is cast and what is done on the way. */

import { z } from "@hono/zod-openapi";
import type { DriftOptions, LieObservation, Mend } from "@plumbdrift/core";
import { quantity } from "../quantity/schema.js";
import type { Units } from "../quantity/units.js";
import { type Strict, strict, type Wire } from "../quantity/wire.js";
import { CastSchema } from "./cast.js";
import { PresentationSchema, type WirePresentation } from "./presentation.js";
import { excessScale, pulls } from "./pulls.js";
import { RigSchema, type WireRig } from "./rig.js";
import { FishSchema } from "./stop.js";
import { UnitsSchema, WaterSchema, type WireWater } from "./water.js";
import { WindowSchema } from "./window.js";

export interface AskedDrift extends Wire<Omit<DriftOptions, "settled" | "stationary">> {
  readonly water: WireWater;
  readonly rig: WireRig;
  readonly fish?: Wire<LieObservation> | undefined;
  readonly presentation?: WirePresentation | undefined;
  readonly units?: Units | undefined;
}

export const DriftRigRequest: Strict<AskedDrift> = strict<AskedDrift>({
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
  excessScale,
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
