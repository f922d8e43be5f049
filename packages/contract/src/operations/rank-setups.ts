/** rankSetups: what should I tie on, for this water and this fish, and why? */

import type { Observation, Ranking, Stop } from "@plumbdrift/core";
import { type Footing, footing } from "../answer.js";
import { setupExamples } from "../examples.js";
import { type Operation, operation } from "../operation.js";
import type { Units } from "../quantity/units.js";
import { strict } from "../quantity/wire.js";
import {
  type AskedSetups,
  type RankedSetups,
  RankedSetupsSchema,
  rankedOf,
  SetupsSchema,
  stopOf,
} from "../schemas/ranking.js";
import { rankingTerms } from "../schemas/ranking-cost.js";
import { observationOf, UnitsSchema, WaterSchema, type WireWater } from "../schemas/water.js";

interface Asked extends AskedSetups {
  readonly water: WireWater;
  readonly units?: Units | undefined;
}

const Request = strict<Asked>({
  water: WaterSchema,
  ...SetupsSchema.shape,
  units: UnitsSchema.optional(),
}).openapi("RankSetupsRequest");

export interface RankSetupsResponse extends RankedSetups, Footing {}

const Response = strict<RankSetupsResponse>({ ...RankedSetupsSchema.shape, ...footing }).openapi(
  "RankSetupsResponse",
);

interface Input extends Omit<Stop, "column"> {
  readonly observation: Observation;
}

export const rankSetups: Operation<Input, Ranking, RankedSetups> = operation<
  Asked,
  Input,
  Ranking,
  RankedSetups
>({
  id: "rankSetups",
  path: "/v1/setups",
  summary: "What should I tie on, for this water and this fish, and why?",
  description:
    "Every combination of the box, the hard limits first, then ranked by effective seconds in the fish's window. Two flies are legal only where the rules say so: ask the local rules.",
  request: Request,
  response: Response,
  examples: setupExamples,
  cost: { lessAt: "/box", terms: rankingTerms },
  toInput: ({ water, units: _, ...setups }) => ({ ...stopOf(setups), observation: observationOf(water) }),
  encode: (ranking, units) => ({ answer: rankedOf(ranking, units), grounds: ranking.grounds }),
});
