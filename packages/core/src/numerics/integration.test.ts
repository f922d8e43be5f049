import { describe, expect, test } from "vitest";
import { integrator, type Slope } from "./index.js";

const largest = (_: Float64Array, error: Float64Array) => Math.max(...error.map(Math.abs));
const state = (...values: readonly number[]) => Float64Array.from({ length: 4 }, (_, i) => values[i] ?? 0);

function carried(
  slope: Slope,
  from: Float64Array,
  span: number,
  tolerance = 1e-12,
  kink?: (y: Float64Array) => number,
) {
  let evaluations = 0;
  const counted: Slope = (y, out, at) => {
    evaluations++;
    slope(y, out, at);
  };
  integrator(counted, largest, kink).lay(from, span, tolerance, []);
  return { y: [...from], evaluations };
}

describe("closed forms to near the tolerance", () => {
  test("growth: e^s", () => {
    const { y, evaluations } = carried((q, out, at) => out.set([q[0]!, 0, 0, 0], at), state(1), 3);
    expect(Math.abs(y[0]! / Math.exp(3) - 1)).toBeLessThan(1e-11);
    expect(evaluations).toBeLessThan(500);
  });

  test("an oscillator over two turns: cos and −sin, energy kept", () => {
    const { y } = carried((q, out, at) => out.set([q[1]!, -q[0]!, 0, 0], at), state(1, 0), 4 * Math.PI);
    expect(Math.abs(y[0]! - 1)).toBeLessThan(1e-10);
    expect(Math.abs(y[1]!)).toBeLessThan(1e-10);
  });

  test("a fast decay towards a slow one: λ = 200", () => {
    // y' = −200 (y − cos s) − sin s has the solution cos s from y = 1; s is the second component
    const slope: Slope = (q, out, at) =>
      out.set([-200 * (q[0]! - Math.cos(q[1]!)) - Math.sin(q[1]!), 1, 0, 0], at);
    const { y } = carried(slope, state(1, 0), 2, 1e-10);
    expect(Math.abs(y[0]! - Math.cos(2))).toBeLessThan(1e-8);
  });

  test("a kink, |s − 0.3|: exact, and with less work when told of it", () => {
    const slope: Slope = (q, out, at) => out.set([Math.abs(q[1]! - 0.3), 1, 0, 0], at);
    const blind = carried(slope, state(0, 0), 1, 1e-12);
    const told = carried(slope, state(0, 0), 1, 1e-12, (q) => 0.3 - q[1]!);
    for (const { y } of [blind, told]) expect(Math.abs(y[0]! - (0.3 ** 2 + 0.7 ** 2) / 2)).toBeLessThan(1e-9);
    expect(told.evaluations).toBeLessThan(blind.evaluations);
  });

  test("a root-like kink, |s − 0.3|^1.11: exact, and with half the work when told of it", () => {
    const slope: Slope = (q, out, at) => out.set([Math.abs(q[1]! - 0.3) ** 1.11, 1, 0, 0], at);
    const blind = carried(slope, state(0, 0), 1, 1e-9);
    const told = carried(slope, state(0, 0), 1, 1e-9, (q) => q[1]! - 0.3);
    for (const { y } of [blind, told])
      expect(Math.abs(y[0]! - (0.3 ** 2.11 + 0.7 ** 2.11) / 2.11)).toBeLessThan(2e-8);
    expect(told.evaluations).toBeLessThan(blind.evaluations / 2);
  });

  test("a jump of the slope is passed", () => {
    const slope: Slope = (q, out, at) => out.set([q[1]! < 0.3 ? 1 : -2, 1, 0, 0], at);
    expect(Math.abs(carried(slope, state(0, 0), 1, 1e-10).y[0]! - (0.3 - 1.4))).toBeLessThan(1e-8);
  });
});

test("one step has an error of order 9: halving it gains about 2^9", () => {
  const error = (step: number) => {
    const y = state(1);
    integrator((q, out, at) => out.set([q[0]!, 0, 0, 0], at), largest).lay(y, step, 1e9, []);
    return Math.abs(y[0]! - Math.exp(step));
  };
  expect(Math.log2(error(1) / error(0.5))).toBeGreaterThan(8.5);
});

test("a tighter tolerance gives a smaller error", () => {
  const error = (tolerance: number) =>
    Math.abs(
      carried((q, out, at) => out.set([q[1]!, -q[0]!, 0, 0], at), state(1, 0), 20, tolerance).y[0]! -
        Math.cos(20),
    );
  expect(error(1e-9)).toBeLessThan(error(1e-4));
  expect(error(1e-12)).toBeLessThan(1e-9);
});

describe("a course that was laid out", () => {
  const slope: Slope = (q, out, at) =>
    out.set([Math.abs(q[1]! - 0.3) ** 1.11 * Math.cos(q[0]!), 1, 0, 0], at);
  const course: number[] = [];
  const { lay, follow } = integrator(slope, largest, (q) => q[1]! - 0.3);
  const laid = state(0.1, 0);
  lay(laid, 1, 1e-9, course);

  test("takes its start to the same end, through the same places", () => {
    const done: number[] = [];
    const y = state(0.1, 0);
    follow(y, 1, course, (at) => done.push(at));
    expect(Math.abs(y[0]! - laid[0]!)).toBeLessThan(1e-15);
    expect(done.length).toBe(course.length / 2);
    expect(Math.abs(done.at(-1)! - 1)).toBeLessThan(1e-12);
  });

  test("is smooth: a nearby start ends as near as the slope says", () => {
    // dy/ds = a(s) cos y: sin y goes like tanh of the same integral, so that the end moves by cos(end)/cos(start) of the start
    const end = (start: number): number => {
      const y = state(start, 0);
      follow(y, 1, course);
      return y[0]!;
    };
    const moved = (end(0.1 + 1e-7) - end(0.1 - 1e-7)) / 2e-7;
    expect(Math.abs(moved / (Math.cos(end(0.1)) / Math.cos(0.1)) - 1)).toBeLessThan(1e-7);
  });
});

describe("the span", () => {
  test("of 0 changes nothing", () => {
    expect(carried((_, out) => out.fill(1), state(1, 2), 0).y).toEqual([1, 2, 0, 0]);
  });

  test.each([-1, Number.NaN, Number.POSITIVE_INFINITY])("of %d is refused", (span) => {
    expect(() => carried((_, out) => out.fill(1), state(1), span)).toThrow("span must be 0 or more");
  });

  test("in two parts gives the same as in one", () => {
    const slope: Slope = (q, out, at) => out.set([Math.cos(q[1]!) * q[0]!, 1, 0, 0], at);
    const y = state(1, 0);
    const carrier = integrator(slope, largest);
    carrier.lay(y, 0.7, 1e-12, []);
    carrier.lay(y, 1.3, 1e-12, []);
    expect(Math.abs(y[0]! - Math.exp(Math.sin(2)))).toBeLessThan(1e-10);
  });
});

test("a slope that is not finite is refused, and does not run for ever", () => {
  expect(() => carried((_, out) => out.fill(Number.NaN), state(1), 1)).toThrow(
    "slope must be finite, got NaN",
  );
});

test("a slope without bound at one point is passed, and does not run for ever", () => {
  // d√s = 1/(2√s): from 0 the slope is without bound, but the integral is not
  const slope: Slope = (q, out, at) => out.set([0.5 / Math.sqrt(Math.abs(q[1]! - 0.25) + 1e-9), 1, 0, 0], at);
  const { y, evaluations } = carried(slope, state(0, 0), 1, 1e-9);
  const arc = (x: number) => Math.sqrt(x + 1e-9) - Math.sqrt(1e-9);
  expect(Math.abs(y[0]! - arc(0.25) - arc(0.75))).toBeLessThan(1e-6);
  expect(evaluations).toBeLessThan(5000);
});
