/** What counts as a difference between two hosts. */

import { describe, expect, test } from "vitest";
import { difference } from "./difference.js";
import { requests } from "./exchange.js";

const settled = requests.find(({ name }) => name.startsWith("settleRig: "))!;
const drifted = requests.find(({ name }) => name.startsWith("driftRig: "))!;
const length = (value: number, more = {}) =>
  JSON.stringify({ lean: { value, unit: "m" }, depth: { value: 1, unit: "m" }, ...more });

describe("a difference", () => {
  test.each([
    ["a digit too many", length(0.5), length(0.5 + 3e-12)],
    ["another word", length(0.5, { regime: "hanging" }), length(0.5, { regime: "drowned" })],
    ["a key more", length(0.5), length(0.5, { more: 1 })],
    ["nothing instead of nought", length(0, { n: 0 }), length(0, { n: null })],
    ["a list instead of its items", length(0, { n: [1, 2] }), length(0, { n: [1, 3] })],
    ["a number without a unit", length(0, { n: 1e-9 }), length(0, { n: 1.0001e-9 })],
    ["a residual that is none", length(0, { residual: 1e-12 }), length(0, { residual: 1e-3 })],
    ["no body", length(0.5), ""],
  ])("%s", (_name, a, b) => {
    expect(difference(settled, a, b)).toBeDefined();
    expect(difference(settled, a, a)).toBeUndefined();
  });
});

describe("no difference", () => {
  test.each([
    ["the twelfth digit", length(0.123456789012), length(0.123456789013)],
    ["noise beside a length of 1 m", length(1e-14), length(-3e-14)],
    ["what is left of an equation", length(0, { residual: 1e-13 }), length(0, { residual: 3e-13 })],
    ["the order of keys", '{"a":1,"b":2}', '{"b":2,"a":1}'],
  ])("%s", (_name, a, b) => {
    expect(difference(settled, a, b)).toBeUndefined();
  });
});

test("a marched drift is held to less", () => {
  expect(difference(drifted, length(0.5), length(0.5 + 1e-6))).toBeUndefined();
  expect(difference(settled, length(0.5), length(0.5 + 1e-6))).toBeDefined();
  expect(difference(drifted, length(0.5), length(0.5 + 1e-4))).toBeDefined();
});
