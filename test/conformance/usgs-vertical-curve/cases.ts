import type { CaseRow, SourceCases } from "../case.js";

/** Depth below the surface over depth. */
export const fractions: readonly number[] = [0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95];
/** Speed over the mean, as printed. */
export const printed: readonly string[] =
  "1.160 1.160 1.149 1.130 1.108 1.067 1.020 0.953 0.871 0.746 0.648".split(" ");
export const speeds: readonly number[] = printed.map(Number);

const curve: readonly CaseRow[] = fractions.map((fraction, n) => ({
  id: `V-01.${fraction}`,
  evaluates: "log law nearest to the list, speed over mean",
  inputs: { fractions, speeds, fraction },
  printed: printed[n] ?? "",
  disagrees: "the standard curve is no log law: up to 0.018 of the mean from the nearest one",
}));

export const verticalCurve: SourceCases = {
  source: "Hulsing, Smith and Cobb, USGS WSP 1869-C (1966); Rantz, WSP 2175 (1982)",
  locator: "table 2, from memory",
  kind: "published",
  seen: "from-memory",
  cases: [
    ...curve,
    {
      id: "V-01.mean",
      evaluates: "mean of a measured list",
      inputs: { fractions, speeds },
      printed: "1",
      tolerance: { absolute: 0.008, because: "the list averages to 1 within 0.8 % by the trapezoid rule" },
    },
  ],
};
