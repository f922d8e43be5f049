/** The remedies of two thousand random faulty rigs, each made and checked again. */

import fc from "fast-check";
import { expect, test } from "vitest";
import { anyPieces, anyRules, anyStop } from "./check.fixture.js";
import { faultsOfRemedies } from "./remedies.fixture.js";

test.each([21, 22, 23, 24])(
  "of 500 rigs (seed %d) remove the finding or lower it, and break no stated rule",
  {
    timeout: 3_600_000,
  },
  (seed) => {
    const cases = fc.sample(fc.tuple(anyPieces, anyStop, anyRules), { seed, numRuns: 500 });
    const { faults, made, none } = faultsOfRemedies(cases);
    expect(faults).toEqual([]);
    expect(made).toBeGreaterThan(1000);
    // what no single change answers
    expect(none / (made + none)).toBeLessThan(0.1);
  },
);
