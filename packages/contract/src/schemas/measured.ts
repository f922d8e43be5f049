/** A measured discharge as an answer says it. */

import { z } from "@hono/zod-openapi";
import type { DischargeUncertainty, MeasuredDischarge, Panel } from "@plumbdrift/core";
import { quantitySchemas as q, quantity } from "../quantity/schema.js";
import { type Strict, strict, type Wire } from "../quantity/wire.js";

export type Method = MeasuredDischarge["method"];

export const MethodSchema: z.ZodType<Method> = z
  .enum(["mid-section, half-spacing", "mid-section, triangle", "mean-section"])
  .openapi("DischargeMethod", {
    description: "How verticals become panels, and what the mid-section method makes of the edges.",
  });

export interface Measured extends Omit<MeasuredDischarge, "relation"> {
  readonly uncertainty: DischargeUncertainty | null;
}

const part = z.number();

export const MeasuredSchema: Strict<Wire<Measured>> = strict<Wire<Measured>>({
  method: MethodSchema,
  discharge: q.discharge,
  area: quantity("area", "As the method counts it."),
  width: q.length,
  meanSpeed: quantity("speed", "Discharge over area."),
  panels: z.array(
    strict<Wire<Panel>>({
      station: quantity("length", "Middle of the panel."),
      width: q.length,
      area: q.area,
      speed: q.speed,
      discharge: q.discharge,
    }).openapi("Panel", { description: "The part of the section that a vertical or a pair stands for." }),
  ),
  greatestShare: part.openapi({
    description: "Of the discharge in one panel; common practice keeps it under a tenth.",
  }),
  uncertainty: strict<Wire<DischargeUncertainty>>({
    relative: part.openapi({ description: "Standard uncertainty over discharge." }),
    standard: q.discharge,
    expanded: quantity("discharge", "Coverage factor times the standard uncertainty."),
    coverageFactor: part,
    shares: strict<DischargeUncertainty["shares"]>({
      calibration: part,
      verticals: part,
      width: part,
      depth: part,
      points: part,
      meter: part,
      exposure: part,
    }).openapi("VarianceShares", { description: "Share of the variance that each component has." }),
  })
    .openapi("DischargeUncertainty", { description: "Present when its components were stated." })
    .optional(),
});
