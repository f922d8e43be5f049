/** What a check answers: findings, rules, and where the rig hangs in short. */

import { z } from "@hono/zod-openapi";
import type {
  Checked,
  DepthBelowSurface,
  FishWindow,
  HeightAboveBed,
  MetresPerSecond,
  Radians,
  Regime,
  Seconds,
} from "@plumbdrift/core";
import { encode } from "../quantity/encode.js";
import { quantity } from "../quantity/schema.js";
import type { Units } from "../quantity/units.js";
import { count, type Strict, strict, type Wire } from "../quantity/wire.js";
import { type SaidSettling, SettlingSchema, saidSettling } from "./drift.js";
import { FindingSchema, findingOf, type WireFinding } from "./finding.js";
import { FishWindowSchema } from "./ranking.js";
import { RuleAnswerSchema, type WireRuleAnswer } from "./rules.js";
import { RegimeSchema, saidSettled } from "./settled.js";

interface Summary {
  readonly regime: Regime;
  readonly floatMargin: number | null;
  readonly driftSpeed: MetresPerSecond;
  readonly excess: MetresPerSecond;
  readonly lean: Radians;
  readonly heightAboveBed: HeightAboveBed;
  readonly depthBelowSurface: DepthBelowSurface;
  readonly settling: SaidSettling;
  readonly secondsInWindow: Seconds;
  readonly effectiveSeconds: Seconds;
}

export interface WireChecked {
  readonly findings: readonly WireFinding[];
  readonly rules: readonly WireRuleAnswer[];
  readonly settled: Wire<Summary>;
  readonly window: Wire<Omit<FishWindow, "grounds">>;
  readonly work: Checked["work"];
  readonly cautions: readonly string[];
}

const SummarySchema = strict<Wire<Summary>>({
  regime: RegimeSchema,
  floatMargin: z
    .number()
    .optional()
    .openapi({ description: "Reserve over load; absent when nothing pulls." }),
  driftSpeed: quantity("speed", "Of the whole rig, along the stream."),
  excess: quantity("speed", "Of the nymph over its own water: positive when towed."),
  lean: quantity("angle", "Of the chord from the vertical, positive when the nymph trails upstream."),
  heightAboveBed: quantity("length", "Height of the nymph above the bed."),
  depthBelowSurface: quantity("length", "Depth of the nymph below the surface."),
  settling: SettlingSchema,
  secondsInWindow: quantity("time", "In one drift over the run."),
  effectiveSeconds: quantity("time", "The same, weighted by how little the nymph is towed."),
}).openapi("SettledSummary", { description: "Where the rig in hand hangs, in short." });

const WorkSchema = strict<Checked["work"]>({
  settled: count("Rigs settled: the rig in hand, and what was tried for it."),
  judged: count("Whole drifts computed of these."),
}).openapi("CheckWork", { description: "What was computed." });

export const CheckedRigSchema: Strict<WireChecked> = strict<WireChecked>({
  findings: z.array(FindingSchema).openapi({ description: "The gravest first." }),
  rules: z
    .array(RuleAnswerSchema)
    .openapi({ description: "One answer for each topic; nothing is allowed unless stated." }),
  settled: SummarySchema,
  window: FishWindowSchema,
  work: WorkSchema,
  cautions: z.array(z.string()).openapi({ description: "For everyone at the water, whatever the findings." }),
}).openapi("CheckedRig", { description: "What is right and wrong with a rig in hand." });

export function checkedOf(
  { findings, rules, judgement, window, work, cautions }: Checked,
  units: Units,
): WireChecked {
  const { settled, settling, secondsInWindow, effectiveSeconds } = judgement;
  const { excess, heightAboveBed, depthBelowSurface } = settled.sinkers.at(-1)!;
  const { regime, driftSpeed, lean } = settled;
  const summary: Summary = {
    regime,
    floatMargin: saidSettled(settled).floatMargin,
    driftSpeed,
    excess,
    lean,
    heightAboveBed,
    depthBelowSurface,
    settling: saidSettling(settling),
    secondsInWindow,
    effectiveSeconds,
  };
  return {
    findings: findings.map((finding) => findingOf(finding, units)),
    rules: rules.map((answer) => encode(RuleAnswerSchema, answer, units)),
    settled: encode(SummarySchema, summary, units),
    window: encode(FishWindowSchema, window, units),
    work,
    cautions,
  };
}
