import { describe, expect, test } from "vitest";
import { dimensionOf } from "./quantity/units.js";
import { editDistance, nearest, unitNamed } from "./spelling.js";

describe("editDistance", () => {
  // kitten to sitting is 3 in Wagner and Fischer's distance, the textbook example; a swap counts 1 (Damerau 1964). From memory.
  test.each([
    ["kitten", "sitting", 3],
    ["depht", "depth", 1],
    ["", "abc", 3],
    ["abc", "abc", 0],
  ])("%s to %s takes %d", (a, b, edits) => {
    expect(editDistance(a, b)).toBe(edits);
    expect(editDistance(b, a)).toBe(edits);
  });
});

describe("nearest", () => {
  const keys = ["depth", "surfaceSpeed", "bed", "d84"];
  test.each([
    ["dpeth", "depth"],
    ["surfacespeed", "surfaceSpeed"],
    ["surface_speed", "surfaceSpeed"],
    ["bedd", "bed"],
    ["temperature", undefined],
    ["x".repeat(10_000), undefined],
  ])("%s means %s", (word, meant) => {
    expect(nearest(word, keys)).toBe(meant);
  });
});

describe("unitNamed", () => {
  test.each([
    ["Feet", "ft"],
    ["inches", "in"],
    ["meters", "m"],
    ["°F", "degF"],
    ["cfs", "ft3/s"],
    ["fathoms", undefined],
    ["", undefined],
    ["constructor", undefined],
  ])("%s is %s", (name, unit) => {
    expect(unitNamed(name)).toBe(unit);
    expect(dimensionOf(unit) === undefined).toBe(unit === undefined);
  });
});
