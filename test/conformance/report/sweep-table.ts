/** The sweep as a table: how many numbers, against what, how closely asked. */
import { readFileSync } from "node:fs";
import { pointsOf, sweeps, worstOf } from "../sweep/sweeps.js";
import { list, table } from "./text.js";

const textOf = (file: string) => readFileSync(new URL(`../sweep/${file}`, import.meta.url), "utf8");

export function sweepTable(): string {
  const rows = sweeps.map((sweep) => {
    const text = textOf(sweep.file);
    const points = pointsOf(sweep, text);
    return {
      sweep,
      points,
      cells: [sweep.relation, String(points), sweep.by, power(sweep.tolerance), worst(worstOf(sweep, text))],
    };
  });
  const strict = rows
    .filter(({ sweep }) => sweep.tolerance <= 1e-9)
    .reduce((sum, { points }) => sum + points, 0);
  const reasons = sweeps.filter(({ because }) => because !== undefined);
  return [
    `Seeded inputs, computed by \`test/conformance/sweep/vectors.py\` with other libraries: ${strict} numbers are asked for to 1e-9.`,
    "",
    table(
      ["relation", "numbers", "by", "tolerance", "worst error"],
      rows.map(({ cells }) => cells),
    ),
    "",
    list(reasons.map(({ relation, because }) => `${relation}: ${because}.`)),
  ].join("\n");
}

function power(tolerance: number): string {
  return tolerance.toExponential(0);
}

/** Rounded up to a coarse power of ten: the last bits differ between platforms. */
function worst(error: number): string {
  const bound = [1e-12, 1e-11, 1e-10, 1e-9, 1e-8, 1e-7, 1e-6, 1e-5, 1e-4, 1e-3, 0.01, 0.1].find(
    (b) => error <= b,
  );
  return bound === undefined ? "over 0.1" : `within ${bound.toExponential(0)}`;
}
