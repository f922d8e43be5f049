/** A measured discharge as an answer says it. */

import { z } from "@hono/zod-openapi";
import type { DischargeUncertainty, MeasuredDischarge, Panel } from "@plumbdrift/core";
import { quantity } from "../quantity/schema.js";
import { type Enumeration, plain, type Strict, strict, type Wire } from "../quantity/wire.js";

export type Method = MeasuredDischarge["method"];

export const MethodSchema: Enumeration<Method> = z
  .enum(["mid-section, half-spacing", "mid-section, triangle", "mean-section"])
  .openapi("DischargeMethod", {
    description: "How verticals become panels, and what the mid-section method makes of the edges.",
  });

export interface Measured extends Omit<MeasuredDischarge, "relation"> {
  readonly uncertainty: DischargeUncertainty | null;
}

const part = (of: string): z.ZodNumber => plain(`Share of the variance that comes from ${of}, 0 to 1.`);

export const MeasuredSchema: Strict<Wire<Measured>> = strict<Wire<Measured>>({
  method: MethodSchema,
  discharge: quantity("discharge", "Through the whole section."),
  area: quantity("area", "As the method counts it."),
  width: quantity("length", "Of the water, across the stream."),
  meanSpeed: quantity("speed", "Discharge over area."),
  panels: z
    .array(
      strict<Wire<Panel>>({
        station: quantity("length", "Middle of the panel, from the zero of the tape."),
        width: quantity("length", "Across the stream."),
        area: quantity("area", "Of the panel."),
        speed: quantity("speed", "Mean over the panel."),
        discharge: quantity("discharge", "Through the panel."),
      }).openapi("Panel", { description: "The part of the section that a vertical or a pair stands for." }),
    )
    .openapi({ description: "In the order of the verticals." }),
  greatestShare: plain("Of the discharge in one panel; common practice keeps it under a tenth."),
  uncertainty: strict<Wire<DischargeUncertainty>>({
    relative: plain("Standard uncertainty over discharge."),
    standard: quantity("discharge", "Standard uncertainty."),
    expanded: quantity("discharge", "Coverage factor times the standard uncertainty."),
    coverageFactor: plain("Expanded over standard uncertainty."),
    shares: strict<DischargeUncertainty["shares"]>({
      calibration: part("tape, sounding and meter together"),
      verticals: part("the number of verticals"),
      width: part("the widths"),
      depth: part("the depths"),
      points: part("the number of points in a vertical"),
      meter: part("the meter at one point"),
      exposure: part("pulsation during the exposure"),
    }).openapi("VarianceShares", { description: "Share of the variance that each component has." }),
  })
    .openapi("DischargeUncertainty", { description: "Present when its components were stated." })
    .optional(),
});
