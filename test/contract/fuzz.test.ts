/** A slice of the random requests, of every kind to every operation; `nightly` sends 200,000 (docs/fuzz.md). */

import { operations } from "@plumbdrift/contract";
import { describe, expect, test } from "vitest";
import { countOf, send, targets } from "./fuzz/run.js";
import { slowly } from "./fuzz/slow.js";

const rounds = { from: 0, to: 2 };

describe.each([...targets])("%s", (target, kinds) => {
  test.each(kinds.map((kind) => [kind.name, kind] as const))("%s", async (_name, kind) => {
    const count = Math.max(1, countOf(kind, rounds));
    const { statuses, faults } = await send(target, kind, { seed: 5, count });
    expect(faults).toEqual([]);
    expect([...statuses.values()].reduce((sum, times) => sum + times, 0)).toBe(count);
    if (kind.name === "near an example") expect([...statuses.keys()]).toContain(200);
  });
});

test("slow bodies that come whole in time get the answer that they would get at once", async () => {
  const statuses = await slowly("in time", { seed: 5, each: 1 });
  expect([...statuses.values()].reduce((sum, times) => sum + times, 0)).toBe(operations.length);
  expect([...statuses.keys()]).toContain(200);
});
