/** Where the angler stands and casts, as a request says it, and what the lanes make of it. */

import { z } from "@hono/zod-openapi";
import {
  type Cast,
  type LaneSpeed,
  type Metres,
  metres,
  type Presentation,
  type Presented,
  present,
} from "@plumbdrift/core";
import { encode } from "../quantity/encode.js";
import { quantity } from "../quantity/schema.js";
import type { Units } from "../quantity/units.js";
import { type Decoded, type Strict, strict, type Wire } from "../quantity/wire.js";
import { at } from "../refusal.js";

export type WirePresentation = Wire<Omit<Presentation, "dropper">>;

export const PresentationSchema: Strict<WirePresentation> = strict<WirePresentation>({
  distance: quantity("length", "From the angler to where the dry lands, over the water.", 0.1, 60, "m"),
  upstream: quantity(
    "angle",
    "Direction of the cast from straight across, positive upstream: 45 deg is up and across.",
    -90,
    90,
    "deg",
  ),
  lanes: z
    .array(
      strict<Wire<LaneSpeed>>({
        across: quantity("length", "From the angler, across the stream.", 0, 200, "m"),
        surfaceSpeed: quantity("speed", "Of the surface there.", -5, 10, "m/s"),
      }).openapi("LaneSpeed", { description: "How quick the surface is in one lane." }),
    )
    .min(2)
    .max(200)
    .openapi({ description: "2 to 200 lanes, the nearest first, measured or from spreadFlow." }),
  turnover: z.number().min(-1).max(1).optional().openapi({
    description:
      "How far past the dry the nymph lands along the cast, as a share of the dropper: 1 turned over, -1 fallen back; 0.6 unless given.",
  }),
  slack: quantity("length", "Line lying loose on the water; none unless given.", 0, 60, "m").optional(),
}).openapi("Presentation", {
  description: "Where the angler stands and casts, and the lanes of the stream.",
});

type Said = Omit<Presented, "grounds">;

export const PresentedSchema: Strict<Wire<Said>> = strict<Wire<Said>>({
  landing: strict<Wire<Said["landing"]>>({
    downstream: quantity("length", "From the angler; below 0 upstream."),
    across: quantity("length", "From the angler, across the stream."),
  }).openapi("Landing", { description: "Where the dry lands." }),
  cast: strict<Wire<Said["cast"]>>({
    sinkerDownstream: quantity("length", "From the dry; below 0 upstream of it."),
    sinkerAcross: quantity("length", "From the dry; positive away from the angler."),
    laneGradient: quantity("rate", "Surface speed gained per length across, away from the angler."),
  }).openapi("CastOverLanes", { description: "Where the nymph lands, for cast." }),
  surfaceSpeed: quantity("speed", "Of the surface where the dry lands."),
  laneDifference: quantity("speed", "Mean of the surface under the line less that under the dry."),
  dragFree: quantity("time", "Until the slack is used up; absent where line and dry drift alike.").optional(),
  reach: quantity("length", "How far the dry drifts until the line is straight down to it."),
  nymphGain: quantity("speed", "How much quicker the water is where the nymph lands than under the dry."),
}).openapi("Presented", { description: "What the lanes make of a presentation." });

/** Lanes and cast for a dropper; what is wrong with them is laid at `/presentation`. */
export function presentedOf(given: Decoded<WirePresentation>, dropper: Presentation["dropper"]): Presented {
  return at("/presentation", () => present({ ...given, dropper }));
}

export function saidPresented({ grounds: _, ...presented }: Presented, units: Units): Wire<Said> {
  return encode(PresentedSchema, presented, units);
}

interface Drifted {
  readonly cast?: Partial<Cast>;
  readonly runLength?: Metres;
}

/** The options of a drift under a presentation: what a cast says of its own goes first, and the run ends where the line is straight. */
export function drifted<T extends Drifted>(presented: Presented, options: T): T & Required<Drifted> {
  const run = options.runLength ?? metres(6);
  return {
    ...options,
    cast: { ...presented.cast, ...options.cast },
    runLength: metres(Math.min(run, Math.max(0.01, presented.reach))),
  };
}
