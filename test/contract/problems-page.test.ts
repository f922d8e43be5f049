/** docs/problems.md is what the table of problems says: `pnpm -C test/contract run write` writes it again. */

import { expect, test } from "vitest";
import { ask, type Body } from "./api.js";

const head = `# Problems

Whatever is not an answer is a problem document (RFC 9457, \`application/problem+json\`) with one of these codes. A code stays; its words may change.
This page is generated from the table that also makes the statuses, the schema, the document and \`GET /v1/problems/{code}\`.
A drowned dry, a rig on the bed or a gauge that is silent is no problem: those are answers with status 200.

- \`type\` is \`/v1/problems/\` and the code: ask the host for it. \`detail\` says what is wrong with this request, \`instance\` names it in the log.
- \`errors\` lists up to twenty faults: \`path\` (a JSON pointer into the body, or \`?name\` of a parameter), what was \`expected\`, what was \`received\`, often a \`suggestion\`.
- A problem is never kept by a cache. Worth sending again as it is: \`429\` after \`Retry-After\`, \`408\` and \`503\` after a while.
  \`500\` is ours: quote \`instance\` in a report. All others want another request.
`;

test("docs/problems.md", async () => {
  const { body } = await ask("/v1/problems");
  const problems: readonly Body[] = body.problems;
  const rows = problems.map(({ code, status, title }) => [`[\`${code}\`](#${code})`, String(status), title]);
  const widths = [0, 1, 2].map((i) => Math.max("status".length, ...rows.map((row) => row[i]!.length)));
  const line = (cells: readonly string[]) =>
    `| ${cells.map((cell, i) => cell.padEnd(widths[i]!)).join(" | ")} |\n`;
  const rule = line(widths.map((width) => "-".repeat(width)));
  const table = `\n${line(["code", "status", "title"])}${rule}${rows.map(line).join("")}`;
  const sections = problems.map(({ code, status, meaning }) => `\n## ${code}\n\n${status}. ${meaning}\n`);
  await expect(head + table + sections.join("")).toMatchFileSnapshot("../../docs/problems.md");
});
