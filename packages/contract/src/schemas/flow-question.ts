/** What shiftFlow is asked: the stop, two discharges or a gauge, and a method. */

import { z } from "@hono/zod-openapi";
import type { CubicMetresPerSecond, GaugeQuestion, Wade } from "@plumbdrift/core";
import type { Cost, Counted } from "../cost.js";
import { momentOf } from "../gauge/moment.js";
import { readingsOf } from "../gauge/series.js";
import { quantity } from "../quantity/schema.js";
import type { Units } from "../quantity/units.js";
import { type Decoded, type Said, type Strict, strict, type Wire } from "../quantity/wire.js";
import { RefusedError } from "../refusal.js";
import { channelFields } from "./channel.js";
import { MethodSchema, type WireMethod } from "./flow-method.js";
import { type AskedGauge, GaugeSchema } from "./gauge.js";
import { type AskedSetups, SetupsSchema } from "./ranking.js";
import { rankingTerms } from "./ranking-cost.js";
import { GroundSchema, WaderSchema } from "./wading.js";
import { UnitsSchema, WaterSchema, type WireWater } from "./water.js";

export interface AskedFlowShift extends AskedSetups {
  readonly water: WireWater;
  readonly width?: Said<"length"> | undefined;
  readonly measuredAt?: Said<"discharge"> | undefined;
  readonly now?: Said<"discharge"> | undefined;
  readonly gauge?: AskedGauge | undefined;
  readonly method?: WireMethod | undefined;
  readonly confidence?: number | undefined;
  readonly wader?: Wire<NonNullable<Wade["wader"]>> | undefined;
  readonly ground?: NonNullable<Wade["footing"]> | undefined;
  readonly rank?: boolean | undefined;
  readonly units?: Units | undefined;
}

export const ShiftFlowRequest: Strict<AskedFlowShift> = strict<AskedFlowShift>({
  water: WaterSchema.openapi({ description: "The stop as it was measured." }),
  width: quantity("length", "Width of the water, when it was measured.", 0.01, 10_000, "m").optional(),
  measuredAt: quantity(
    "discharge",
    "At the gauge, when the stop was measured. With now; or give gauge.",
    1e-6,
    1e6,
    "m3/s",
  ).optional(),
  now: quantity("discharge", "At the gauge, now or as forecast.", 1e-6, 1e6, "m3/s").optional(),
  gauge: GaugeSchema.optional(),
  method: MethodSchema.optional().openapi({
    description: "How to get from one discharge to the other; published exponents unless given.",
  }),
  confidence: channelFields.confidence.openapi({
    description: "Share of the cases that the intervals are to hold; 0.9 unless given.",
  }),
  wader: WaderSchema.optional(),
  ground: GroundSchema.optional(),
  rank: z.boolean().optional().openapi({
    description: "Ranks setups at the new flow, with fish, box and the rest; false unless given.",
  }),
  ...SetupsSchema.shape,
  units: UnitsSchema.optional(),
}).openapi("ShiftFlowRequest");

/** Two discharges, or a gauge to be read at two hours. */
export type Flows =
  | { readonly measuredAt: CubicMetresPerSecond; readonly now: CubicMetresPerSecond }
  | { readonly gauge: Readonly<Record<"measuredAt" | "now", GaugeQuestion>> };

/** Two discharges or a gauge: one of the two, and whole. */
export function flowsOf({
  gauge,
  measuredAt,
  now,
}: {
  readonly gauge: Decoded<AskedGauge> | undefined;
  readonly measuredAt: CubicMetresPerSecond | undefined;
  readonly now: CubicMetresPerSecond | undefined;
}): Flows {
  if (gauge === undefined && measuredAt !== undefined && now !== undefined) return { measuredAt, now };
  if (gauge === undefined || measuredAt !== undefined || now !== undefined) {
    const path = gauge !== undefined ? "/gauge" : measuredAt === undefined ? "/measuredAt" : "/now";
    const expected = "measuredAt and now, or gauge, one of the two";
    throw new RefusedError("impossible", `${path}: expected ${expected}.`, {
      path,
      expected,
      received: gauge === undefined ? "nothing" : "both",
    });
  }
  const readings = readingsOf(gauge.series, "/gauge/series");
  const { longestGap } = gauge;
  const at = (when: "measuredAt" | "now"): GaugeQuestion => ({
    readings,
    time: momentOf(gauge[when], `/gauge/${when}`),
    ...(longestGap === undefined ? {} : { longestGap }),
  });
  return { gauge: { measuredAt: at("measuredAt"), now: at("now") } };
}

/** A ranking counts only where it is asked for. */
export const flowCost: Cost<Counted<AskedFlowShift>> = {
  lessAt: "",
  terms: [
    {
      counts: "pairs of your own",
      each: 50,
      of: ({ method }) => (method?.by === "pairs" ? method.pairs.length : 0),
    },
    {
      counts: "points of a surveyed section, for four discharges",
      each: 200,
      of: ({ method }) =>
        method?.by !== "section" ? 0 : method.section.shape === "surveyed" ? method.section.points.length : 1,
    },
    {
      counts: "gauge readings, or twentieths of the characters of a text",
      each: 10,
      of: ({ gauge }) =>
        gauge === undefined
          ? 0
          : gauge.series.form === "readings"
            ? gauge.series.readings.length
            : Math.ceil(gauge.series.text.length / 20),
    },
    ...rankingTerms.map((term) => ({
      ...term,
      counts: `with rank, ${term.counts}`,
      of: (body: Decoded<AskedFlowShift>) => (body.rank === true ? term.of(body) : 0),
    })),
  ],
};
