/** A cast over lanes whose speed grows evenly, 0.2 m/s at the angler and 0.1 m/s more for each metre, as the cases ask for it. */
import { degrees, metres, metresPerSecond, type Presented, present } from "@plumbdrift/core";
import type { Inputs } from "./case.js";
import { number } from "./inputs.js";

const lanes = [0, 5, 20].map((y) => ({ across: metres(y), surfaceSpeed: metresPerSecond(0.2 + 0.1 * y) }));

const cast = (i: Inputs): Presented =>
  present({
    distance: metres(number(i, "distance")),
    upstream: degrees(number(i, "upstream")),
    slack: metres(number(i, "slack")),
    dropper: metres(0.5),
    lanes,
  });

export const castEvaluations = {
  "landing of the dry downstream, m": (i: Inputs): number => cast(i).landing.downstream,
  "landing of the nymph across, m": (i: Inputs): number => cast(i).cast.sinkerAcross,
  "lane gradient, 1/s": (i: Inputs): number => cast(i).cast.laneGradient,
  "lane difference, m/s": (i: Inputs): number => cast(i).laneDifference,
  "gain of the nymph, m/s": (i: Inputs): number => cast(i).nymphGain,
  "time without drag, s": (i: Inputs): number => cast(i).dragFree ?? Number.NaN,
  "reach of the drift, m": (i: Inputs): number => cast(i).reach,
} as const;
