import { describe, expect, test } from "vitest";
import { asin, asinh, atan2, cbrt, cos, exp, hypot, ln, ln1p, log10, raise, sin, tanh } from "./index.js";

/** Even steps over a range, the ends included. */
const over = (low: number, high: number, steps = 2000): readonly number[] =>
  Array.from({ length: steps + 1 }, (_, i) => low + ((high - low) * i) / steps);
const sizes = over(-300, 300).map((decade) => 1.7 * 10 ** decade);

/** The largest difference from the engine's own function, in units in the last place. */
function apart(ours: (x: number) => number, theirs: (x: number) => number, at: readonly number[]): number {
  const units = at.map((x) => {
    const expected = theirs(x);
    return Math.abs(ours(x) - expected) / (Math.abs(expected) * 2 ** -52 || 2 ** -1074);
  });
  return Math.max(...units);
}

type Function = (x: number) => number;

// Source: the engine that runs the tests; ECMAScript leaves these functions to it, and all have libraries of their own.
const compared: readonly (readonly [string, Function, Function, readonly number[]])[] = [
  ["exp", exp, Math.exp, over(-708, 709)],
  ["exp near 0", exp, Math.exp, over(-1, 1)],
  ["ln", ln, Math.log, sizes],
  ["ln near 1", ln, Math.log, over(0.5, 2)],
  ["log10", log10, Math.log10, sizes],
  ["ln1p", ln1p, Math.log1p, over(-0.99, 5)],
  ["ln1p near 0", ln1p, Math.log1p, over(-1e-9, 1e-9)],
  ["cbrt", cbrt, Math.cbrt, sizes],
  ["tanh", tanh, Math.tanh, over(-9, 9)],
  ["asinh", asinh, Math.asinh, over(-9, 9)],
  ["asin", asin, Math.asin, over(-1, 1)],
  ["raise 1.7", (x) => raise(x, 1.7), (x) => x ** 1.7, over(0.01, 100)],
  ["raise 1/6", (x) => raise(x, 1 / 6), (x) => x ** (1 / 6), over(0.01, 100)],
  ["raise -5", (x) => raise(x, -5), (x) => x ** -5, over(-9, -0.1)],
  ["hypot", (x) => hypot(x, 3), (x) => Math.hypot(x, 3), over(-9, 9)],
];

test.each(compared)("%s is the engine's to some units in the last place", (_, ours, theirs, at) => {
  expect(apart(ours, theirs, at)).toBeLessThan(9);
});

// near their zeros a relative difference says nothing
test.each([
  ["sin", sin, Math.sin],
  ["cos", cos, Math.cos],
] as const)("%s is the engine's to 2e-16", (_, ours, theirs) => {
  for (const x of over(-50, 50)) expect(Math.abs(ours(x) - theirs(x))).toBeLessThan(2.3e-16);
});

test("atan2 in every quadrant", () => {
  for (const angle of over(-3.1, 3.1)) {
    expect(atan2(Math.sin(angle), Math.cos(angle))).toBeCloseTo(angle, 14);
  }
  expect([atan2(0, 1), atan2(1, 0), atan2(0, -1), atan2(-1, 0)]).toEqual([
    0,
    Math.PI / 2,
    Math.PI,
    -Math.PI / 2,
  ]);
});

describe("exact where the value is", () => {
  test("whole powers of two and ten", () => {
    for (let k = -1022; k <= 1023; k++) expect(raise(2, k)).toBe(2 ** k);
    for (let k = 0; k <= 15; k++) expect(log10(10 ** k)).toBe(k);
    expect([cbrt(27), cbrt(-0.125), hypot(3, 4), exp(0), ln(1), raise(0, 0)]).toEqual([3, -0.5, 5, 1, 0, 1]);
  });

  test("the ends of the range", () => {
    const { POSITIVE_INFINITY: most, NEGATIVE_INFINITY: least, NaN: none } = Number;
    expect([exp(least), exp(most), exp(710), exp(-746)]).toEqual([0, most, most, 0]);
    expect([ln(0), ln(most), ln(-1)]).toEqual([least, most, none]);
    expect(ln(Number.MIN_VALUE)).toBeCloseTo(-1074 * Math.LN2, 12);
    expect([exp(none), ln(none), sin(none), tanh(none)]).toEqual([none, none, none, none]);
    expect([tanh(400), tanh(-400), raise(0, -0.5), raise(-8, 1 / 3)]).toEqual([1, -1, most, none]);
  });
});
