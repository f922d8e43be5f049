/** rankSetups: what should I tie on, for this water and this fish, and why? */

import { z } from "@hono/zod-openapi";
import type { Observation, Ranking, Stop } from "@plumbdrift/core";
import { footing, type Say } from "../answer.js";
import { setupExamples } from "../examples.js";
import { operation } from "../operation.js";
import { quantitySchemas as q, quantity } from "../quantity/schema.js";
import { CastSchema } from "../schemas/cast.js";
import { pulls } from "../schemas/pulls.js";
import { SetupSchema, setupOf } from "../schemas/setup.js";
import { BoxSchema, boxOf, FishSchema, HandSchema, handOf } from "../schemas/stop.js";
import { observationOf, UnitsSchema, WaterSchema } from "../schemas/water.js";

const Request = z
  .strictObject({
    water: WaterSchema,
    fish: FishSchema.optional(),
    box: BoxSchema.optional().openapi({ description: "Your box; a general one unless given." }),
    inHand: HandSchema.optional(),
    runLength: quantity("length", "Length of one drift; 6 m unless given.", 0.5, 100, "m").optional(),
    cast: CastSchema.optional(),
    surface: z
      .enum(["glassy", "rippled", "broken"])
      .optional()
      .openapi({ description: "How much splash the surface hides." }),
    leastMargin: z
      .number()
      .min(1)
      .max(100)
      .optional()
      .openapi({ description: "Least float margin that a setup may have; 1.5 unless given." }),
    excessScale: quantity(
      "speed",
      "Excess at which a second counts half; 0.3 m/s unless given.",
      0.01,
      10,
      "m/s",
    ).optional(),
    wind: pulls.wind,
    leaderStrength: quantity(
      "force",
      "Breaking force of the leader: the dropper must break first.",
      0.1,
      1000,
      "N",
    ).optional(),
    top: z
      .number()
      .int()
      .min(1)
      .max(50)
      .optional()
      .openapi({ description: "How many to answer; 5 unless given." }),
    units: UnitsSchema.optional(),
  })
  .openapi("RankSetupsRequest");

const RefusalSchema = z
  .enum(["float-margin", "dropper-longer-than-depth", "dropper-outlasts-leader", "never-in-window"])
  .openapi("RefusalReason", { description: "A hard limit." });

const Response = z
  .strictObject({
    setups: z.array(SetupSchema).openapi({ description: "The best first." }),
    inHand: SetupSchema.openapi({ description: "The rig in hand, with its place among all." }).optional(),
    candidates: z.number().int().min(0).max(1e9),
    refused: z
      .array(
        z
          .strictObject({ reason: RefusalSchema, count: z.number().int().min(0).max(1e9) })
          .openapi("Refused", { description: "How many candidates one limit ruled out." }),
      )
      .openapi({ description: "Candidates that a hard limit ruled out." }),
    window: z
      .strictObject({ low: q.length, high: q.length, holding: q.length, reach: q.length })
      .openapi("FishWindow", { description: "Heights above the bed between which the fish takes." }),
    cautions: z.array(z.string()).openapi({ description: "For everyone at the water, whatever the setup." }),
    work: z
      .strictObject({
        curves: z.number().int().min(0).max(1e9),
        settled: z.number().int().min(0).max(1e9),
        drifts: z.number().int().min(0).max(1e9),
      })
      .openapi("Work", { description: "What was computed." }),
    ...footing,
  })
  .openapi("RankSetupsResponse");

export type RankSetupsResponse = z.output<typeof Response>;

export const rankSetups = operation({
  id: "rankSetups",
  path: "/v1/setups",
  summary: "What should I tie on, for this water and this fish, and why?",
  description:
    "Every combination of the box, the hard limits first, then ranked by effective seconds in the fish's window. Two flies are legal only where the rules say so: ask the local rules.",
  request: Request,
  response: Response,
  examples: setupExamples,
  toInput: ({
    water,
    fish,
    box,
    inHand,
    units: _,
    ...rest
  }): Omit<Stop, "column"> & { observation: Observation } => ({
    ...rest,
    observation: observationOf(water),
    ...(fish === undefined ? {} : { lie: fish }),
    ...(box === undefined ? {} : { box: boxOf(box) }),
    ...(inHand === undefined ? {} : { inHand: handOf(inHand) }),
  }),
  encode: (ranking: Ranking, say: Say) => ({
    answer: {
      setups: ranking.setups.map((setup) => setupOf(setup, say)),
      ...(ranking.inHand === null ? {} : { inHand: setupOf(ranking.inHand, say) }),
      candidates: ranking.candidates,
      refused: ranking.refused.map(({ reason, count }) => ({ reason, count })),
      window: {
        low: say.length(ranking.window.low),
        high: say.length(ranking.window.high),
        holding: say.length(ranking.window.holding),
        reach: say.length(ranking.window.reach),
      },
      cautions: [...ranking.cautions],
      work: { ...ranking.work },
    },
    grounds: ranking.grounds,
  }),
});
