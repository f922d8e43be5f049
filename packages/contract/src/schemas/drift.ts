/** An unsteady drift as an answer says it. */

import { z } from "@hono/zod-openapi";
import type { Drift, DriftInstant, Metres, Position, Seconds, Settling } from "@plumbdrift/core";
import { encode } from "../quantity/encode.js";
import { quantitySchemas as q, quantity } from "../quantity/schema.js";
import type { Units } from "../quantity/units.js";
import { type Strict, strict, type Wire } from "../quantity/wire.js";
import { type SaidSettled, SettledSchema, saidSettled, thinned } from "./settled.js";

/** Settling by a word, since a union is told apart by words here. */
export type SaidSettling =
  | { readonly settles: "yes"; readonly time: Seconds; readonly distance: Metres }
  | { readonly settles: "no" };

interface Said extends Omit<Drift, "settling" | "settled" | "grounds"> {
  readonly settling: SaidSettling;
  readonly settled: SaidSettled;
}

export type WireDrift = Wire<Said>;

const PositionSchema = strict<Wire<Position>>({
  downstream: q.length,
  across: q.length,
  heightAboveBed: q.length,
}).openapi("Position", {
  description: "A place over the bed. Origin: the bed below where the float landed.",
});

const InstantSchema = strict<Wire<DriftInstant>>({
  time: q.time,
  float: PositionSchema,
  sinkers: z.array(PositionSchema),
  excess: quantity("speed", "Of the lowest sinker over its own water, along the stream."),
  tensionAtFloat: q.force,
}).openapi("DriftInstant", { description: "Everything at one time." });

export const SettlingSchema: z.ZodType<Wire<SaidSettling>> = z
  .discriminatedUnion("settles", [
    z
      .strictObject({ settles: z.enum(["yes"]), time: q.time, distance: q.length })
      .openapi("Settles", { description: "Within 5 % of the settled depth, and staying." }),
    z
      .strictObject({ settles: z.enum(["no"]) })
      .openapi("NeverSettles", { description: "Not within this run." }),
  ])
  .openapi("Settling", { description: "Whether the rig settles within the run, and when." });

export const DriftSchema: Strict<WireDrift> = strict<WireDrift>({
  outcome: z.enum(["run-ended", "time-ended", "drowned"]),
  duration: q.time,
  distance: quantity("length", "Travelled by the float."),
  settling: SettlingSchema,
  secondsInWindow: quantity("time", "Time that a sinker spends inside the window."),
  effectiveSeconds: quantity("time", "The same, each second weighted by how little it is towed."),
  firstInWindow: quantity("time", "Present when a sinker reaches the window.").optional(),
  path: z.array(InstantSchema),
  settled: SettledSchema,
  lengthError: z.number().openapi({ description: "Greatest relative error of a taut segment." }),
  steps: z.number().int().min(0).max(1e9),
}).openapi("Drift", { description: "From the landing of the cast to the end of the run." });

export function saidSettling(settling: Settling): SaidSettling {
  return settling.settles ? { ...settling, settles: "yes" } : { settles: "no" };
}

export function driftOf(drift: Drift, units: Units, instants: number): WireDrift {
  const settling = saidSettling(drift.settling);
  const path = thinned(drift.path, instants);
  return encode(DriftSchema, { ...drift, settling, path, settled: saidSettled(drift.settled) }, units);
}
