/** rankSetups: what should I tie on, for this water and this fish, and why? */

import { z } from "@hono/zod-openapi";
import {
  type Box,
  type FishWindow,
  generalBox,
  type LieObservation,
  type Observation,
  type Ranking,
  type RefusalReason,
  type Stop,
} from "@plumbdrift/core";
import { type Footing, footing } from "../answer.js";
import type { Counted } from "../cost.js";
import { setupExamples } from "../examples.js";
import { type Operation, operation } from "../operation.js";
import { encode } from "../quantity/encode.js";
import { quantity } from "../quantity/schema.js";
import type { Units } from "../quantity/units.js";
import { count, type Decoded, strict, type Wire } from "../quantity/wire.js";
import { CastSchema } from "../schemas/cast.js";
import { pulls } from "../schemas/pulls.js";
import { SetupSchema, setupOf, type WireSetup } from "../schemas/setup.js";
import {
  BoxSchema,
  boxOf,
  FishSchema,
  handOf,
  PiecesSchema,
  type WireBox,
  type WirePieces,
} from "../schemas/stop.js";
import { observationOf, UnitsSchema, WaterSchema, type WireWater } from "../schemas/water.js";

type Limits = "runLength" | "surface" | "leastMargin" | "excessScale" | "wind" | "leaderStrength" | "top";

interface Asked extends Wire<Pick<Stop, Limits | "cast">> {
  readonly water: WireWater;
  readonly fish?: Wire<LieObservation> | undefined;
  readonly box?: WireBox | undefined;
  readonly inHand?: WirePieces | undefined;
  readonly units?: Units | undefined;
}

const Request = strict<Asked>({
  water: WaterSchema,
  fish: FishSchema.optional(),
  box: BoxSchema.optional().openapi({ description: "Your box; a general one unless given." }),
  inHand: PiecesSchema.optional().openapi({
    description: "The rig in hand: judged, and placed among the others.",
  }),
  runLength: quantity("length", "Length of one drift; 6 m unless given.", 0.5, 100, "m").optional(),
  cast: CastSchema.optional(),
  surface: z
    .enum(["glassy", "rippled", "broken"])
    .optional()
    .openapi({ description: "How much splash the surface hides." }),
  leastMargin: z
    .number()
    .min(1)
    .max(100)
    .optional()
    .openapi({ description: "Least float margin that a setup may have; 1.5 unless given." }),
  excessScale: quantity(
    "speed",
    "Excess at which a second counts half; 0.3 m/s unless given.",
    0.01,
    10,
    "m/s",
  ).optional(),
  wind: pulls.wind,
  leaderStrength: quantity(
    "force",
    "Breaking force of the leader: the dropper must break first.",
    0.1,
    1000,
    "N",
  ).optional(),
  top: z
    .number()
    .int()
    .min(1)
    .max(50)
    .optional()
    .openapi({ description: "How many to answer; 5 unless given." }),
  units: UnitsSchema.optional(),
}).openapi("RankSetupsRequest");

const RefusalSchema: z.ZodType<RefusalReason> = z
  .enum(["float-margin", "dropper-longer-than-depth", "dropper-outlasts-leader", "never-in-window"])
  .openapi("RefusalReason", { description: "A hard limit." });

type Window = Omit<FishWindow, "grounds">;

interface Answered extends Pick<Ranking, "candidates" | "refused" | "cautions" | "work"> {
  readonly setups: readonly WireSetup[];
  readonly inHand?: WireSetup | undefined;
  readonly window: Wire<Window>;
}

export interface RankSetupsResponse extends Answered, Footing {}

const WindowSchema = strict<Wire<Window>>({
  low: quantity("length", "Lower edge, a height above the bed."),
  high: quantity("length", "Upper edge, a height above the bed."),
  holding: quantity("length", "Where the fish holds, a height above the bed."),
  reach: quantity("length", "How far it moves up and down from there."),
}).openapi("FishWindow", { description: "Heights above the bed between which the fish takes." });

const RefusedSchema = strict<Ranking["refused"][number]>({
  reason: RefusalSchema,
  count: count("How many candidates."),
}).openapi("Refused", {
  description: "How many candidates one limit ruled out.",
});

const Response = strict<RankSetupsResponse>({
  setups: z.array(SetupSchema).openapi({ description: "The best first." }),
  inHand: SetupSchema.openapi({ description: "The rig in hand, with its place among all." }).optional(),
  candidates: count("Combinations of the box."),
  refused: z.array(RefusedSchema).openapi({ description: "Candidates that a hard limit ruled out." }),
  window: WindowSchema,
  cautions: z.array(z.string()).openapi({ description: "For everyone at the water, whatever the setup." }),
  work: strict<Ranking["work"]>({
    curves: count("Curves of pull against speed."),
    settled: count("Rigs settled in full."),
    drifts: count("Drifts, coarse ones among them."),
  }).openapi("Work", {
    description: "What was computed.",
  }),
  ...footing,
}).openapi("RankSetupsResponse");

type Sizes = { readonly [K in keyof Box]: number };

function sizesOf({ box = generalBox }: Decoded<Asked>): Sizes {
  const { dries, nymphs, tippets, dropperLengths } = box;
  return {
    dries: dries.length,
    nymphs: nymphs.length,
    tippets: tippets.length,
    dropperLengths: dropperLengths.length,
  };
}

/** A rig in hand is compared with what one change makes of it: a box with one piece free, for each piece. */
const rankingTerms: readonly Counted<Asked>[] = [
  {
    counts: "candidates: dries times nymphs times tippets times dropper lengths",
    each: 6,
    of: (body) => Object.values(sizesOf(body)).reduce((product, size) => product * size, 1),
  },
  {
    counts: "curves: nymphs times tippets times dropper lengths, and for a rig in hand their sum and one",
    each: 400,
    of: (body) => {
      const { nymphs, tippets, dropperLengths } = sizesOf(body);
      const around = body.inHand === undefined ? 0 : nymphs + tippets + dropperLengths + 1;
      return nymphs * tippets * dropperLengths + around;
    },
  },
  {
    counts: "coarse drifts: nymphs times dropper lengths, and for a rig in hand their sum and two",
    each: 700,
    of: (body) => {
      const { nymphs, dropperLengths } = sizesOf(body);
      return nymphs * dropperLengths + (body.inHand === undefined ? 0 : nymphs + dropperLengths + 2);
    },
  },
  {
    counts: "drifts in full: five for each setup to return, and two for a rig in hand",
    each: 2500,
    of: ({ top = 5, inHand }) => 5 * top + (inHand === undefined ? 0 : 2),
  },
];

interface Input extends Omit<Stop, "column"> {
  readonly observation: Observation;
}

export const rankSetups: Operation<Input, Ranking, Answered> = operation<Asked, Input, Ranking, Answered>({
  id: "rankSetups",
  path: "/v1/setups",
  summary: "What should I tie on, for this water and this fish, and why?",
  description:
    "Every combination of the box, the hard limits first, then ranked by effective seconds in the fish's window. Two flies are legal only where the rules say so: ask the local rules.",
  request: Request,
  response: Response,
  examples: setupExamples,
  cost: { lessAt: "/box", terms: rankingTerms },
  toInput: ({ water, fish, box, inHand, units: _, ...rest }) => ({
    ...rest,
    observation: observationOf(water),
    ...(fish === undefined ? {} : { lie: fish }),
    ...(box === undefined ? {} : { box: boxOf(box) }),
    ...(inHand === undefined ? {} : { inHand: handOf(inHand) }),
  }),
  encode: ({ setups, inHand, candidates, refused, window, cautions, work, grounds }, units) => ({
    answer: {
      setups: setups.map((setup) => setupOf(setup, units)),
      ...(inHand === null ? {} : { inHand: setupOf(inHand, units) }),
      candidates,
      refused,
      window: encode(WindowSchema, window, units),
      cautions,
      work,
    },
    grounds,
  }),
});
