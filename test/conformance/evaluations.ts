/** What a case can ask of the built core, by name. */
import type { Inputs } from "./case.js";
import { castEvaluations } from "./evaluations-cast.js";
import { channelEvaluations } from "./evaluations-channel.js";
import { checkEvaluations } from "./evaluations-check.js";
import { columnEvaluations } from "./evaluations-column.js";
import { driftEvaluations } from "./evaluations-drift.js";
import { forceEvaluations } from "./evaluations-forces.js";
import { gaugingEvaluations } from "./evaluations-gauging.js";
import { identityEvaluations } from "./evaluations-identities.js";
import { lieEvaluations } from "./evaluations-lie.js";
import { outingEvaluations } from "./evaluations-outing.js";
import { practiceEvaluations } from "./evaluations-practice.js";
import { reachEvaluations } from "./evaluations-reach.js";
import { resistanceEvaluations } from "./evaluations-resistance.js";
import { statedEvaluations } from "./evaluations-stated.js";
import { stillWaterEvaluations } from "./evaluations-still-water.js";
import { unsteadyEvaluations } from "./evaluations-unsteady.js";
import { waterEvaluations } from "./evaluations-water.js";

export type Evaluation =
  | keyof typeof waterEvaluations
  | keyof typeof forceEvaluations
  | keyof typeof channelEvaluations
  | keyof typeof checkEvaluations
  | keyof typeof castEvaluations
  | keyof typeof columnEvaluations
  | keyof typeof driftEvaluations
  | keyof typeof gaugingEvaluations
  | keyof typeof identityEvaluations
  | keyof typeof lieEvaluations
  | keyof typeof outingEvaluations
  | keyof typeof practiceEvaluations
  | keyof typeof reachEvaluations
  | keyof typeof resistanceEvaluations
  | keyof typeof statedEvaluations
  | keyof typeof stillWaterEvaluations
  | keyof typeof unsteadyEvaluations;

export const evaluations: Readonly<Record<Evaluation, (inputs: Inputs) => number>> = {
  ...waterEvaluations,
  ...forceEvaluations,
  ...channelEvaluations,
  ...checkEvaluations,
  ...castEvaluations,
  ...columnEvaluations,
  ...driftEvaluations,
  ...gaugingEvaluations,
  ...identityEvaluations,
  ...lieEvaluations,
  ...outingEvaluations,
  ...practiceEvaluations,
  ...reachEvaluations,
  ...resistanceEvaluations,
  ...statedEvaluations,
  ...stillWaterEvaluations,
  ...unsteadyEvaluations,
};
