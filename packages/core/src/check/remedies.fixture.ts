/** Makes the remedies of checks and checks again. */

import type { Pieces } from "../setup/index.js";
import { check } from "./check.js";
import type { CheckStop, Finding } from "./finding.js";
import type { Rules } from "./rules.js";

const order = ["note", "watch", "fix", "stop"];

/** A question has one code for each severity: what takes the place of a code counts as the same finding. */
const family: Readonly<Record<string, string>> = {
  "dry-overloaded": "dry-drowns",
  "dry-barely-carries": "dry-drowns",
  "nymph-near-bed": "nymph-on-bed",
  "nymph-below-fish": "nymph-above-fish",
  "settles-late": "run-ends-first",
  "line-order-close": "dropper-outlasts-leader",
  "tippet-fine": "tippet-coarse",
  "drag-before-end": "drag-before-settled",
  "rule-unknown": "rule-forbids",
};

const nameOf = ({ code, parameters }: Finding): string => {
  const topic = parameters.find(({ name }) => name === "topic");
  return `${family[code] ?? code} ${topic?.value ?? ""}`;
};
const gravity = (finding: Finding | undefined): number =>
  finding === undefined ? -1 : order.indexOf(finding.severity);

/** What is wrong with the remedies of some checks, how many were made, and how many findings had none. */
export function faultsOfRemedies(cases: readonly (readonly [Pieces, CheckStop, Rules])[]): {
  readonly faults: readonly string[];
  readonly made: number;
  readonly none: number;
} {
  const faults: string[] = [];
  let [made, none] = [0, 0];
  for (const [pieces, stop, rules] of cases) {
    const before = check(pieces, stop, rules);
    for (const finding of before.findings) {
      const { remedy } = finding;
      if (remedy.kind === "none") none++;
      if (remedy.kind !== "retie" && remedy.kind !== "fish") continue;
      made++;
      const after =
        remedy.kind === "retie" ? check(remedy.pieces, stop, rules) : check(pieces, remedy.stop, rules);
      const left = after.findings.find((one) => nameOf(one) === nameOf(finding));
      if (gravity(left) >= gravity(finding)) faults.push(`${finding.code} stays`);
      if ((left?.severity ?? null) !== remedy.effect.left)
        faults.push(`${finding.code} leaves another severity`);
      after.rules.forEach(({ topic, answer }, i) => {
        if (answer === "not-allowed" && before.rules[i]?.answer !== "not-allowed")
          faults.push(`${topic} broken`);
      });
    }
  }
  return { faults, made, none };
}
