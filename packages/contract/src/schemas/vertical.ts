/** One vertical of a discharge measurement, as a request says it. */

import { z } from "@hono/zod-openapi";
import {
  type Assumption,
  type Grounds,
  type Metres,
  type MetresPerSecond,
  metresPerSecond,
  type PointSpeeds,
  type Vertical,
  verticalMean,
} from "@plumbdrift/core";
import { quantity } from "../quantity/schema.js";
import { type Decoded, type Strict, strict, tag, type Wire } from "../quantity/wire.js";

interface Averaged {
  readonly method: "mean";
  readonly speed: MetresPerSecond;
}

interface Sounded {
  readonly station: Metres;
  readonly depth: Metres;
  readonly speeds?: Averaged | PointSpeeds;
}

export type WireVertical = Wire<Sounded>;

type Points<M extends PointSpeeds["method"]> = Wire<Extract<PointSpeeds, { method: M }>>;

const speedAt = (where: string): Strict<Points<"six-tenths">["at60"]> =>
  quantity("speed", `Speed ${where}.`, -20, 20, "m/s");
const atSurface = speedAt("at the surface");
const at20 = speedAt("at 0.2 of the depth below the surface");
const at60 = speedAt("at 0.6 of the depth below the surface");
const at80 = speedAt("at 0.8 of the depth below the surface");
const atBed = speedAt("just above the bed");

const SpeedsSchema = z
  .discriminatedUnion("method", [
    strict<Wire<Averaged>>({ method: tag("mean"), speed: speedAt("as a mean over the depth") }).openapi(
      "MeanSpeed",
      { description: "The mean over the depth, already known." },
    ),
    strict<Points<"six-tenths">>({ method: tag("six-tenths"), at60 }).openapi("SixTenths", {
      description: "One point stands for the mean.",
    }),
    strict<Points<"two-point">>({ method: tag("two-point"), at20, at80 }).openapi("TwoPoint", {
      description: "The mean of two points.",
    }),
    strict<Points<"three-point">>({ method: tag("three-point"), at20, at60, at80 }).openapi("ThreePoint", {
      description: "The middle point counts twice.",
    }),
    strict<Points<"five-point">>({
      method: tag("five-point"),
      atSurface,
      at20,
      at60,
      at80,
      atBed,
    }).openapi("FivePoint", { description: "From the surface to the bed." }),
    strict<Points<"surface">>({
      method: tag("surface"),
      atSurface,
      coefficient: z
        .number()
        .min(0)
        .max(1.5)
        .optional()
        .openapi({ description: "Mean over surface speed; 0.85 unless given." }),
    }).openapi("SurfaceOnly", { description: "A float or a radar: the surface times a coefficient." }),
  ])
  .openapi("PointSpeeds", { description: "What was measured in one vertical." });

export const VerticalSchema: Strict<WireVertical> = strict<WireVertical>({
  station: quantity("length", "Distance along the tape.", -10_000, 10_000, "m"),
  depth: quantity("length", "Depth there; 0 at a dry edge.", 0, 1000, "m"),
  speeds: SpeedsSchema.optional(),
}).openapi("Vertical", { description: "A sounding with its speeds: still water unless they are given." });

/** A vertical with the mean speed of its method, and what that rests on. */
export function verticalOf({ station, depth, speeds }: Decoded<WireVertical>): {
  readonly vertical: Vertical;
  readonly grounds: Grounds;
} {
  if (speeds === undefined)
    return { vertical: { station, depth, speed: metresPerSecond(0) }, grounds: bare() };
  if (speeds.method === "mean") return { vertical: { station, depth, speed: speeds.speed }, grounds: bare() };
  const { speed, relation, assumptions } = verticalMean(speeds);
  return { vertical: { station, depth, speed }, grounds: { ...bare(assumptions), relations: [relation] } };
}

function bare(assumptions: readonly Assumption[] = []): Grounds {
  return { relations: [], assumptions, caveats: [] };
}
