/** A stop at another discharge, as an answer says it. */

import { z } from "@hono/zod-openapi";
import type { FlowShift, GaugeAt, Metres, MetresPerSecond, StreamValue } from "@plumbdrift/core";
import { momentText } from "../gauge/moment.js";
import { encode } from "../quantity/encode.js";
import { quantity } from "../quantity/schema.js";
import type { Units } from "../quantity/units.js";
import { type Strict, strict, tag, type Wire } from "../quantity/wire.js";
import { StreamLengthSchema, StreamSpeedSchema } from "./stream.js";

interface Shifted {
  readonly kind: "shifted";
  readonly depth: StreamValue<Metres>;
  readonly surfaceSpeed: StreamValue<MetresPerSecond>;
  readonly width: StreamValue<Metres> | null;
}

interface GaugeSilent {
  readonly kind: "gauge-silent";
  readonly at: "measuredAt" | "now";
  readonly why: "gap" | "outside";
  readonly from: string;
  readonly to: string;
}

type Dry = Extract<FlowShift, { kind: "dry" }>;
type NotCarried = Extract<FlowShift, { kind: "not-carried" }>;

export type WireShift = Wire<Shifted> | Wire<Dry> | Wire<NotCarried> | GaugeSilent;

const ShiftedSchema: Strict<Wire<Shifted>> = strict<Wire<Shifted>>({
  kind: tag("shifted"),
  depth: StreamLengthSchema.openapi({ description: "At the stop." }),
  surfaceSpeed: StreamSpeedSchema.openapi({ description: "Over the stop." }),
  width: StreamLengthSchema.openapi({
    description: "Of the water; where a width was given or follows.",
  }).optional(),
}).openapi("FlowShifted", { description: "The stop at the new discharge." });

const DrySchema = strict<Wire<Dry>>({
  kind: tag("dry"),
  fall: quantity("length", "How far the water falls; more than the depth at the stop.", "m"),
}).openapi("StopDry", { description: "The water has left the spot." });

const NotCarriedSchema = strict<Wire<NotCarried>>({
  kind: tag("not-carried"),
  discharge: quantity("discharge", "The one that the section does not carry.", "m3/s"),
  why: z.enum(["over-capacity", "within-step", "no-slope"]).openapi({
    description: "Beyond the section, inside a step of its capacity, or on a bed that does not fall.",
  }),
}).openapi("FlowNotCarried", {
  description: "The section does not carry one of the discharges in uniform flow.",
});

const GaugeSilentSchema = strict<GaugeSilent>({
  kind: tag("gauge-silent"),
  at: z.enum(["measuredAt", "now"]).openapi({ description: "The hour at which it is silent." }),
  why: z
    .enum(["gap", "outside"])
    .openapi({ description: "A gap, or before the first or after the last reading." }),
  from: z.string().openapi({ description: "Start of the gap, or the first reading, UTC." }),
  to: z.string().openapi({ description: "End of the gap, or the last reading, UTC." }),
}).openapi("GaugeSilent", {
  description: "The gauge has nothing to say at the hour; nothing is extrapolated.",
});

export const ShiftSchema: z.ZodType<WireShift> = z
  .discriminatedUnion("kind", [ShiftedSchema, DrySchema, NotCarriedSchema, GaugeSilentSchema])
  .openapi("FlowShift", { description: "The stop at the new discharge, or why there is no saying." });

export function saidShift(
  shift: FlowShift | { readonly kind: "gauge-silent"; readonly at: "measuredAt" | "now" },
  gauge: Readonly<Record<"measuredAt" | "now", GaugeAt>> | null,
  units: Units,
): WireShift {
  if (shift.kind === "shifted") return encode(ShiftedSchema, shift, units);
  if (shift.kind === "dry") return encode(DrySchema, shift, units);
  if (shift.kind === "not-carried") return encode(NotCarriedSchema, shift, units);
  const { at, kind } = shift;
  const read = gauge?.[at];
  if (read === undefined || read.kind === "read") throw new Error("a silent gauge that speaks");
  const [from, to] = read.kind === "gap" ? [read.from, read.to] : [read.first, read.last];
  return { kind, at, why: read.kind, from: momentText(from), to: momentText(to) };
}
