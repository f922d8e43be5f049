/** The sweep: every relation over thousands of seeded points against vectors.py, which is written from the model with other libraries. */
import { channelSweeps } from "./channel.js";
import { columnSweeps } from "./column.js";
import { compoundSweeps } from "./compound.js";
import { driftSweeps } from "./drift.js";
import { frictionSweeps } from "./friction.js";
import { plainSweeps } from "./plain.js";
import { resistanceSweeps } from "./resistance.js";
import type { Row, Sweep } from "./sweep.js";

export type { Sweep } from "./sweep.js";

export const sweeps: readonly Sweep[] = [
  ...plainSweeps,
  ...channelSweeps,
  ...resistanceSweeps,
  ...frictionSweeps,
  ...compoundSweeps,
  ...columnSweeps,
  ...driftSweeps,
];

/** The rows of a file of vectors: a line of names, then numbers. */
export function rowsOf(text: string): readonly Row[] {
  const [head = "", ...lines] = text.trimEnd().split("\n");
  const names = head.split(",");
  return lines.map((line) => {
    const cells = line.split(",").map(Number);
    return Object.fromEntries(names.map((name, i) => [name, cells[i] ?? Number.NaN]));
  });
}

/** How many numbers of the core a sweep compares. */
export function pointsOf({ outputs }: Sweep, text: string): number {
  return rowsOf(text).length * outputs.length;
}

/** The greatest error of a sweep, relative to the vector or to the scale that the sweep names; not a number where the core gives none. */
export function worstOf({ outputs, evaluate, scale }: Sweep, text: string): number {
  let worst = 0;
  for (const row of rowsOf(text)) {
    const given = evaluate(row);
    for (const name of outputs) {
      const expected = row[name] ?? Number.NaN;
      const size = Math.max(Math.abs(expected), scale?.(name, row) ?? 0);
      const error = Math.abs((given[name] ?? Number.NaN) - expected) / size;
      if (!(error <= worst)) worst = error;
      if (Number.isNaN(error)) return error;
    }
  }
  return worst;
}
