/** adjustRig: I saw this; what is the water really like, and what changes first? */

import { z } from "@hono/zod-openapi";
import type { AdjustedRig, AdjustQuestion, LieObservation, RigChange, RuledOut } from "@plumbdrift/core";
import { type Footing, footing } from "../answer.js";
import { adjustExamples } from "../examples-outing.js";
import { columnSteps } from "../explanations/column.js";
import { type Operation, operation } from "../operation.js";
import { paths } from "../paths.js";
import { encode } from "../quantity/encode.js";
import { quantity } from "../quantity/schema.js";
import type { Units } from "../quantity/units.js";
import { count, plain, strict, type Wire } from "../quantity/wire.js";
import { QuantitiesSchema, ScalesSchema, SightingSchema, UncertaintySchema } from "../schemas/adjust.js";
import { ColumnSchema, columnOf, type WireColumn } from "../schemas/column.js";
import { SetupsSchema } from "../schemas/ranking.js";
import { BoxSchema, boxOf, handOf, PiecesSchema, type WireBox, type WirePieces } from "../schemas/stop.js";
import { observationOf, UnitsSchema, WaterSchema, type WireWater, waterOf } from "../schemas/water.js";

type Options =
  | "seen"
  | "uncertainty"
  | "scales"
  | "samples"
  | "seed"
  | "runLength"
  | "leastMargin"
  | "excessScale";

interface Asked extends Wire<Pick<AdjustQuestion, Options | "cast" | "wind">> {
  readonly water: WireWater;
  readonly inHand: WirePieces;
  readonly fish?: Wire<LieObservation> | undefined;
  readonly box?: WireBox | undefined;
  readonly units?: Units | undefined;
}

const { fish, runLength, leastMargin, excessScale, cast, wind } = SetupsSchema.shape;

const Request = strict<Asked>({
  water: WaterSchema.openapi({ description: "The water as it was taken to be." }),
  inHand: PiecesSchema.openapi({ description: "The rig that was fished." }),
  seen: z.array(SightingSchema).min(1).max(20).openapi({ description: "What was seen of it." }),
  fish,
  box: BoxSchema.optional().openapi({
    description: "What may be tied on instead, 60 pieces at most; the usual steps unless given.",
  }),
  uncertainty: UncertaintySchema.optional(),
  scales: ScalesSchema.optional(),
  runLength,
  leastMargin,
  excessScale,
  cast,
  wind,
  samples: z.number().int().min(128).max(4000).optional().openapi({
    description: "Rigs to settle; 400 unless given. Some 1,500 fit the budget of one call, fewer with a box.",
  }),
  seed: z.number().int().min(0).max(2_147_483_647).optional().openapi({
    description: "Another seed settles other rigs; 1 unless given.",
  }),
  units: UnitsSchema.optional(),
}).openapi("AdjustRigRequest");

type SaidChange = Omit<RigChange, "to">;

interface WireChange extends Wire<SaidChange> {
  readonly tied: WirePieces;
}

type Plain =
  | "quantities"
  | "regimes"
  | "ruledOut"
  | "fit"
  | "effectiveSamples"
  | "seed"
  | "work"
  | "cautions";

interface Answered extends Wire<Pick<AdjustedRig, Plain>> {
  readonly water: WireWater;
  readonly column: WireColumn;
  readonly inHand: WirePieces;
  readonly next?: WireChange | undefined;
}

const chance = (what: string): z.ZodNumber => z.number().min(0).max(1).openapi({ description: what });

const RuledOutSchema = strict<RuledOut>({
  quantity: z
    .enum(["depth", "surfaceSpeed", "speedBelow", "drag", "treatment", "nymphHeight", "lean"])
    .openapi({ description: "Of quantities." }),
  side: z
    .enum(["above", "below"])
    .openapi({ description: "Beyond the upper or the lower end of what it is now." }),
  before: chance("Probability of that side beforehand."),
  now: chance("Probability of that side with what was seen."),
  text: z.string().openapi({ description: "In words." }),
}).openapi("RuledOut", { description: "A side of a quantity that was likely and is not now." });

const RegimeShareSchema = strict<AdjustedRig["regimes"][number]>({
  regime: z
    .enum(["hanging", "on-bed", "drowned", "slack-water"])
    .openapi({ description: "How the rig settles." }),
  before: chance("Its probability beforehand."),
  now: chance("Its probability with what was seen."),
}).openapi("RegimeShare", { description: "How likely the rig settles so." });

const FitSchema = strict<AdjustedRig["fit"]>({
  sightings: z.array(chance("Of one.")).openapi({
    description: "For each sighting, in order: its likelihood over the greatest it could have.",
  }),
  best: chance(
    "The same for all together, times the likelihood of the water and the rig beforehand over its greatest: the best that was tried.",
  ),
  logEvidence: plain("Natural logarithm of the mean likelihood of all over what was thought beforehand."),
  verdict: z.enum(["explained", "strained", "contradictory"]).openapi({
    description: "Contradictory: no water and no rig near what was stated explains all of it.",
  }),
}).openapi("SightingFit", { description: "How well what was seen is explained." });

const ChangeSchema = strict<Wire<SaidChange>>({
  part: z.enum(["nymph", "dry", "tippet", "dropper", "dressing", "hold"]).openapi({
    description: "What changes; dressing is the same dry dressed anew, hold a steady upstream pull.",
  }),
  held: quantity("force", "Steady upstream pull on the dry, for a hold.").optional(),
  gain: quantity("time", "Effective seconds gained in one drift, the mean over what is likely."),
  gainsIn: chance("Share of what is likely in which it gains at all."),
  cost: z.string().openapi({ description: "What the change costs, in words." }),
});
const NextSchema = strict<WireChange>({
  ...ChangeSchema.shape,
  tied: PiecesSchema.openapi({ description: "The rig with the change made." }),
}).openapi("RigChange", { description: "The single change that gains most." });

const WorkSchema = strict<AdjustedRig["work"]>({
  settled: count("Rigs settled."),
  judged: count("Drifts judged in full."),
  changes: count("Changes compared."),
}).openapi("AdjustWork", { description: "What was computed." });

const PlainFields = {
  quantities: QuantitiesSchema,
  regimes: z.array(RegimeShareSchema).openapi({ description: "How the rig settles, by probability." }),
  ruledOut: z.array(RuledOutSchema).openapi({ description: "What was likely beforehand and is not now." }),
  fit: FitSchema,
  effectiveSamples: plain("The posterior is as good as so many independent rigs; rough below 50."),
  seed: z.number().int().min(0).max(2_147_483_647).openapi({ description: "That the rigs were spread by." }),
  work: WorkSchema,
  cautions: z.array(z.string()).openapi({ description: "For everyone at the water." }),
};
const PlainSchema = strict<Wire<Pick<AdjustedRig, Plain>>>(PlainFields);

const Response = strict<Answered & Footing>({
  ...PlainFields,
  water: WaterSchema.openapi({
    description: "The water with the medians put in. It may be sent back as water.",
  }),
  column: ColumnSchema,
  inHand: PiecesSchema.openapi({
    description: "The rig with the medians put in. It may be sent back as inHand.",
  }),
  next: NextSchema.optional(),
  ...footing,
}).openapi("AdjustRigResponse");

const usualChanges = 11;
const drawn = 5;

export const adjustRig: Operation<AdjustQuestion, AdjustedRig, Answered> = operation<
  Asked,
  AdjustQuestion,
  AdjustedRig,
  Answered
>({
  id: "adjustRig",
  path: paths.adjustRig,
  summary: "I saw this: what is the water really like, and what changes first?",
  description:
    "Ticks on the bed, a drowned dry, a lean, an overtaking nymph or a timed drift revise depth, speed, profile, drag and dressing by Bayes' rule over settled rigs; then the single change that gains most over all that is still likely. Priors and likelihoods are stated assumptions, each to be replaced.",
  request: Request,
  response: Response,
  examples: adjustExamples,
  cost: {
    lessAt: "/samples",
    terms: [
      {
        counts:
          "settled rigs: samples, half as many again where those tell too little, and five for the rig in hand, each piece to change, a dressing and a hold",
        each: 400,
        of: ({ samples = 400, box }) => {
          const pieces =
            box === undefined ? usualChanges : Object.values(box).reduce((sum, list) => sum + list.length, 0);
          return Math.ceil(1.5 * samples) + drawn * (pieces + 3);
        },
      },
      {
        counts: "drifts in full: five for the rig in hand and each of two changes",
        each: 2500,
        of: () => 3 * drawn,
      },
    ],
  },
  toInput: ({ water, inHand, fish, box, units: _, ...rest }) => ({
    ...rest,
    observation: observationOf(water),
    inHand: handOf(inHand),
    ...(fish === undefined ? {} : { lie: fish }),
    ...(box === undefined ? {} : { box: boxOf(box) }),
  }),
  encode: (adjusted, units) => {
    const { revised, column, inHand, next } = adjusted;
    return {
      answer: {
        ...encode(PlainSchema, adjusted, units),
        water: waterOf(revised, units),
        column: columnOf(column, units),
        inHand: encode(PiecesSchema, inHand, units),
        ...(next === null
          ? {}
          : { next: { ...encode(ChangeSchema, next, units), tied: encode(PiecesSchema, next.to, units) } }),
      },
      grounds: adjusted.grounds,
    };
  },
  explain: ({ column, revised }) => columnSteps(column, revised),
});
