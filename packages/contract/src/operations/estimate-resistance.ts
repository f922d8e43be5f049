/** estimateResistance: how much does this bed hold the water back? */

import { z } from "@hono/zod-openapi";
import {
  type Bed,
  type ChowChannel,
  type CowanChoice,
  chowTable,
  cowanTable,
  joinGrounds,
  type MetresPerSecond,
  metresPerSecond,
  type Resistance,
  type ResistanceAnswer,
  shearVelocityOf,
} from "@plumbdrift/core";
import { type Footing, footing } from "../answer.js";
import { resistanceExamples } from "../examples-channel.js";
import { type Operation, operation } from "../operation.js";
import { encode } from "../quantity/encode.js";
import { quantity } from "../quantity/schema.js";
import type { Units } from "../quantity/units.js";
import { type Strict, strict, type Wire } from "../quantity/wire.js";
import { channelFields, resting } from "../schemas/channel.js";

interface Asked extends Wire<Bed> {
  readonly units?: Units | undefined;
}

const size = (name: string): Strict<NonNullable<Wire<Bed>["d50"]>> =>
  quantity("length", `${name} of the bed.`, 0.001, 10_000, "mm");

/** The words of a table. */
const wordsOf = <Word extends string>(table: Readonly<Record<Word, unknown>>): z.ZodType<Word> =>
  z.enum(Object.keys(table) as [Word, ...Word[]]);

const ChowSchema: z.ZodType<ChowChannel> = wordsOf(chowTable).openapi("ChowChannel", {
  description: "A row of the table of natural and excavated channels.",
});

const CowanSchema = strict<CowanChoice>({
  material: wordsOf(cowanTable.material),
  irregularity: wordsOf(cowanTable.irregularity),
  variation: wordsOf(cowanTable.variation),
  obstructions: wordsOf(cowanTable.obstructions),
  vegetation: wordsOf(cowanTable.vegetation),
  meandering: wordsOf(cowanTable.meandering),
}).openapi("CowanChoice", {
  description: "What is seen: a base for the material, and what disturbs the flow.",
});

const Request = strict<Asked>({
  hydraulicRadius: quantity("length", "Area over wetted perimeter.", 0.001, 100, "m"),
  depth: quantity("length", "Mean depth; the hydraulic radius unless given.", 0.001, 100, "m").optional(),
  slope: z
    .number()
    .min(1e-7)
    .max(0.5)
    .optional()
    .openapi({ description: "Fall over length. With it, estimates have a speed." }),
  d50: size("D50").optional(),
  d84: size("D84").optional(),
  d90: size("D90").optional(),
  roughness: quantity("length", "Equivalent sand roughness ks.", 0.001, 10_000, "mm").optional(),
  cowan: CowanSchema.optional(),
  chow: ChowSchema.optional(),
  units: channelFields.units,
}).openapi("EstimateResistanceRequest");

interface Estimate extends Omit<Resistance, "relation" | "caveats"> {
  readonly relation: string;
  readonly speed: MetresPerSecond | null;
  readonly outside: boolean;
}

type Estimated = Extract<ResistanceAnswer, { kind: "estimated" }>;

type Said =
  | (Omit<Estimated, "estimates"> & { readonly estimates: readonly Estimate[] })
  | Exclude<ResistanceAnswer, Estimated>;

interface Answered {
  readonly resistance: Wire<Said>;
}

const silent = z.array(z.string()).openapi({
  description:
    "Laws with nothing to say: so far below the tops of the stones their logarithm is not positive.",
});

const EstimateSchema = strict<Wire<Estimate>>({
  law: z.string(),
  relation: z.string().openapi({ description: "Key of the source." }),
  covers: z.enum(["grains", "reach"]).openapi({
    description: "The grains alone, or all that holds a reach back.",
  }),
  n: z.number().openapi({ description: "Manning's n." }),
  nRange: strict<Resistance["nRange"]>({ min: z.number(), max: z.number() }).openapi("RoughnessRange", {
    description: "Least and greatest n of a table, else n twice.",
  }),
  frictionFactor: z.number().openapi({ description: "Darcy-Weisbach f." }),
  velocityRatio: z.number().openapi({ description: "Mean speed over shear velocity." }),
  speed: quantity("speed", "Mean speed; present when the slope is known.").optional(),
  outside: z
    .boolean()
    .openapi({ description: "Whether it is used outside its published range: see caveats." }),
}).openapi("ResistanceEstimate", { description: "What one published law says." });

const ResistanceSchema: z.ZodType<Wire<Said>> = z
  .discriminatedUnion("kind", [
    strict<Wire<Extract<Said, { kind: "estimated" }>>>({
      kind: z.enum(["estimated"]),
      estimates: z.array(EstimateSchema).openapi({ description: "In rising order of n." }),
      silent,
      n: strict<Estimated["n"]>({ min: z.number(), median: z.number(), max: z.number() }).openapi(
        "RoughnessSpread",
        { description: "The spread is the honest answer." },
      ),
    }).openapi("ResistanceEstimated", { description: "Every law that what is known allows." }),
    strict<Wire<Extract<Said, { kind: "none" }>>>({ kind: z.enum(["none"]), silent }).openapi(
      "ResistanceUnknown",
      { description: "Every law that could speak is silent." },
    ),
  ])
  .openapi("ResistanceAnswer", { description: "What the laws say, or that none does." });

const Response = strict<Answered & Footing>({ resistance: ResistanceSchema, ...footing }).openapi(
  "EstimateResistanceResponse",
);

export const estimateResistance: Operation<Bed, ResistanceAnswer, Answered> = operation<
  Asked,
  Bed,
  ResistanceAnswer,
  Answered
>({
  id: "estimateResistance",
  path: "/v1/channels/resistances",
  summary: "How much does this bed hold the water back?",
  description:
    "Manning's n, f and the velocity ratio by every published law that the given sizes, slope and descriptions allow, with their spread.",
  request: Request,
  response: Response,
  examples: resistanceExamples,
  places: [["a stone size", ""]],
  toInput: ({ units: _, ...bed }) => bed,
  encode: (said, units, bed) => ({
    answer: { resistance: encode(ResistanceSchema, saidOf(said, bed), units) },
    grounds: joinGrounds(
      ...(said.kind === "none" ? [] : said.estimates).map(({ relation, caveats }) => ({
        ...resting(relation),
        caveats,
      })),
    ),
  }),
});

function saidOf(answer: ResistanceAnswer, { hydraulicRadius, slope }: Bed): Said {
  if (answer.kind === "none") return answer;
  const shear = slope === undefined ? null : shearVelocityOf(hydraulicRadius, slope);
  const estimates = answer.estimates.map((estimate) => ({
    ...estimate,
    speed: shear === null ? null : metresPerSecond(estimate.velocityRatio * shear),
    outside: estimate.caveats.length > 0,
  }));
  return { ...answer, estimates };
}
