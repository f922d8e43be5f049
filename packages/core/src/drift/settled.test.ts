import { describe, expect, test, vi } from "vitest";
import { laws, seededRig, sweep } from "./settled.fixture.js";
import { settle } from "./settled.js";

// hundreds of rigs each, on a machine that may be busy
vi.setConfig({ testTimeout: 60_000 });

/** The slow script takes all 10,000: settled.slow.ts. */
describe("2,000 seeded rigs settle", () => {
  const seen = { hanging: 0, "on-bed": 0, drowned: 0, "slack-water": 0 };

  test.each([0, 500, 1000, 1500])("from number %d", (from) => {
    const { faults, regimes, laws: met } = sweep(from, from + 500);
    expect(faults).toEqual([]);
    expect([...met].sort()).toEqual([...laws].sort());
    for (const regime of ["hanging", "on-bed", "drowned", "slack-water"] as const) {
      seen[regime] += regimes[regime];
    }
  });

  test("in every regime", () => {
    expect(Object.values(seen).reduce((a, b) => a + b)).toBe(2000);
    expect(Math.min(...Object.values(seen))).toBeGreaterThan(5);
  });
});

test("the same rig settles the same way twice", () => {
  for (let index = 0; index < 60; index++) {
    const { rig, column, options } = seededRig(index);
    expect(settle(rig, column, options)).toEqual(settle(rig, column, options));
  }
});
