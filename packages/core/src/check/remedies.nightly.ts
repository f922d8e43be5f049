/** The remedies of two thousand random faulty rigs, each made and asked about again. */

import { expect, test } from "vitest";
import { randomCases } from "./check.fixture.js";
import { faultsOfRemedies } from "./remedies.fixture.js";

test.each([21, 22, 23, 24])(
  "of 500 rigs (seed %d) remove the finding or lower it, and break no stated rule",
  {
    timeout: 3_600_000,
  },
  (seed) => {
    const { faults, made, none } = faultsOfRemedies(randomCases(seed, 500));
    expect(faults).toEqual([]);
    expect(made).toBeGreaterThan(1000);
    // the rest is what no single change answers
    expect(none / (made + none)).toBeLessThan(0.1);
  },
);
