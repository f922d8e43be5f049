/** Drifts that cannot be computed, or not in one call. */

import type { Hostile } from "./row.js";

export const withFish: Hostile = {
  name: "a fish above the surface",
  change: (b) => {
    b.fish = { holdingHeight: { value: 9, unit: "ft" } };
  },
  status: 422,
  path: "/fish/holdingHeight",
  expected: "holding height: from 0 to 0.9144 m",
  // 9 × 0.3048
  received: "2.7432 m",
};

export const inDrift: readonly Hostile[] = [
  {
    name: "milliseconds, which are no unit here",
    change: (b) => {
      b.timeStep = { value: 1, unit: "ms" };
    },
    status: 400,
    path: "/timeStep/unit",
    expected: "one of s, min",
  },
  {
    name: "more work than one call may ask for",
    change: (b) => {
      b.duration = { value: 10, unit: "min" };
      b.timeStep = { value: 0.005, unit: "s" };
    },
    status: 422,
    path: "/timeStep",
    expected: "at most 1000000 units of work",
  },
  {
    name: "a nymph that lands farther off than the line is long",
    change: (b) => {
      b.cast = { sinkerDownstream: { value: 20, unit: "ft" } };
    },
    status: 422,
    path: "/cast",
    expected: "distance from the float to the lowest sinker",
  },
  {
    name: "a window upside down",
    change: (b) => {
      b.window = { low: { value: 2, unit: "ft" }, high: { value: 1, unit: "ft" } };
    },
    status: 422,
    path: "/window/high",
    expected: "upper edge of the window",
  },
];
