/** A gauge as a request says it, and what was read of it. */

import { z } from "@hono/zod-openapi";
import type { GaugeReport, Seconds } from "@plumbdrift/core";
import { momentText } from "../gauge/moment.js";
import { MAX_READINGS, type SentSeries } from "../gauge/series.js";
import { quantity } from "../quantity/schema.js";
import { unitsOf } from "../quantity/units.js";
import { type Strict, strict, tag, type Wire } from "../quantity/wire.js";

type Form<F extends SentSeries["form"]> = Wire<Extract<SentSeries, { form: F }>>;

const MAX_TEXT = 450_000;

const moment = (what: string): z.ZodString =>
  z
    .string()
    .min(1)
    .max(40)
    .openapi({ description: `${what}, ISO 8601 with its offset.` });
const flow = z.enum(unitsOf("discharge"));
const text = z.string().min(1).max(MAX_TEXT);

const Readings = strict<Form<"readings">>({
  form: tag("readings"),
  readings: z
    .array(
      strict<Form<"readings">["readings"][number]>({
        time: moment("When"),
        discharge: quantity(
          "discharge",
          "At the gauge; absent where it gave none.",
          0,
          1e6,
          "m3/s",
        ).optional(),
        flag: z
          .string()
          .min(1)
          .max(80)
          .optional()
          .openapi({ description: "Why it is not to be trusted: it is left out." }),
      }).openapi("GaugeReading", { description: "One reading of a gauge." }),
    )
    .min(1)
    .max(MAX_READINGS)
    .openapi({ description: `At most ${MAX_READINGS}, in any order.` }),
}).openapi("GaugeReadings", { description: "Readings as they are." });

const Csv = strict<Form<"csv">>({
  form: tag("csv"),
  text: text.openapi({
    description: "RFC 4180 with a header: time, value and, if any, flag. An empty value is missing.",
  }),
  unit: flow.openapi({ description: "Unit of the values." }),
}).openapi("GaugeCsv", { description: "Readings as plain CSV." });

const Waterml = strict<Form<"waterml2">>({
  form: tag("waterml2"),
  text: text.openapi({
    description:
      "OGC WaterML 2.0, time-value pairs: one MeasurementTimeseries, wherever it stands in the document.",
  }),
  unit: flow.optional().openapi({ description: "Needed where the series names no unit." }),
}).openapi("GaugeWaterml", { description: "Readings as OGC WaterML 2.0." });

export interface AskedGauge {
  readonly series: Wire<SentSeries>;
  readonly measuredAt: string;
  readonly now: string;
  readonly longestGap?: Wire<Seconds> | undefined;
}

export const GaugeSchema: Strict<AskedGauge> = strict<AskedGauge>({
  series: z.discriminatedUnion("form", [Readings, Csv, Waterml]).openapi("GaugeSeries", {
    description: "A series of discharges in one of three forms.",
  }),
  measuredAt: moment("When the stop was measured"),
  now: moment("The hour in question: now, or of a forecast"),
  longestGap: quantity(
    "time",
    "Longest time between two readings to read across; 6 h unless given.",
    60,
    1e6,
    "s",
  ).optional(),
}).openapi("Gauge", { description: "A gauge in place of two discharges: it is read at two hours." });

export interface WireReport extends Omit<GaugeReport, "gaps"> {
  readonly gaps: readonly { readonly from: string; readonly to: string }[];
}

const count = z.number().int().min(0).max(1e9);

export const ReportSchema: Strict<WireReport> = strict<WireReport>({
  used: count.openapi({ description: "Readings used." }),
  missing: count.openapi({ description: "Readings without a value." }),
  flagged: z
    .array(
      strict<GaugeReport["flagged"][number]>({
        flag: z.string().openapi({ description: "In the words of the gauge." }),
        count: count.openapi({ description: "How many." }),
      }).openapi("FlagCount", { description: "How many readings one flag left out." }),
    )
    .openapi({ description: "Readings left out for their flag." }),
  repeated: count.openapi({ description: "Readings of a time already read; the first counts." }),
  gaps: z
    .array(
      strict<WireReport["gaps"][number]>({
        from: z.string().openapi({ description: "UTC." }),
        to: z.string().openapi({ description: "UTC." }),
      }).openapi("GaugeGap", { description: "Two neighbours farther apart than the longest gap." }),
    )
    .openapi({ description: "Where nothing is read." }),
}).openapi("GaugeReport", { description: "What was used of the series, and what was left out." });

export function reportOf({ gaps, ...report }: GaugeReport): WireReport {
  return { ...report, gaps: gaps.map(({ from, to }) => ({ from: momentText(from), to: momentText(to) })) };
}
