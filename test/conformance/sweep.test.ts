/** The sweep against its vectors, and how many points that is. */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { pointsOf, sweeps, worstOf } from "./sweep/sweeps.js";

const textOf = (file: string) => readFileSync(new URL(`sweep/${file}`, import.meta.url), "utf8");

test.each(sweeps)("$relation: as by $by, to $tolerance", (sweep) => {
  const worst = worstOf(sweep, textOf(sweep.file));
  expect(worst).toBeLessThanOrEqual(sweep.tolerance);
});

test("is over at least 10,000 points of relations that are the same", () => {
  const strict = sweeps.filter((sweep) => sweep.tolerance <= 1e-9);
  const points = strict.reduce((sum, sweep) => sum + pointsOf(sweep, textOf(sweep.file)), 0);
  expect(points).toBeGreaterThan(10_000);
});

test("a sweep that is a millionth off fails", () => {
  const [sweep] = sweeps;
  if (sweep === undefined) throw new Error("no sweep");
  const off = {
    ...sweep,
    evaluate: (row: Readonly<Record<string, number>>) => {
      const given = sweep.evaluate(row);
      return { ...given, viscosity: (given.viscosity ?? 0) * (1 + 1e-6) };
    },
  };
  expect(worstOf(off, textOf(sweep.file))).toBeGreaterThan(sweep.tolerance);
});
