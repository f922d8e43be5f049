/** shiftFlow: the gauge changed: what are depth and speed at my stop now? */

import {
  type FlowQuestion,
  type FlowShift,
  type GaugeAt,
  type Grounds,
  joinGrounds,
  type Ranking,
  type Stop,
  type Wade,
  type Wading,
} from "@plumbdrift/core";
import { type Footing, footing } from "../answer.js";
import { flowExamples } from "../examples-flow.js";
import { shiftSteps } from "../explanations/outing.js";
import { type Operation, operation } from "../operation.js";
import { paths } from "../paths.js";
import { strict } from "../quantity/wire.js";
import { waterPlaces } from "../refusal.js";
import { methodOf } from "../schemas/flow-method.js";
import {
  type AskedFlowShift,
  type Flows,
  flowCost,
  flowsOf,
  ShiftFlowRequest,
} from "../schemas/flow-question.js";
import { ShiftSchema, saidShift, type WireShift } from "../schemas/flow-shift.js";
import { ReportSchema, reportOf, type WireReport } from "../schemas/gauge.js";
import { type RankedSetups, RankedSetupsSchema, rankedOf, stopOf } from "../schemas/ranking.js";
import { WadingSchema, type WireWading, wadingOf } from "../schemas/wading.js";
import { observationOf } from "../schemas/water.js";

interface Answered {
  readonly shift: WireShift;
  readonly gauge?: WireReport | undefined;
  readonly wading?: { readonly before: WireWading; readonly now: WireWading } | undefined;
  readonly setups?: RankedSetups | undefined;
}

const Response = strict<Answered & Footing>({
  shift: ShiftSchema,
  gauge: ReportSchema.optional(),
  wading: strict<NonNullable<Answered["wading"]>>({
    before: WadingSchema.openapi({ description: "When the stop was measured." }),
    now: WadingSchema.openapi({ description: "At the new flow." }),
  })
    .openapi("WadingShift", { description: "Wading at the stop at both flows. No level is a permission." })
    .optional(),
  setups: RankedSetupsSchema.optional(),
  ...footing,
}).openapi("ShiftFlowResponse");

interface Input {
  readonly question: Omit<FlowQuestion, "measuredAt" | "now">;
  readonly flows: Flows;
  readonly wade: Pick<Wade, "wader" | "footing">;
  /** The stop to rank for at the new flow. */
  readonly stop: Omit<Stop, "column"> | null;
  readonly grounds: Grounds;
}

export interface ShiftedFlow {
  readonly shift: FlowShift | { readonly kind: "gauge-silent"; readonly at: "measuredAt" | "now" };
  readonly gauge: Readonly<Record<"measuredAt" | "now", GaugeAt>> | null;
  readonly wading: { readonly before: Wading; readonly now: Wading } | null;
  readonly ranking: Ranking | null;
  readonly grounds: Grounds;
}

export const shiftFlow: Operation<Input, ShiftedFlow, Answered> = operation<
  AskedFlowShift,
  Input,
  ShiftedFlow,
  Answered
>({
  id: "shiftFlow",
  path: paths.shiftFlow,
  summary: "The gauge changed: what are depth and speed at my stop now?",
  description:
    "Depth, surface speed and width at another discharge with their spread: by published exponents, by your own pairs of measurements, or by a section with its slope and resistance; then wading and, if asked, setups at the new flow. A stop that falls dry, a section that does not carry the flow and a gauge that is silent at the hour are answers.",
  request: ShiftFlowRequest,
  response: Response,
  examples: flowExamples,
  cost: flowCost,
  places: [
    ["discharge of gauge reading", "/gauge/series"],
    ["gauge readings", "/gauge/series"],
    ["longest gap", "/gauge/longestGap"],
    ["discharge when", "/measuredAt"],
    ["discharge now", "/now"],
    ["discharge of pair #", "/method/pairs/#/discharge"],
    ["depth of pair #", "/method/pairs/#/depth"],
    ["surface speed of pair #", "/method/pairs/#/surfaceSpeed"],
    ["width of pair #", "/method/pairs/#/width"],
    ["pairs", "/method/pairs"],
    ["points of a least-squares fit", "/method/pairs"],
    ["station", "/method/station"],
    ["slope", "/method/slope"],
    ["height of the wader", "/wader/height"],
    ["mass of the wader", "/wader/mass"],
    ...waterPlaces,
  ],
  toInput: (body) => {
    const {
      water,
      width,
      confidence,
      wader,
      ground,
      rank,
      method,
      gauge,
      measuredAt,
      now,
      units: _,
      ...setups
    } = body;
    const { method: how, grounds } = methodOf(method, body.water.temperature);
    return {
      question: {
        observation: observationOf(water),
        method: how,
        ...(width === undefined ? {} : { width }),
        ...(confidence === undefined ? {} : { confidence }),
      },
      flows: flowsOf({ gauge, measuredAt, now }),
      wade: {
        ...(wader === undefined ? {} : { wader }),
        ...(ground === undefined ? {} : { footing: ground }),
      },
      stop: rank === true ? stopOf(setups) : null,
      grounds,
    };
  },
  encode: (found, units, { grounds }) => {
    const { shift, gauge, wading, ranking } = found;
    return {
      answer: {
        shift: saidShift(shift, gauge, units),
        ...(gauge === null ? {} : { gauge: reportOf(gauge.now.report) }),
        ...(wading === null
          ? {}
          : { wading: { before: wadingOf(wading.before, units), now: wadingOf(wading.now, units) } }),
        ...(ranking === null ? {} : { setups: rankedOf(ranking, units) }),
      },
      grounds: joinGrounds(grounds, found.grounds),
    };
  },
  explain: ({ shift, gauge }, { question, flows }) => {
    if (shift.kind === "gauge-silent") return [];
    const read = (at: "measuredAt" | "now"): number => {
      const found = gauge?.[at];
      return found?.kind === "read" ? found.discharge : "now" in flows ? flows[at] : Number.NaN;
    };
    return shiftSteps(shift, {
      before: question.observation,
      width: question.width,
      measuredAt: read("measuredAt"),
      now: read("now"),
      published: question.method.by === "published-exponents",
    });
  },
});
