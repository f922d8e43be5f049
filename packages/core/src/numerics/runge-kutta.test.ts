import { expect, test } from "vitest";
import { rungeKutta } from "./index.js";

const growth = rungeKutta((y, slope) => slope.set([y[0]!, -y[2]!, y[1]!, 1]));

function carried(steps: number): Float64Array {
  const y = Float64Array.from([1, 1, 0, 0]);
  growth(y, 2, steps);
  return y;
}

test("growth, a turn and a clock come out near their closed forms", () => {
  const [e, cos, sin, clock] = carried(40);
  expect(Math.abs((e ?? 0) / Math.exp(2) - 1)).toBeLessThan(1e-6);
  expect(Math.abs((cos ?? 0) - Math.cos(2))).toBeLessThan(1e-6);
  expect(Math.abs((sin ?? 0) - Math.sin(2))).toBeLessThan(1e-6);
  expect(Math.abs((clock ?? 0) - 2)).toBeLessThan(1e-12);
});

test("half the step has a sixteenth of the error: order 4", () => {
  const error = (steps: number) => Math.abs((carried(steps)[0] ?? 0) - Math.exp(2));
  const order = Math.log2(error(20) / error(40));
  expect(order).toBeGreaterThan(3.8);
  expect(order).toBeLessThan(4.2);
});

test("no span, no change", () => {
  const y = Float64Array.from([1, 2, 3, 4]);
  growth(y, 0, 5);
  expect([...y]).toEqual([1, 2, 3, 4]);
});
