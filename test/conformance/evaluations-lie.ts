/** The fish's reach, as the cases ask for it. */
import { captureReach, centimetres, metresPerSecond, millimetres, reactionDistance } from "@plumbdrift/core";
import type { Inputs } from "./case.js";
import { number } from "./inputs.js";

const preyOf = (i: Inputs) => millimetres(number(i, "preyMillimetres"));
const fishOf = (i: Inputs) => centimetres(number(i, "fishCentimetres"));

export const lieEvaluations = {
  "reaction distance, cm": (i: Inputs): number => 100 * reactionDistance(preyOf(i), fishOf(i)),
  "capture distance, cm": (i: Inputs): number => {
    const greatestSpeed = metresPerSecond(number(i, "greatestSpeed"));
    const fish = { preyLength: preyOf(i), fishLength: fishOf(i), greatestSpeed };
    return 100 * captureReach(fish, metresPerSecond(number(i, "speed")));
  },
} as const;
