import type { CaseRow, SourceCases } from "../case.js";
import type { SettledQuantity } from "../evaluations-drift.js";
import vectors from "./vectors.json" with { type: "json" };

const quantities: readonly SettledQuantity[] = [
  "drift speed, m/s",
  "height of the sinker, m",
  "lean, degrees",
  "excess, m/s",
  "tow, N",
  "load, N",
  "draft, m",
];

/** Printed digits of the quantities, in order. */
const rows = [
  {
    id: "K-20",
    rig: { law: "log", surfaceSpeed: 0.9144, held: 0 },
    printed: "0.862118 0.458387 4.05331 0.068944 6.3701e-5 1.563208e-3 3.02811e-3",
  },
  {
    id: "K-21",
    rig: { law: "mixing-layer", surfaceSpeed: 0.9144, held: 0 },
    printed: "0.771822 0.499018 24.43812 0.205401 4.67295e-4 1.528259e-3 2.98682e-3",
  },
  {
    id: "K-22",
    rig: { law: "power", surfaceSpeed: 1.2, held: 0 },
    printed: "1.143265 0.458735 4.61191 0.073589 7.5004e-5 1.562867e-3 3.02771e-3",
  },
  {
    id: "K-23",
    rig: { law: "mixing-layer", surfaceSpeed: 0.9144, held: 0.5e-3 },
    printed: "0.743186 0.485550 19.78834 0.191965 1.87632e-4 1.579967e-3 3.04791e-3",
  },
];

const misprint =
  "a third implementation gives 1.876314e-4 as the core does: the last printed digit is one too high";

export const wholeRig: SourceCases = {
  source: "Two separate implementations of the settled rig",
  locator: "agreed digits",
  kind: "independent",
  seen: "derived",
  cases: rows.flatMap(({ id, rig, printed }) =>
    printed.split(" ").map(
      (digits, n): CaseRow => ({
        id: `${id}.${quantities[n]}`,
        evaluates: "settled rig",
        inputs: { ...rig, quantity: quantities[n] ?? "" },
        printed: digits,
        ...(id === "K-23" && quantities[n] === "tow, N" ? { disagrees: misprint } : {}),
      }),
    ),
  ),
};

const closeTo = { relative: 1e-7, because: "the tow is a small difference of large forces" };

export const wholeRigByScipy: SourceCases = {
  source: "The settled rig by scipy 1.10.1, DOP853 at 1e-12",
  locator: "whole-rig/vectors.py",
  kind: "independent",
  seen: "derived",
  cases: vectors.flatMap(({ id, rig, values }) =>
    Object.entries(values).map(
      ([quantity, printed]): CaseRow => ({
        id: `scipy-${id}.${quantity}`,
        evaluates: "settled rig",
        inputs: { ...rig, quantity },
        printed,
        tolerance: closeTo,
      }),
    ),
  ),
};
