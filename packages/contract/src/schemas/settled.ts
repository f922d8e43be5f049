/** A settled rig as an answer says it. */

import { z } from "@hono/zod-openapi";
import type { BedContact, LinePoint, Regime, Settled, SinkerState } from "@plumbdrift/core";
import { encode } from "../quantity/encode.js";
import { quantity } from "../quantity/schema.js";
import type { Units } from "../quantity/units.js";
import { count, type Enumeration, plain, type Strict, strict, type Wire } from "../quantity/wire.js";

/** A settled rig with a line of few points, and no margin where nothing pulls. */
export interface SaidSettled extends Omit<Settled, "floatMargin" | "grounds"> {
  readonly floatMargin: number | null;
}

export type WireSettled = Wire<SaidSettled>;

export const RegimeSchema: Enumeration<Regime> = z
  .enum(["hanging", "on-bed", "drowned", "slack-water"])
  .openapi("Regime", {
    description:
      "`hanging`: clear of the bed. `on-bed`: the lowest sinker touches. `drowned`: the load is beyond what the float can carry. `slack-water`: no shear, it hangs plumb.",
  });

const SinkerStateSchema = strict<Wire<SinkerState>>({
  heightAboveBed: quantity("length", "Height above the bed."),
  depthBelowSurface: quantity("length", "Depth below the surface."),
  downstreamOfFloat: quantity("length", "Along the stream from the float, positive downstream."),
  excess: quantity("speed", "Drift speed less the speed of its own water: positive when towed."),
  tension: quantity("force", "Tension of the line just above it."),
}).openapi("SinkerState", { description: "Where a sinker hangs." });

const LinePointSchema = strict<Wire<LinePoint>>({
  downstreamOfFloat: quantity("length", "Along the stream from the float, positive downstream."),
  heightAboveBed: quantity("length", "Height above the bed."),
  tension: quantity("force", "Tension of the line there."),
}).openapi("LinePoint", { description: "A point of the line." });

const BedContactSchema = strict<Wire<BedContact>>({
  reaction: quantity("force", "Upward push of the bed."),
  friction: quantity("force", "Positive downstream."),
  anchored: z.boolean().openapi({ description: "Whether friction holds the rig still." }),
  lyingLine: quantity("length", "Line that lies on the bed."),
}).openapi("BedContact", { description: "What the bed does to a rig that touches it." });

export const SettledSchema: Strict<WireSettled> = strict<WireSettled>({
  regime: RegimeSchema,
  driftSpeed: quantity("speed", "Of the whole rig, along the stream."),
  slip: quantity("speed", "Drift speed less surface speed: negative when slower than the foam."),
  lean: quantity("angle", "Of the chord from the vertical, positive when the sinker trails upstream."),
  sinkers: z.array(SinkerStateSchema).openapi({ description: "From the top down." }),
  shape: z.array(LinePointSchema).openapi({ description: "The line from the float down." }),
  load: quantity("force", "Downward pull of the line on the float."),
  tow: quantity("force", "Pull of the float on the line, positive downstream."),
  draft: quantity("length", "How deep the float sits.", "mm"),
  reserve: quantity("force", "What the float can carry before it drowns."),
  floatMargin: plain("Reserve over load; absent when nothing pulls.").optional(),
  bed: BedContactSchema.optional(),
  alternative: RegimeSchema.openapi({
    description: "Another steady state that the rig also has.",
  }).optional(),
  residual: strict<Wire<Settled["residual"]>>({
    force: quantity("force", "Left over at the float."),
    length: quantity("length", "Of the line, against the depth."),
  }).openapi("Residual", {
    description: "What is left of the equations.",
  }),
  iterations: count("How often the line was integrated."),
}).openapi("Settled", { description: "Where a rig hangs once every force is in balance." });

export function saidSettled(settled: Settled): SaidSettled {
  const floatMargin = Number.isFinite(settled.floatMargin) ? settled.floatMargin : null;
  return { ...settled, shape: thinned(settled.shape), floatMargin };
}

export function settledOf(settled: Settled, units: Units): WireSettled {
  return encode(SettledSchema, saidSettled(settled), units);
}

/** At most about fifty items of a list, the first and the last among them. */
export function thinned<T>(items: readonly T[], most = 50): readonly T[] {
  const every = Math.max(1, Math.ceil((items.length - 1) / most));
  return items.filter((_, i) => i % every === 0 || i === items.length - 1);
}
