/** rankSetups: what should I tie on, for this water and this fish, and why? */

import {
  joinGrounds,
  type Metres,
  type Observation,
  type Presented,
  type Ranking,
  type Stop,
  waterColumn,
} from "@plumbdrift/core";
import { type Footing, footing } from "../answer.js";
import { setupExamples } from "../examples.js";
import { columnSteps } from "../explanations/column.js";
import { driftSteps } from "../explanations/rig.js";
import { type Operation, operation } from "../operation.js";
import { paths } from "../paths.js";
import type { Units } from "../quantity/units.js";
import { strict } from "../quantity/wire.js";
import { PresentedSchema, presentedOf, saidPresented } from "../schemas/presentation.js";
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

interface Answered extends RankedSetups {
  readonly presented?: ReturnType<typeof saidPresented> | undefined;
}

export interface RankSetupsResponse extends Answered, Footing {}

const Response = strict<RankSetupsResponse>({
  ...RankedSetupsSchema.shape,
  presented: PresentedSchema.optional().openapi({ description: "The presentation, with the best setup." }),
  ...footing,
}).openapi("RankSetupsResponse");

interface Input extends Omit<Stop, "column"> {
  readonly observation: Observation;
  /** What the lanes make of the cast with a dropper. */
  readonly presented: ((dropper: Metres) => Presented) | null;
}

export const rankSetups: Operation<Input, Ranking, Answered> = operation<Asked, Input, Ranking, RankedSetups>(
  {
    id: "rankSetups",
    path: paths.rankSetups,
    summary: "What should I tie on, for this water and this fish, and why?",
    description:
      "Every combination of the box, the hard limits first, then ranked by effective seconds in the fish's window. Two flies are legal only where the rules say so: ask the local rules.",
    request: Request,
    response: Response,
    examples: setupExamples,
    cost: { lessAt: "/box", terms: rankingTerms },
    toInput: ({ water, units: _, ...setups }) => {
      const { presentation } = setups;
      return {
        ...stopOf(setups),
        observation: observationOf(water),
        presented: presentation === undefined ? null : (dropper) => presentedOf(presentation, dropper),
      };
    },
    encode: (ranking, units, { presented }) => {
      const best = ranking.setups[0];
      const shown = presented === null || best === undefined ? null : presented(best.dropper);
      return {
        answer: {
          ...rankedOf(ranking, units),
          ...(shown === null ? {} : { presented: saidPresented(shown, units) }),
        },
        grounds: joinGrounds(ranking.grounds, ...(shown === null ? [] : [shown.grounds])),
      };
    },
    explain: ({ setups: [best] }, { observation }) =>
      best === undefined
        ? columnSteps(waterColumn(observation), observation)
        : driftSteps(best, best.rig, observation),
  },
);
