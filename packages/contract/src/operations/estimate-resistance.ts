/** estimateResistance: how much does this bed hold the water back? */

import { z } from "@hono/zod-openapi";
import {
  type Bed,
  type ChowChannel,
  type CowanChoice,
  chowTable,
  cowanTable,
  joinGrounds,
  type ResistanceAnswer,
  resistanceLaws,
} from "@plumbdrift/core";
import { type Footing, footing } from "../answer.js";
import { resistanceExamples } from "../examples-measured.js";
import { resistanceSteps } from "../explanations/measured.js";
import { type Operation, operation } from "../operation.js";
import { paths } from "../paths.js";
import { encode } from "../quantity/encode.js";
import { quantity } from "../quantity/schema.js";
import type { Units } from "../quantity/units.js";
import { type Enumeration, type Strict, strict, type Wire } from "../quantity/wire.js";
import { channelFields } from "../schemas/channel.js";
import { resting } from "../schemas/friction.js";
import { ResistanceSchema, type SaidResistance, saidResistance } from "../schemas/resistance.js";

interface Asked extends Wire<Bed> {
  readonly units?: Units | undefined;
}

const size = (name: string): Strict<NonNullable<Wire<Bed>["d50"]>> =>
  quantity("length", `${name} of the bed.`, 0.001, 10_000, "mm");

/** The words of a table. */
const wordsOf = <Word extends string>(table: Readonly<Record<Word, unknown>>): Enumeration<Word> =>
  z.enum(Object.keys(table) as [Word, ...Word[]]);

const ChowSchema: Enumeration<ChowChannel> = wordsOf(chowTable).openapi("ChowChannel", {
  description: "A row of the table of natural and excavated channels.",
});

const CowanSchema = strict<CowanChoice>({
  material: wordsOf(cowanTable.material).openapi({ description: "Of the bed: the base value." }),
  irregularity: wordsOf(cowanTable.irregularity).openapi({ description: "Of bed and banks." }),
  variation: wordsOf(cowanTable.variation).openapi({ description: "Of the section along the channel." }),
  obstructions: wordsOf(cowanTable.obstructions).openapi({ description: "Boulders, roots, debris." }),
  vegetation: wordsOf(cowanTable.vegetation).openapi({ description: "How much it holds the water back." }),
  meandering: wordsOf(cowanTable.meandering).openapi({
    description: "By the sinuosity: below 1.2, to 1.5, above.",
  }),
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

interface Answered {
  readonly resistance: Wire<SaidResistance>;
}

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
  path: paths.estimateResistance,
  summary: "How much does this bed hold the water back?",
  description:
    "Manning's n, f and the velocity ratio by every published law that the given sizes, slope and descriptions allow, with their spread.",
  request: Request,
  response: Response,
  examples: resistanceExamples,
  cost: {
    lessAt: "",
    terms: [{ counts: "laws of resistance, tried all", each: 50, of: () => resistanceLaws.length }],
  },
  places: [["a stone size", ""]],
  toInput: ({ units: _, ...bed }) => bed,
  encode: (said, units, bed) => ({
    answer: { resistance: encode(ResistanceSchema, saidResistance(said, bed), units) },
    grounds: joinGrounds(
      ...(said.kind === "none" ? [] : said.estimates).map(({ relation, caveats }) => ({
        ...resting(relation),
        caveats,
      })),
    ),
  }),
  explain: resistanceSteps,
});
