/** What is right and wrong with a rig that someone has on, at a stop that they describe, under the rules that they state. */

import type { FishWindow } from "../lie/index.js";
import { type Judgement, type Pieces, standingCautions } from "../setup/index.js";
import { type Assumption, type Grounds, joinGrounds } from "../sources/index.js";
import type { CheckStop, Finding, Remedy } from "./finding.js";
import type { Heat } from "./heat.js";
import { rank } from "./question.js";
import { questionsUnder } from "./questions.js";
import { type Asked, askAll, remedies } from "./remedy.js";
import { factsOf } from "./rule-facts.js";
import { judgeRules, type RuleAnswer, type Rules } from "./rules.js";
import { look, type Seen } from "./seen.js";
import { usualKnotShare } from "./strength.js";
import { heatFindings, heatThere, type WadingThere, wadingFindings, wadingThere } from "./there.js";
import { unstated } from "./unstated.js";

export interface Checked {
  /** The gravest first. */
  readonly findings: readonly Finding[];
  /** One answer for each topic of rules. */
  readonly rules: readonly RuleAnswer[];
  readonly judgement: Judgement;
  readonly window: FishWindow;
  readonly wading: WadingThere;
  /** Null where the temperature was not stated. */
  readonly heat: Heat | null;
  /** For everyone at the water, whatever the findings. */
  readonly cautions: readonly string[];
  /** Rigs settled and whole drifts computed: of the rig in hand, and of what was tried for it. */
  readonly work: { readonly settled: number; readonly judged: number };
  readonly grounds: Grounds;
}

const statedRulesCaution =
  "Rules were judged as they were stated here, and no further: the local rules and those who enforce them come first.";

/** Findings on a rig in hand and on who stands there, each with the smallest change that answers it, recomputed; and the answer of each stated rule.
 *  A rule nobody stated is unknown, and said to be. Throws QuantityError for tackle, water or rules that cannot be. */
export function check(inHand: Pieces, stop: CheckStop, rules?: Rules): Checked {
  const seen = look(inHand, stop);
  const answers = judgeRules(rules, factsOf(inHand, stop));
  const asked = askAll(questionsUnder(rules), seen);
  const remedy = remedies(seen, asked);
  const [wading, warmth] = [wadingThere(stop), heatThere(stop, rules)];
  const findings = [
    ...asked.flatMap((one) => findingOf(one, remedy.of)),
    ...wadingFindings(stop, wading),
    ...heatFindings(stop, warmth, rules),
    ...unstated(seen, rules),
  ];
  const judgement = seen.judged();
  return {
    findings: findings.sort((a, b) => rank(b.severity) - rank(a.severity)),
    rules: answers,
    judgement,
    window: seen.window,
    wading,
    heat: warmth,
    work: workOf([seen, ...remedy.tried]),
    cautions: rules === undefined ? standingCautions : [statedRulesCaution, ...standingCautions.slice(1)],
    grounds: joinGrounds(
      stop.column.grounds,
      judgement.grounds,
      seen.window.grounds,
      { relations: ["CommonPractice", "OurAssumption"], assumptions: strengthAssumptions(stop), caveats: [] },
      wading.stop.grounds,
      ...(warmth === null ? [] : [warmth.grounds]),
    ),
  };
}

function workOf(rigs: readonly Seen[]): Checked["work"] {
  const asked = rigs.map((one) => one.asked());
  const count = (what: "settled" | "judged"): number => asked.filter((one) => one[what]).length;
  return { settled: count("settled"), judged: count("judged") };
}

function findingOf(one: Asked, remedyFor: (one: Asked) => Remedy): readonly Finding[] {
  const { reading } = one;
  if (reading === null || reading.severity === null) return [];
  const { code, severity, basis, numbers, parameters = [], supply } = reading;
  const remedy: Remedy = supply === undefined ? remedyFor(one) : { kind: "supply", input: supply };
  return [{ code, severity, basis, numbers, parameters, remedy }];
}

function strengthAssumptions({ knotShare, leader }: CheckStop): readonly Assumption[] {
  const value = `${usualKnotShare} of its strength`;
  const taken = (name: string): Assumption => ({ name, value, basis: "practice" });
  return [
    ...(knotShare === undefined ? [taken("what the knots of the dropper leave")] : []),
    ...(leader !== undefined && leader.knotShare === undefined
      ? [taken("what the knot of the leader leaves")]
      : []),
  ];
}
