/** Makes the remedies of checks and asks again. */

import type { Pieces } from "../setup/index.js";
import { check } from "./check.js";
import type { CheckStop, Finding } from "./finding.js";
import { type Reading, rank } from "./question.js";
import { questionsUnder } from "./questions.js";
import { factsOf } from "./rule-facts.js";
import { judgeRules, type Rules, type RuleTopic } from "./rules.js";
import { look, type Seen } from "./seen.js";
import { heatFindings, heatThere, wadingFindings, wadingThere } from "./there.js";

type Read = Pick<Reading, "code" | "severity" | "parameters"> | null;

const topicOf = (read: Read): string | undefined =>
  read?.parameters?.find(({ name }) => name === "topic")?.value;

interface Remedied {
  /** Remedies that leave their finding as grave as it was, or not as they say. */
  readonly faults: readonly string[];
  /** Remedies that break a rule that was not broken, or another bead or wire that a rule forbids too. */
  readonly violations: readonly string[];
  readonly made: number;
  /** How many of those made were under rules that speak of weight or lead. */
  readonly ruled: number;
  /** How many findings had none. */
  readonly none: number;
}

export function faultsOfRemedies(cases: readonly (readonly [Pieces, CheckStop, Rules])[]): Remedied {
  const faults: string[] = [];
  const violations: string[] = [];
  let [made, ruled, none] = [0, 0, 0];
  for (const [pieces, stop, rules] of cases) {
    const asks: readonly ((at: Seen) => Read)[] = [
      ...questionsUnder(rules).map(({ ask }) => ask),
      (at) => wadingFindings(at.stop, wadingThere(at.stop))[0] ?? null,
      (at) => heatFindings(at.stop, heatThere(at.stop, rules), rules)[0] ?? null,
    ];
    const here = look(pieces, stop);
    const before = asks.map((ask) => ask(here));
    const broken = brokenBy(pieces, stop, rules);
    for (const finding of check(pieces, stop, rules).findings) {
      const { remedy, code, severity } = finding;
      if (remedy.kind === "none") none++;
      if (remedy.kind !== "retie" && remedy.kind !== "fish") continue;
      made++;
      if (rules.clauses.some(({ topic }) => ofNymph.includes(topic))) ruled++;
      // anew, with nothing of what the check has computed
      const [tied, fished] = remedy.kind === "retie" ? [remedy.pieces, stop] : [pieces, remedy.stop];
      const asked = asks[before.findIndex((read) => isOf(read, finding))];
      const left = asked?.(look(tied, fished))?.severity ?? null;
      if (asked === undefined || rank(left) >= rank(severity)) faults.push(`${code} stays`);
      if (left !== remedy.effect.left) faults.push(`${code} leaves ${left}, not ${remedy.effect.left}`);
      const weighted =
        tied.nymph.bead !== pieces.nymph.bead || tied.nymph.underbody !== pieces.nymph.underbody;
      for (const topic of brokenBy(tied, fished, rules)) {
        if (!broken.includes(topic) || (weighted && ofNymph.includes(topic)))
          violations.push(`${code} against ${topic}`);
      }
    }
  }
  return { faults, violations, made, ruled, none };
}

/** What rules say of bead and wire. */
const ofNymph: readonly RuleTopic[] = ["added-weight", "lead"];

/** Straight from the rules, past the questions of a check. */
function brokenBy(pieces: Pieces, stop: CheckStop, rules: Rules): readonly RuleTopic[] {
  const answers = judgeRules(rules, factsOf(pieces, stop));
  return answers.filter(({ answer }) => answer === "not-allowed").map(({ topic }) => topic);
}

function isOf(read: Read, { code, parameters }: Finding): boolean {
  return read?.code === code && topicOf(read) === topicOf({ code, severity: null, parameters });
}
