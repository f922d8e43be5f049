/** What rules ask of a rig and a stop, and what the answers mean to a check. */

import type { Pieces } from "../setup/index.js";
import { beadMass, beadMassSpread, buildNymph } from "../tackle/index.js";
import { kilograms } from "../units/index.js";
import type { CheckStop, Parameter } from "./finding.js";
import { type Lever, type Question, readingOf } from "./question.js";
import {
  judgeRules,
  type RuleAnswer,
  type RuleFacts,
  type Rules,
  type RuleTopic,
  ruleTopics,
} from "./rules.js";
import type { Seen } from "./seen.js";

/** What a rig tells by itself; what the caller states goes before it. Two flies on a hook each; a weighed nymph does not say what it holds. */
export function factsOf({ nymph }: Pieces, stop: CheckStop): RuleFacts {
  const lead = nymph.underbody?.material === "lead";
  const temperature = stop.column.water.temperature;
  return {
    flies: 2,
    hooks: 2,
    ...weightIn(nymph),
    // brass may hold lead
    ...(lead || (nymph.measured?.mass === undefined && nymph.bead?.material !== "brass") ? { lead } : {}),
    ...(isStated(stop) ? { temperature } : {}),
    ...stop.facts,
  };
}

/** Whether somebody took the temperature of the water, and it is no default. */
export function isStated({ column }: CheckStop): boolean {
  return !column.grounds.assumptions.some(({ name }) => name === "water temperature");
}

/** Mass of bead and wire; nothing where the fly was weighed. */
function weightIn(nymph: Pieces["nymph"]): Pick<RuleFacts, "addedWeight"> {
  if (nymph.measured?.mass !== undefined) return {};
  const bead = nymph.bead === undefined ? 0 : beadMass(nymph.bead);
  const { underbody: _, ...bare } = nymph;
  const wire = buildNymph(nymph).body.mass - buildNymph(bare).body.mass;
  const least = kilograms((1 - beadMassSpread) * bead + 0.85 * wire);
  return { addedWeight: { least, most: kilograms((1 + beadMassSpread) * bead + 1.15 * wire) } };
}

const levers: Readonly<Record<RuleTopic, readonly Lever[]>> = {
  flies: ["obey"],
  hooks: ["obey"],
  barbless: ["obey"],
  "added-weight": ["bead", "wire"],
  lead: ["wire", "bead"],
  bait: ["obey"],
  season: [],
  hours: [],
  temperature: [],
};

function wordsOf(
  { topic, clause, missing, because }: RuleAnswer,
  { statedBy, place }: Rules,
): readonly Parameter[] {
  return [
    { name: "topic", value: topic },
    { name: "clause", value: clause?.text ?? clause?.id ?? "no clause" },
    { name: "because", value: because },
    { name: "missing", value: missing ?? "a clause" },
    { name: "statedBy", value: statedBy },
    { name: "place", value: place },
  ];
}

/** A question for each topic of rules that somebody stated. */
export function ruleQuestions(rules: Rules | undefined): readonly Question[] {
  if (rules === undefined) return [];
  const answers = new WeakMap<Seen, readonly RuleAnswer[]>();
  return ruleTopics.map((topic, i) => ({
    levers: levers[topic],
    ask: (seen) => {
      const all = answers.get(seen) ?? judgeRules(rules, factsOf(seen.pieces, seen.stop));
      answers.set(seen, all);
      const answer = all[i]!;
      const supply = answer.answer === "unknown" ? ({ supply: answer.missing ?? "rules" } as const) : {};
      return readingOf(
        { basis: "stated", numbers: [], parameters: wordsOf(answer, rules), ...supply },
        { when: answer.answer === "not-allowed", severity: "stop", code: "rule-forbids" },
        { when: answer.answer === "unknown", severity: "note", code: "rule-unknown" },
      );
    },
  }));
}
