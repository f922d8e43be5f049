/** What the laws of resistance say, as an answer says it. */

import { z } from "@hono/zod-openapi";
import {
  type Bed,
  type MetresPerSecond,
  metresPerSecond,
  type Resistance,
  type ResistanceAnswer,
  shearVelocityOf,
} from "@plumbdrift/core";
import { quantity } from "../quantity/schema.js";
import { plain, strict, tag, type Wire } from "../quantity/wire.js";

interface Estimate extends Omit<Resistance, "relation" | "caveats"> {
  readonly relation: string;
  readonly speed: MetresPerSecond | null;
  readonly outside: boolean;
}

type Estimated = Extract<ResistanceAnswer, { kind: "estimated" }>;

export type SaidResistance =
  | (Omit<Estimated, "estimates"> & { readonly estimates: readonly Estimate[] })
  | Exclude<ResistanceAnswer, Estimated>;

const silent = z.array(z.string()).openapi({
  description:
    "Laws with nothing to say: so far below the tops of the stones their logarithm is not positive.",
});

const EstimateSchema = strict<Wire<Estimate>>({
  law: z.string().openapi({ description: "Name of the law." }),
  relation: z.string().openapi({ description: "Key of the source." }),
  covers: z.enum(["grains", "reach"]).openapi({
    description: "The grains alone, or all that holds a reach back.",
  }),
  n: plain("Manning's n."),
  nRange: strict<Resistance["nRange"]>({ min: plain("Least n."), max: plain("Greatest n.") }).openapi(
    "RoughnessRange",
    {
      description: "Least and greatest n of a table, else n twice.",
    },
  ),
  frictionFactor: plain("Darcy-Weisbach f."),
  velocityRatio: plain("Mean speed over shear velocity."),
  speed: quantity("speed", "Mean speed; present when the slope is known.").optional(),
  outside: z
    .boolean()
    .openapi({ description: "Whether it is used outside its published range: see caveats." }),
}).openapi("ResistanceEstimate", { description: "What one published law says." });

export const ResistanceSchema: z.ZodType<Wire<SaidResistance>> = z
  .discriminatedUnion("kind", [
    strict<Wire<Extract<SaidResistance, { kind: "estimated" }>>>({
      kind: tag("estimated"),
      estimates: z.array(EstimateSchema).openapi({ description: "In rising order of n." }),
      silent,
      n: strict<Estimated["n"]>({
        min: plain("Least n of all laws."),
        median: plain("Median n."),
        max: plain("Greatest n."),
      }).openapi("RoughnessSpread", { description: "The spread is the honest answer." }),
    }).openapi("ResistanceEstimated", { description: "Every law that what is known allows." }),
    strict<Wire<Extract<SaidResistance, { kind: "none" }>>>({ kind: tag("none"), silent }).openapi(
      "ResistanceUnknown",
      { description: "Every law that could speak is silent." },
    ),
  ])
  .openapi("ResistanceAnswer", { description: "What the laws say, or that none does." });

/** The laws with their speeds where the slope is known. */
export function saidResistance(answer: ResistanceAnswer, { hydraulicRadius, slope }: Bed): SaidResistance {
  if (answer.kind === "none") return answer;
  const shear = slope === undefined ? null : shearVelocityOf(hydraulicRadius, slope);
  const estimates = answer.estimates.map((estimate) => ({
    ...estimate,
    speed: shear === null ? null : metresPerSecond(estimate.velocityRatio * shear),
    outside: estimate.caveats.length > 0,
  }));
  return { ...answer, estimates };
}
