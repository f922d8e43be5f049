/** What a ranking is asked besides the water, and what it answers: shared by the operations that rank. */

import { z } from "@hono/zod-openapi";
import {
  type FishWindow,
  inches,
  type LieObservation,
  type Ranking,
  type RefusalReason,
  type Stop,
} from "@plumbdrift/core";
import { encode } from "../quantity/encode.js";
import { quantity } from "../quantity/schema.js";
import type { Units } from "../quantity/units.js";
import { count, type Decoded, type Enumeration, type Strict, strict, type Wire } from "../quantity/wire.js";
import { CastSchema } from "./cast.js";
import { drifted, PresentationSchema, presentedOf, type WirePresentation } from "./presentation.js";
import { excessScale, pulls } from "./pulls.js";
import { SetupSchema, setupOf, type WireSetup } from "./setup.js";
import { BoxSchema, boxOf, FishSchema, handOf, PiecesSchema, type WireBox, type WirePieces } from "./stop.js";

type Limits = "runLength" | "surface" | "leastMargin" | "excessScale" | "wind" | "leaderStrength" | "top";

/** What a ranking is asked besides the water. */
export interface AskedSetups extends Wire<Pick<Stop, Limits | "cast">> {
  readonly fish?: Wire<LieObservation> | undefined;
  readonly box?: WireBox | undefined;
  readonly inHand?: WirePieces | undefined;
  readonly presentation?: WirePresentation | undefined;
}

export const SetupsSchema: Strict<AskedSetups> = strict<AskedSetups>({
  fish: FishSchema.optional(),
  box: BoxSchema.optional().openapi({ description: "Your box; a general one unless given." }),
  inHand: PiecesSchema.optional().openapi({
    description: "The rig in hand: judged, and placed among the others.",
  }),
  runLength: quantity("length", "Length of one drift; 6 m unless given.", 0.5, 100, "m").optional(),
  cast: CastSchema.optional(),
  presentation: PresentationSchema.optional().openapi({
    description:
      "Where the angler stands and casts: gives the lanes, and ends the run where the line is straight.",
  }),
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
  excessScale,
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
}).openapi("SetupsQuestion", { description: "Fish, box, run and limits of a ranking; all have defaults." });

const RefusalSchema: Enumeration<RefusalReason> = z
  .enum(["float-margin", "dropper-longer-than-depth", "dropper-outlasts-leader", "never-in-window"])
  .openapi("RefusalReason", { description: "A hard limit." });

type Window = Omit<FishWindow, "grounds">;

export interface RankedSetups extends Pick<Ranking, "candidates" | "refused" | "cautions" | "work"> {
  readonly setups: readonly WireSetup[];
  readonly inHand?: WireSetup | undefined;
  readonly window: Wire<Window>;
}

export const FishWindowSchema: Strict<Wire<Window>> = strict<Wire<Window>>({
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

export const RankedSetupsSchema: Strict<RankedSetups> = strict<RankedSetups>({
  setups: z.array(SetupSchema).openapi({ description: "The best first." }),
  inHand: SetupSchema.openapi({ description: "The rig in hand, with its place among all." }).optional(),
  candidates: count("Combinations of the box."),
  refused: z.array(RefusedSchema).openapi({ description: "Candidates that a hard limit ruled out." }),
  window: FishWindowSchema,
  cautions: z.array(z.string()).openapi({ description: "For everyone at the water, whatever the setup." }),
  work: strict<Ranking["work"]>({
    curves: count("Curves of pull against speed."),
    settled: count("Rigs settled in full."),
    drifts: count("Drifts, coarse ones among them."),
  }).openapi("Work", {
    description: "What was computed.",
  }),
}).openapi("RankedSetups", { description: "Setups for one stop, the best first." });

export function stopOf(asked: Decoded<AskedSetups>): Omit<Stop, "column"> {
  const { fish, box, inHand, presentation, ...rest } = asked;
  return {
    ...(presentation === undefined ? rest : presentedStop(presentation, rest)),
    ...(fish === undefined ? {} : { lie: fish }),
    ...(box === undefined ? {} : { box: boxOf(box) }),
    ...(inHand === undefined ? {} : { inHand: handOf(inHand) }),
  };
}

export function rankedOf(ranking: Ranking, units: Units): RankedSetups {
  const { setups, inHand, candidates, refused, window, cautions, work } = ranking;
  return {
    setups: setups.map((setup) => setupOf(setup, units)),
    ...(inHand === null ? {} : { inHand: setupOf(inHand, units) }),
    candidates,
    refused,
    window: encode(FishWindowSchema, window, units),
    cautions,
    work,
  };
}

/** Every candidate lands as its own dropper makes it, so that the lanes alone are taken from the presentation, at the dry. */
function presentedStop(
  presentation: Decoded<WirePresentation>,
  rest: Pick<Stop, "cast" | "runLength">,
): Pick<Stop, "cast" | "runLength"> {
  const presented = presentedOf(presentation, inches(18));
  const { laneGradient } = presented.cast;
  return { ...drifted(presented, rest), cast: { laneGradient, ...rest.cast } };
}
