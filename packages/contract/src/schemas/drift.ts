/** An unsteady drift as an answer says it. */

import { z } from "@hono/zod-openapi";
import type { Drift, Position, Settling } from "@plumbdrift/core";
import type { Say } from "../answer.js";
import { quantitySchemas as q } from "../quantity/schema.js";
import { SettledSchema, settledOf, thinned } from "./settled.js";

const PositionSchema = z
  .strictObject({ downstream: q.length, across: q.length, heightAboveBed: q.length })
  .openapi("Position", {
    description: "A place over the bed. Origin: the bed below where the float landed.",
  });

const InstantSchema = z
  .strictObject({
    time: q.time,
    float: PositionSchema,
    sinkers: z.array(PositionSchema),
    excess: q.speed.openapi({ description: "Of the lowest sinker over its own water, along the stream." }),
    tensionAtFloat: q.force,
  })
  .openapi("DriftInstant", { description: "Everything at one time." });

export const SettlingSchema = z
  .discriminatedUnion("settles", [
    z
      .strictObject({ settles: z.enum(["yes"]), time: q.time, distance: q.length })
      .openapi("Settles", { description: "Within 5 % of the settled depth, and staying." }),
    z
      .strictObject({ settles: z.enum(["no"]) })
      .openapi("NeverSettles", { description: "Not within this run." }),
  ])
  .openapi("Settling", { description: "Whether the rig settles within the run, and when." });

export const DriftSchema = z
  .strictObject({
    outcome: z.enum(["run-ended", "time-ended", "drowned"]),
    duration: q.time,
    distance: q.length.openapi({ description: "Travelled by the float." }),
    settling: SettlingSchema,
    secondsInWindow: q.time.openapi({ description: "Time that a sinker spends inside the window." }),
    effectiveSeconds: q.time.openapi({
      description: "The same, each second weighted by how little it is towed.",
    }),
    firstInWindow: q.time.openapi({ description: "Present when a sinker reaches the window." }).optional(),
    path: z.array(InstantSchema),
    settled: SettledSchema,
    lengthError: z.number().openapi({ description: "Greatest relative error of a taut segment." }),
    steps: z.number().int().min(0).max(1e9),
  })
  .openapi("Drift", { description: "From the landing of the cast to the end of the run." });

export function settlingOf(settling: Settling, say: Say): z.output<typeof SettlingSchema> {
  if (!settling.settles) return { settles: "no" };
  return { settles: "yes", time: say.time(settling.time), distance: say.length(settling.distance) };
}

export function driftOf(drift: Drift, say: Say, instants: number): z.output<typeof DriftSchema> {
  return {
    outcome: drift.outcome,
    duration: say.time(drift.duration),
    distance: say.length(drift.distance),
    settling: settlingOf(drift.settling, say),
    secondsInWindow: say.time(drift.secondsInWindow),
    effectiveSeconds: say.time(drift.effectiveSeconds),
    ...(drift.firstInWindow === null ? {} : { firstInWindow: say.time(drift.firstInWindow) }),
    path: thinned(drift.path, instants).map((instant) => ({
      time: say.time(instant.time),
      float: positionOf(instant.float, say),
      sinkers: instant.sinkers.map((sinker) => positionOf(sinker, say)),
      excess: say.speed(instant.excess),
      tensionAtFloat: say.force(instant.tensionAtFloat),
    })),
    settled: settledOf(drift.settled, say),
    lengthError: drift.lengthError,
    steps: drift.steps,
  };
}

function positionOf(position: Position, say: Say): z.output<typeof PositionSchema> {
  return {
    downstream: say.length(position.downstream),
    across: say.length(position.across),
    heightAboveBed: say.length(position.heightAboveBed),
  };
}
