/** An unsteady drift as an answer says it. */

import { z } from "@hono/zod-openapi";
import type { Drift, DriftInstant, Metres, Position, Seconds, Settling } from "@plumbdrift/core";
import { encode } from "../quantity/encode.js";
import { quantity } from "../quantity/schema.js";
import type { Units } from "../quantity/units.js";
import { count, plain, type Strict, strict, tag, type Wire } from "../quantity/wire.js";
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
  downstream: quantity("length", "Along the stream from where the float landed."),
  across: quantity("length", "Across the stream from there, positive away from the angler."),
  heightAboveBed: quantity("length", "Height above the bed."),
}).openapi("Position", {
  description: "A place over the bed. Origin: the bed below where the float landed.",
});

const InstantSchema = strict<Wire<DriftInstant>>({
  time: quantity("time", "Since the landing."),
  float: PositionSchema,
  sinkers: z.array(PositionSchema).openapi({ description: "From the top down." }),
  excess: quantity("speed", "Of the lowest sinker over its own water, along the stream."),
  tensionAtFloat: quantity("force", "Tension of the line at the float."),
}).openapi("DriftInstant", { description: "Everything at one time." });

export const SettlingSchema: z.ZodType<Wire<SaidSettling>> = z
  .discriminatedUnion("settles", [
    z
      .strictObject({
        settles: tag("yes"),
        time: quantity("time", "From the landing until it stays so."),
        distance: quantity("length", "That the float has travelled by then."),
      })
      .openapi("Settles", { description: "Within 5 % of the settled depth, and staying." }),
    z.strictObject({ settles: tag("no") }).openapi("NeverSettles", { description: "Not within this run." }),
  ])
  .openapi("Settling", { description: "Whether the rig settles within the run, and when." });

export const DriftSchema: Strict<WireDrift> = strict<WireDrift>({
  outcome: z.enum(["run-ended", "time-ended", "drowned"]).openapi({
    description: "What ended it: the length of the run, the time allowed, or a float that went under.",
  }),
  duration: quantity("time", "From the landing to the end."),
  distance: quantity("length", "Travelled by the float."),
  settling: SettlingSchema,
  secondsInWindow: quantity("time", "Time that a sinker spends inside the window."),
  effectiveSeconds: quantity("time", "The same, each second weighted by how little it is towed."),
  firstInWindow: quantity("time", "Present when a sinker reaches the window.").optional(),
  path: z.array(InstantSchema).openapi({ description: "From the landing to the end, evenly thinned." }),
  settled: SettledSchema,
  lengthError: plain("Greatest relative error of a taut segment."),
  steps: count("Steps of time that were computed."),
}).openapi("Drift", { description: "From the landing of the cast to the end of the run." });

export function saidSettling(settling: Settling): SaidSettling {
  return settling.settles ? { ...settling, settles: "yes" } : { settles: "no" };
}

export function driftOf(drift: Drift, units: Units, instants: number): WireDrift {
  const settling = saidSettling(drift.settling);
  const path = thinned(drift.path, instants);
  return encode(DriftSchema, { ...drift, settling, path, settled: saidSettled(drift.settled) }, units);
}
