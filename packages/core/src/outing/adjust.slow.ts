import { expect, test } from "vitest";
import { coverageOver, revised } from "./adjust-coverage.fixture.js";

// docs/adjustments.md shows what this measures
test("over 500 invented truths the intervals of 0.9 hold them within 3 points of that, quantity by quantity", () => {
  const { inside, underMedian, leastEffective } = coverageOver(500);
  for (const name of revised) expect(Math.abs(inside[name] - 0.9), name).toBeLessThanOrEqual(0.03);
  expect(leastEffective).toBeGreaterThan(50);
  // a share of 500 about a half strays by 2.2 points
  for (const name of revised) expect(Math.abs(underMedian[name] - 0.5), name).toBeLessThanOrEqual(0.07);
}, 900_000);
