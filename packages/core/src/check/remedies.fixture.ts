/** Makes the remedies of checks and asks again. */

import type { Pieces } from "../setup/index.js";
import { check } from "./check.js";
import type { CheckStop, Finding } from "./finding.js";
import { type Reading, rank } from "./question.js";
import { questionsUnder } from "./questions.js";
import { askAll } from "./remedy.js";
import type { Rules } from "./rules.js";
import { look } from "./seen.js";
import { heatFindings, heatThere, wadingFindings, wadingThere } from "./there.js";

const topicOf = ({ parameters }: Pick<Reading, "parameters">): string | undefined =>
  parameters?.find(({ name }) => name === "topic")?.value;

/** What is wrong with the remedies of some checks, how many were made, and how many findings had none. */
export function faultsOfRemedies(cases: readonly (readonly [Pieces, CheckStop, Rules])[]): {
  readonly faults: readonly string[];
  readonly made: number;
  readonly none: number;
} {
  const faults: string[] = [];
  let [made, none] = [0, 0];
  for (const [pieces, stop, rules] of cases) {
    const readings = (
      at: Pieces,
      where: CheckStop,
    ): readonly (Pick<Reading, "code" | "severity" | "parameters"> | null)[] => [
      ...askAll(questionsUnder(rules), look(at, where)).map(({ reading }) => reading),
      wadingFindings(where, wadingThere(where))[0] ?? null,
      heatFindings(where, heatThere(where, rules), rules)[0] ?? null,
    ];
    const before = readings(pieces, stop);
    const answers = (finding: Finding) => (reading: (typeof before)[number]) =>
      reading?.code === finding.code && topicOf(reading) === topicOf(finding);
    for (const finding of check(pieces, stop, rules).findings) {
      const { remedy, code, severity } = finding;
      if (remedy.kind === "none") none++;
      if (remedy.kind !== "retie" && remedy.kind !== "fish") continue;
      made++;
      const after = remedy.kind === "retie" ? readings(remedy.pieces, stop) : readings(pieces, remedy.stop);
      const left = after[before.findIndex(answers(finding))]?.severity ?? null;
      if (rank(left) >= rank(severity)) faults.push(`${code} stays`);
      if (left !== remedy.effect.left) faults.push(`${code} leaves ${left}, not ${remedy.effect.left}`);
      after.forEach((reading, i) => {
        if (reading?.code === "rule-forbids" && reading.severity === "stop" && before[i]?.severity !== "stop")
          faults.push(`${code} breaks a rule of ${topicOf(reading)}`);
      });
    }
  }
  return { faults, made, none };
}
