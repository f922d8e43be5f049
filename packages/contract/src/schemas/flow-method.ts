/** How to get from one discharge to the other, as a request says it. */

import { z } from "@hono/zod-openapi";
import type { Celsius, FlowMethod, Grounds, StopPair } from "@plumbdrift/core";
import { quantity } from "../quantity/schema.js";
import { type Decoded, type Said, strict, tag, type Wire } from "../quantity/wire.js";
import { channelFields } from "./channel.js";
import { frictionOf, resting, type WireFriction } from "./friction.js";
import { sectionOf, type WireSection } from "./section.js";

interface ByExponents {
  readonly by: "published-exponents";
}

interface ByPairs {
  readonly by: "pairs";
  readonly pairs: readonly Wire<StopPair>[];
}

interface BySection {
  readonly by: "section";
  readonly section: WireSection;
  readonly friction: WireFriction;
  readonly slope: number;
  readonly station?: Said<"length"> | undefined;
}

export type WireMethod = ByExponents | ByPairs | BySection;

const MAX_PAIRS = 200;

export const MethodSchema: z.ZodType<WireMethod> = z
  .discriminatedUnion("by", [
    strict<ByExponents>({ by: tag("published-exponents") }).openapi("ByPublishedExponents", {
      description:
        "Powers of discharge with the mean exponents of many stations; their scatter is an assumption.",
    }),
    strict<ByPairs>({
      by: tag("pairs"),
      pairs: z
        .array(
          strict<Wire<StopPair>>({
            discharge: quantity("discharge", "At the same gauge.", 1e-6, 1e6, "m3/s"),
            depth: quantity("length", "Depth at the same spot.", 0.001, 50, "m"),
            surfaceSpeed: quantity("speed", "Speed of its surface.", 0.001, 10, "m/s").optional(),
            width: quantity("length", "Width of the water.", 0.001, 10_000, "m").optional(),
          }).openapi("StopPair", { description: "What was noted at the stop at another discharge." }),
        )
        .min(2)
        .max(MAX_PAIRS)
        .openapi({ description: `Two to ${MAX_PAIRS}; the stop itself is one more.` }),
    }).openapi("ByPairs", { description: "Powers fitted to your own notes, with the interval of one more." }),
    strict<BySection>({
      by: tag("section"),
      section: channelFields.section,
      friction: channelFields.friction,
      slope: channelFields.slope,
      station: quantity(
        "length",
        "Where the stop is in a surveyed section; the deepest lane unless given.",
        -10_000,
        10_000,
        "m",
      ).optional(),
    }).openapi("BySection", {
      description: "Uniform flow in a section: the rise of the water and its lanes.",
    }),
  ])
  .openapi("FlowMethod", { description: "How to get from one discharge to the other." });

export function methodOf(
  said: Decoded<WireMethod> | undefined,
  temperature: Celsius | undefined,
): { readonly method: FlowMethod; readonly grounds: Grounds } {
  if (said === undefined) return { method: { by: "published-exponents" }, grounds: resting() };
  if (said.by !== "section") return { method: said, grounds: resting() };
  const { friction, grounds } = frictionOf(said.friction, temperature);
  const channel = { section: sectionOf(said.section, "/method/section"), friction, slope: said.slope };
  const { station } = said;
  return { method: { by: "section", channel, ...(station === undefined ? {} : { station }) }, grounds };
}
