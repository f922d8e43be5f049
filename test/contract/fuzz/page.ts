/** docs/fuzz.md: what was sent in a run, what came of it, and what stayed in memory. */

import { type Heap, slopeOf } from "./memory.js";

/** How often each status came. */
export type Statuses = ReadonlyMap<number, number>;

export interface Run {
  readonly seed: number;
  /** By target and kind. */
  readonly tally: ReadonlyMap<string, ReadonlyMap<string, Statuses>>;
  readonly slow: ReadonlyMap<string, Statuses>;
  readonly heaps: readonly Heap[];
  /** Those that count for the slope. */
  readonly settled: readonly Heap[];
  readonly seconds: number;
}

export function sum(statuses: Iterable<Statuses>): number {
  return [...statuses].flatMap((one) => [...one.values()]).reduce((total, times) => total + times, 0);
}

export function page({ seed, tally, slow, heaps, settled, seconds }: Run): string {
  const kinds = [...tally.values()];
  const total = sum(kinds.flatMap((one) => [...one.values()])) + sum(slow.values());
  return [
    "# Random requests",
    `Written by \`pnpm -C test/contract run nightly\`. ${total} requests from seed ${seed}, Node ${process.versions.node} on ${process.platform} ${process.arch}, ${Math.round(seconds)} s of processor time.`,
    [
      "None was answered with a 5xx, with a status or a content type that the document does not declare, or with a body that fails the document (Ajv, JSON Schema 2020-12).",
      "No number was not finite. No answer shows more work than was counted before computing, and none was counted above the limit. No key given twice, no byte that is not UTF-8, and no key of",
      "the prototype, was let through. `test/contract/fuzz/kinds.ts` has the kinds; `npm test` sends a slice of each.",
    ].join("\n"),
    "Answers by status. Heavy requests are sent in proportion to what they ask for.",
    byKind(tally),
    "Slow bodies go over real sockets to the Node entry, cut into ten pieces; one that came whole in time has to get the answer that it gets at once. 0: nobody waited for an answer.",
    table(
      ["slow bodies", "answers"],
      [...slow].map(([way, statuses]) => [way, said(statuses)]),
    ),
    `Heap in use after a full collection, in MB: ${heaps.map(({ bytes }) => (bytes / 1e6).toFixed(1)).join(", ")}.`,
    `From request ${settled[0]?.requests} to ${settled.at(-1)?.requests} it changes by ${slopeOf(settled).toFixed(1)} bytes a request. An identifier kept of each would be some 60; the run fails at 50.`,
    "",
  ]
    .join("\n\n")
    .trimEnd()
    .concat("\n");
}

/** A table for each kind, in the order in which they come. */
function byKind(tally: Run["tally"]): string {
  const names = new Set([...tally.values()].flatMap((kinds) => [...kinds.keys()]));
  const rows = (name: string): string[][] =>
    [...tally].flatMap(([target, kinds]) => {
      const statuses = kinds.get(name);
      return statuses === undefined ? [] : [[target, said(statuses)]];
    });
  return [...names].map((name) => `### ${name}\n\n${table(["asked", "answers"], rows(name))}`).join("\n\n");
}

function said(statuses: Statuses): string {
  return [...statuses]
    .sort(([a], [b]) => a - b)
    .map(([status, times]) => `${status}: ${times}`)
    .join(", ");
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]): string => `| ${cells.join(" | ")} |`;
  return [line(head), line(head.map(() => "---")), ...rows.map(line)].join("\n");
}
