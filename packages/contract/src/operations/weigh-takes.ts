/** weighTakes: keep the dropper, or cut it off? */

import { z } from "@hono/zod-openapi";
import {
  type Effort,
  type FlyTakes,
  type MoreTakes,
  mostOddsRead,
  type Takes,
  type WeighedTakes,
} from "@plumbdrift/core";
import { type Footing, footing } from "../answer.js";
import { takesExamples } from "../examples-outing.js";
import { takesSteps } from "../explanations/outing.js";
import { type Operation, operation } from "../operation.js";
import { paths } from "../paths.js";
import { encode } from "../quantity/encode.js";
import { quantity } from "../quantity/schema.js";
import type { Units } from "../quantity/units.js";
import { strict, tag, type Wire } from "../quantity/wire.js";
import { UnitsSchema } from "../schemas/water.js";

interface Asked extends Wire<Takes> {
  readonly units?: Units | undefined;
}

type Of<T, K> = Extract<T, { readonly kind: K }>;

const count = z.number().int().min(0).max(100_000);

const FlySchema = strict<Wire<FlyTakes>>({
  takes: count.openapi({ description: "Takes that hooked." }),
  missed: count.optional().openapi({ description: "Takes that did not, beside those; 0 unless given." }),
}).openapi("FlyTakes", { description: "What one fly brought." });

const fished = quantity("time", "How long it was fished.", 0, 100_000, "min");
const drifts = z.number().min(0).max(1e8).openapi({ description: "Drifts made with it." });

const EffortSchema: z.ZodType<Wire<Effort>> = z
  .discriminatedUnion("kind", [
    strict<Wire<Of<Effort, "time">>>({ kind: tag("time"), dry: fished, nymph: fished }).openapi(
      "EffortTime",
      { description: "By the clock." },
    ),
    strict<Of<Effort, "drifts">>({ kind: tag("drifts"), dry: drifts, nymph: drifts }).openapi(
      "EffortDrifts",
      { description: "By drifts." },
    ),
  ])
  .openapi("Effort", { description: "How much each fly was fished." });

const Request = strict<Asked>({
  dry: FlySchema,
  nymph: FlySchema,
  effort: EffortSchema.optional().openapi({
    description: "How much each fly was fished; the same for both unless given.",
  }),
  countMisses: z.boolean().optional().openapi({
    description: "Whether a missed take counts as one; true unless given: the fish chose, the hook did not.",
  }),
  threshold: z.number().min(0.01).max(1000).optional().openapi({
    description: "Ratio of dry to nymph above which the dropper comes off; 3 unless given (common practice).",
  }),
  confidence: z
    .number()
    .min(0.51)
    .max(0.999)
    .optional()
    .openapi({ description: "Probability at which there is a verdict; 0.9 unless given." }),
  prior: strict<Required<Takes>["prior"]>({
    dry: z.number().min(0.1).max(1000).openapi({ description: "Takes on the dry." }),
    nymph: z.number().min(0.1).max(1000).openapi({ description: "Takes on the nymph." }),
  })
    .openapi("PriorTakes", { description: "Takes that count as seen beforehand." })
    .optional()
    .openapi({ description: "Takes that count as seen beforehand; 1/2 on each fly unless given." }),
  units: UnitsSchema.optional(),
}).openapi("WeighTakesRequest");

const further = z.number().int().min(0).max(100_000);

const MoreSchema: z.ZodType<Wire<MoreTakes>> = z
  .discriminatedUnion("kind", [
    strict<Of<MoreTakes, "decided">>({ kind: tag("decided") }).openapi("TakesDecided", {
      description: "There is a verdict.",
    }),
    strict<Of<MoreTakes, "nothing-seen">>({ kind: tag("nothing-seen") }).openapi("NothingSeen", {
      description: "No takes, no rate.",
    }),
    strict<Of<MoreTakes, "beyond">>({
      kind: tag("beyond"),
      takes: further.openapi({ description: "Even this many would not do." }),
    }).openapi("TakesBeyond", { description: "Too near the ratio to tell by counting." }),
    strict<Wire<Of<MoreTakes, "more">>>({
      kind: tag("more"),
      towards: z.enum(["keep", "cut"]).openapi({ description: "What they would decide for." }),
      takes: further.openapi({ description: "Further takes, on both flies together." }),
      time: quantity("time", "How long they take at the present pace.", "min").optional(),
      drifts: z.number().int().min(0).max(1e13).optional().openapi({ description: "The same in drifts." }),
    }).openapi("TakesMore", {
      description: "What decides if both flies are fished on and takes keep coming at their present rates.",
    }),
  ])
  .openapi("MoreTakes", { description: "How much more would decide." });

type Answered = Omit<WeighedTakes, "grounds">;

const chance = z.number().min(0).max(1);

const AnswerFields = {
  verdict: z.enum(["keep", "cut", "too-early"]).openapi({
    description: "Keep the dropper, cut it off, or too early to tell.",
  }),
  text: z.string().openapi({ description: "The verdict in a sentence." }),
  probability: chance.openapi({ description: "That the true ratio is above the threshold." }),
  observedRatio: z
    .number()
    .min(0)
    .optional()
    .openapi({ description: "Takes for the effort, dry over nymph; absent where the nymph had none." }),
  ratio: strict<Answered["ratio"]>({
    median: z.number().min(0).openapi({ description: "As likely above as below." }),
    low: z.number().min(0).openapi({ description: "Lower end of the interval." }),
    high: z.number().min(0).openapi({ description: "Upper end of the interval." }),
    within: chance.openapi({ description: "Probability that the true ratio lies from low to high." }),
  }).openapi("TrueRatio", {
    description:
      "The true ratio. The interval lies above the threshold when the verdict is cut, below when it is keep.",
  }),
  ruleOfThumb: z.enum(["keep", "cut", "nothing-seen"]).openapi({
    description: "What the bare rule says: cut where the observed ratio is above the threshold.",
  }),
  more: MoreSchema,
  fewest: strict<Wire<Answered["fewest"]>>({
    toCut: further.optional().openapi({ description: "All on the dry; absent above 10,000." }),
    toKeep: further.optional().openapi({ description: "All on the nymph; absent above 10,000." }),
  }).openapi("FewestTakes", {
    description: "The fewest further takes that decide, should all of them come to one fly.",
  }),
  cautions: z.array(z.string()).openapi({ description: "For everyone at the water, whatever the verdict." }),
};

const Response = strict<Wire<Answered> & Footing>({ ...AnswerFields, ...footing }).openapi(
  "WeighTakesResponse",
);

export const weighTakes: Operation<Takes, WeighedTakes, Wire<Answered>> = operation<
  Asked,
  Takes,
  WeighedTakes,
  Wire<Answered>
>({
  id: "weighTakes",
  path: paths.weighTakes,
  summary: "Keep the dropper, or cut it off?",
  description:
    "When the dry out-fishes the nymph by more than about three to one, the dropper comes off (common practice, no source). The exact probability that the true ratio is above that, from the takes counted so far; the bare rule is shown beside.",
  request: Request,
  response: Response,
  examples: takesExamples,
  cost: {
    lessAt: "",
    terms: [
      {
        counts:
          "readings of a beta distribution: the most that a verdict, three quantiles and three searches for takes need",
        each: 15,
        of: () => mostOddsRead,
      },
    ],
  },
  places: [
    ["effort on the dry", "/effort/dry"],
    ["effort on the nymph", "/effort/nymph"],
  ],
  toInput: ({ units: _, ...takes }) => takes,
  encode: (weighed, units) => ({
    answer: encode(strict<Wire<Answered>>(AnswerFields), weighed, units),
    grounds: weighed.grounds,
  }),
  explain: takesSteps,
});
