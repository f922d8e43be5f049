/** The remedies of two thousand random faulty rigs, each made and asked about again; and a thousand rigs without a fault. */

import { beforeAll, describe, expect, test } from "vitest";
import { graveOf, randomCases, soundCases } from "./check.fixture.js";
import { check } from "./check.js";
import { faultsOfRemedies } from "./remedies.fixture.js";

describe("of 2,000 rigs", () => {
  let found: ReturnType<typeof faultsOfRemedies>;
  beforeAll(() => {
    found = faultsOfRemedies([21, 22, 23, 24].flatMap((seed) => randomCases(seed, 500)));
  }, 1_800_000);

  test("each remedy removes its finding or lowers it, as it says", () => {
    expect(found.faults).toEqual([]);
    expect(found.made).toBeGreaterThan(4 * 1000);
    // the rest is what no single change answers
    expect(found.none / (found.made + found.none)).toBeLessThan(0.1);
  });

  test("no remedy violates a stated rule", () => {
    expect(found.violations).toEqual([]);
    // so many had a rule to violate
    expect(found.ruled).toBeGreaterThan(1000);
  });
});

test("of 1,000 rigs without faults none yields a fix or a stop", () => {
  const grave = soundCases(25, 1000).flatMap((one) => graveOf(check(...one).findings));
  expect(grave).toEqual([]);
}, 600_000);
