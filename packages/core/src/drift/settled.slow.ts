/** The whole sweep of the settled solver: `pnpm run slow`, a minute or two. */

import { expect, test } from "vitest";
import { laws, sweep } from "./settled.fixture.js";

const total = 10_000;
const part = 1000;

test.each(Array.from({ length: total / part }, (_, i) => i * part))(
  "1,000 seeded rigs settle, from number %d",
  { timeout: 120_000 },
  (from) => {
    const { faults, regimes, laws: met } = sweep(from, from + part);
    expect(faults).toEqual([]);
    expect(met.size).toBe(laws.length);
    expect(Object.values(regimes).reduce((a, b) => a + b)).toBe(part);
  },
);
