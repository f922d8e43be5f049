/** docs/findings.md is what the catalogue, the examples and the check say today: `vitest run -u` on this file writes it. */

import { expect, test } from "vitest";
import { tippetDiameter } from "../tackle/index.js";
import { findingExamples } from "./examples.fixture.js";
import { check, findingCodes, findingMessage, findingMessages, remedyMessage } from "./index.js";

const head = `# Findings of a check

\`checkRig\` (\`POST /v1/checks\`) and \`check\` of the core answer with findings. Each has a code that stays, a severity, the numbers it rests on
(the first is the one it turns on), words to localise the message with, and a remedy: the smallest change found that answers it, recomputed.
This page is generated from the one catalogue of messages and an invented example of each; \`{name}\` is a number or a word of the finding.

- \`stop\`: do not fish it so. \`fix\`: change it first. \`watch\`: it fishes, with a weakness. \`note\`: something to know or to say.
- The basis is what the limit rests on: \`published\`, \`practice\` (common practice, no source), \`assumption\` (ours), or \`stated\` (a rule of the caller).
  The numbers themselves rest on the relations and assumptions of the answer.
- A remedy is tried one change at a time: dropper to the centimetre up to 5 cm off and then in steps that grow by a quarter, tippet by whole X,
  beads and hooks by the sizes they are sold in, a hold, a softer landing, another place to land, a longer run, more slack. It never raises another
  finding to a fault (only a \`stop\` may give way to a \`fix\`), and never breaks a rule that was stated. \`none\` says that no single change that was tried does it: two together may.
- What a knot leaves of a line, 0.8, is common practice, from memory; \`knotShare\` of the dropper and of the leader overrides it. Breaking forces are
  by material and diameter (±35 %) unless the spool's own is given.
- Rules are held against what was stated and no further. \`allowed\` means that a stated clause allows it. A missing clause, a missing fact, a day
  outside \`inForce\` are \`unknown\`. Days and times are those at the water; hours that go by the sun have to be worked out by who states them.
- Wading, hooks, warm water: a check without findings says nothing of them. The cautions of every answer, local rules and those licensed to guide come first.
`;

function sectionOf(code: (typeof findingCodes)[number]): string {
  const { pieces, stop, rules } = findingExamples[code];
  const finding = check(pieces, stop, rules).findings.find((one) => one.code === code);
  if (finding === undefined) throw new Error(`${code} does not come of its example`);
  const x = (tippetDiameter(0) - pieces.tippet.diameter) / (tippetDiameter(0) - tippetDiameter(1));
  const rig = `${pieces.dry.name}, ${pieces.nymph.name}, ${pieces.dropper} m of ${x.toFixed(0)}X ${pieces.tippet.material}`;
  const water = `${stop.column.depth} m deep, ${stop.column.surfaceSpeed} m/s at the surface`;
  return `
## ${code}

> ${findingMessages[code]}

Example: ${rig}; ${water}. Severity \`${finding.severity}\`, basis \`${finding.basis}\`.

- ${findingMessage(finding)}
- ${remedyMessage(finding.remedy)}
`;
}

test("docs/findings.md", { timeout: 300_000 }, async () => {
  const page = head + findingCodes.map(sectionOf).join("");
  await expect(page).toMatchFileSnapshot("../../../../docs/findings.md");
});
