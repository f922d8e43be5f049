/** checkRig: is this rig sound here, and do the rules that somebody states allow it? */

import { z } from "@hono/zod-openapi";
import {
  type Checked,
  type CheckStop,
  type Footing as Ground,
  joinGrounds,
  type LieObservation,
  type Metres,
  mostTrialDrifts,
  mostTrialRigs,
  type Observation,
  type Pieces,
  type Presented,
  type Rules,
  rulesVersion,
  type Wade,
  type Wader,
} from "@plumbdrift/core";
import { type Footing, footing } from "../answer.js";
import { checkExamples } from "../examples-check.js";
import { driftSteps } from "../explanations/rig.js";
import { type Operation, operation } from "../operation.js";
import { paths } from "../paths.js";
import type { Decoding } from "../quantity/decode.js";
import { quantity } from "../quantity/schema.js";
import type { Units } from "../quantity/units.js";
import { isRecord } from "../quantity/walk.js";
import { type Decoded, strict, type Wire } from "../quantity/wire.js";
import { type Places, waterPlaces } from "../refusal.js";
import { CheckedRigSchema, checkedOf, type WireChecked } from "../schemas/checked.js";
import { HeatSchema, heatOf, type WireHeat } from "../schemas/heat.js";
import {
  drifted,
  PresentationSchema,
  PresentedSchema,
  presentedOf,
  saidPresented,
  type WirePresentation,
} from "../schemas/presentation.js";
import { pulls } from "../schemas/pulls.js";
import { SetupsSchema } from "../schemas/ranking.js";
import { FactsSchema, RulesSchema, type WireFacts, type WireRules } from "../schemas/rules.js";
import { handOf, PiecesSchema, type WirePieces } from "../schemas/stop.js";
import { TippetSchema, tippetOf, type WireTippet } from "../schemas/tackle.js";
import { GroundSchema, WaderSchema, WadingSchema, type WireWading, wadingOf } from "../schemas/wading.js";
import { observationOf, UnitsSchema, WaterSchema, type WireWater } from "../schemas/water.js";

type Leader = NonNullable<CheckStop["leader"]>;

interface WireLeader extends Wire<Omit<Leader, "tippet">> {
  readonly tippet?: WireTippet | undefined;
}

/** A place on the way to the stop. */
type Place = Pick<Wade, "depth" | "speed">;

interface Asked extends Wire<Omit<CheckStop, "column" | "lie" | "leader" | "facts" | "footing">> {
  readonly water: WireWater;
  readonly inHand: WirePieces;
  readonly fish?: Wire<LieObservation> | undefined;
  readonly leader?: WireLeader | undefined;
  readonly presentation?: WirePresentation | undefined;
  readonly facts?: WireFacts | undefined;
  readonly rules?: WireRules | undefined;
  readonly wader?: Wire<Wader> | undefined;
  readonly ground?: Ground | undefined;
  readonly route?: readonly Wire<Place>[] | undefined;
  readonly units?: Units | undefined;
}

const knotShare = z.number().min(0.1).max(1).optional();

const LeaderSchema = strict<WireLeader>({
  tippet: TippetSchema.optional().openapi({
    description: "Its last length: strength by material and diameter.",
  }),
  breakingForce: quantity("force", "Without a knot, in place of the tables.", 0.1, 1000, "N").optional(),
  knotShare: knotShare.openapi({
    description: "Share of it that the knot leaves; 0.8 unless given (practice).",
  }),
}).openapi("Leader", { description: "What the dry is tied to." });

const { fish, runLength, cast, surface, leastMargin, excessScale, wind } = SetupsSchema.shape;

const Request = strict<Asked>({
  water: WaterSchema,
  inHand: PiecesSchema.openapi({ description: "The rig in hand; any piece of it may be measured." }),
  fish,
  runLength,
  cast,
  surface,
  leastMargin,
  excessScale,
  wind,
  held: pulls.held,
  leader: LeaderSchema.optional(),
  knotShare: knotShare.openapi({
    description:
      "Share of its strength that the weaker knot of the dropper leaves; 0.8 unless given (practice).",
  }),
  slack: quantity("length", "Slack of leader on the water.", 0.01, 20, "m").optional(),
  laneDifference: quantity("speed", "Of the leader's lane over the dry's.", -5, 5, "m/s").optional(),
  presentation: PresentationSchema.optional().openapi({
    description:
      "Where the angler stands and casts, over which lanes: where this rig lands, how the lanes differ, what slack there is, and the end of the run where the line is straight. What cast, slack, laneDifference and runLength say goes first.",
  }),
  facts: FactsSchema.optional(),
  rules: RulesSchema.optional().openapi({ description: "Without them every rule is unknown." }),
  wades: z.boolean().optional().openapi({
    description:
      "Whether anybody stands in the water, for the findings on wading; taken as true unless given.",
  }),
  wader: WaderSchema.optional(),
  ground: GroundSchema.optional(),
  route: z
    .array(
      strict<Wire<Place>>({
        depth: quantity("length", "Depth of the water there.", 0, 50, "m"),
        speed: quantity("speed", "Mean over the depth.", 0, 20, "m/s"),
      }).openapi("WadingPlace", { description: "A place on the way to the stop." }),
    )
    .max(20)
    .optional()
    .openapi({ description: "At most 20: the deepest and the quickest of the way there and back." }),
  units: UnitsSchema.optional(),
}).openapi("CheckRigRequest");

interface Answered extends WireChecked {
  readonly presented?: ReturnType<typeof saidPresented> | undefined;
  readonly wading: { readonly stop: WireWading; readonly route: readonly WireWading[] };
  readonly heat?: WireHeat | undefined;
}

const Response = strict<Answered & Footing>({
  ...CheckedRigSchema.shape,
  wading: strict<Answered["wading"]>({
    stop: WadingSchema.openapi({ description: "Where the drift runs: at its depth and mean speed." }),
    route: z.array(WadingSchema).openapi({ description: "Place by place, as asked." }),
  }).openapi("WadingThere", {
    description: "Standing at the stop and on the way. No level is a permission.",
  }),
  presented: PresentedSchema.optional().openapi({ description: "The presentation, with the rig in hand." }),
  heat: HeatSchema.optional().openapi({ description: "Where the temperature was stated." }),
  ...footing,
}).openapi("CheckRigResponse");

interface Input {
  readonly observation: Observation;
  readonly inHand: Pieces;
  readonly stop: Omit<CheckStop, "column">;
  readonly rules: Rules | undefined;
  readonly presented: Presented | null;
}

const places: Places = [
  ["most of clause #", "/rules/clauses/#/most"],
  ["windows? of clause #", "/rules/clauses/#/windows"],
  ["first day that the rules", "/rules/inForce/from"],
  ["last day that the rules", "/rules/inForce/to"],
  ["most of the added weight", "/facts/addedWeight/most"],
  ["date", "/facts/date"],
  ["time of day", "/facts/time"],
  ["height of the wader", "/wader/height"],
  ["mass of the wader", "/wader/mass"],
  ...waterPlaces,
];

const made: Operation<Input, Checked, Answered> = operation<Asked, Input, Checked, Answered>({
  id: "checkRig",
  path: paths.checkRig,
  summary: "Is this rig sound here, and do the rules that somebody states allow it?",
  description:
    "Findings on balance, depth, strength and presentation, each with the smallest change that answers it, recomputed; on wading and heat; and the answer of each stated rule. No rules are shipped: what nobody states is unknown, and ask the local rules.",
  request: Request,
  response: Response,
  examples: checkExamples,
  cost: {
    lessAt: "",
    terms: [
      {
        counts: "drifts: one of the rig in hand, and the most that its remedies may try",
        each: 2500,
        of: () => 1 + mostTrialDrifts,
      },
      {
        counts: "settled rigs: the rig in hand, and the most that its remedies may try",
        each: 100,
        of: () => 1 + mostTrialRigs,
      },
      { counts: "balances of one search for a hold, 100", each: 200, of: () => 100 },
    ],
  },
  places,
  toInput: ({ water, inHand, rules, presentation, ground, units: _, ...stop }) => {
    const pieces = handOf(inHand);
    const presented = presentation === undefined ? null : presentedOf(presentation, pieces.dropper);
    const said = { ...stopOf(stop), ...(ground === undefined ? {} : { footing: ground }) };
    return {
      observation: observationOf(water),
      inHand: pieces,
      stop: presented === null ? said : presentedStop(presented, presentation?.slack, said),
      rules,
      presented,
    };
  },
  encode: (checked, units, { presented }) => {
    const { wading, heat } = checked;
    return {
      answer: {
        ...checkedOf(checked, units),
        wading: {
          stop: wadingOf(wading.stop, units),
          route: wading.route.map((one) => wadingOf(one, units)),
        },
        ...(heat === null ? {} : { heat: heatOf(heat, units) }),
        ...(presented === null ? {} : { presented: saidPresented(presented, units) }),
      },
      grounds: joinGrounds(checked.grounds, ...(presented === null ? [] : [presented.grounds])),
    };
  },
  explain: ({ judgement }, { observation }) => driftSteps(judgement, judgement.rig, observation),
});

/** The version of the rules is read before anything else: what a later one says need not fit this one. */
export const checkRig: Operation<Input, Checked, Answered> = {
  ...made,
  decode: (body) => otherVersion(body) ?? made.decode(body),
};

function otherVersion(body: unknown): Extract<Decoding<never>, { readonly ok: false }> | undefined {
  const rules = isRecord(body) ? body.rules : undefined;
  const version = isRecord(rules) ? rules.version : undefined;
  if (typeof version !== "number" || version === rulesVersion) return undefined;
  const expected = `${rulesVersion}, the version of rules that this engine understands`;
  return { ok: false, errors: [{ path: "/rules/version", expected, received: String(version) }] };
}

type Said = Omit<Decoded<Asked>, "water" | "inHand" | "rules" | "presentation" | "ground" | "units">;

function stopOf({ fish, leader, ...rest }: Said): Omit<CheckStop, "column"> {
  return {
    ...rest,
    ...(fish === undefined ? {} : { lie: fish }),
    ...(leader === undefined ? {} : { leader: leaderOf(leader) }),
  };
}

/** A stop under a presentation: what it says of its own goes first. A run that was not stated is noted, unless the line ends it. */
function presentedStop(
  presented: Presented,
  slack: Metres | undefined,
  stop: Omit<CheckStop, "column">,
): Omit<CheckStop, "column"> {
  const { cast, runLength } = drifted(presented, stop);
  const ended = stop.runLength !== undefined || runLength === presented.reach;
  return {
    ...(slack === undefined ? {} : { slack }),
    laneDifference: presented.laneDifference,
    ...stop,
    cast,
    ...(ended ? { runLength } : {}),
  };
}

function leaderOf({ tippet, ...rest }: NonNullable<Said["leader"]>): Leader {
  return tippet === undefined ? rest : { ...rest, tippet: tippetOf(tippet, "/leader/tippet") };
}
