import type { CaseRow, SourceCases } from "../case.js";

const entries: readonly (readonly [part: string, word: string, least: string, greatest: string])[] = [
  ["material", "earth", "0.020", "0.020"],
  ["material", "rock cut", "0.025", "0.025"],
  ["material", "fine gravel", "0.024", "0.024"],
  ["material", "coarse gravel", "0.028", "0.028"],
  ["irregularity", "smooth", "0.000", "0.000"],
  ["irregularity", "minor", "0.005", "0.005"],
  ["irregularity", "moderate", "0.010", "0.010"],
  ["irregularity", "severe", "0.020", "0.020"],
  ["variation", "gradual", "0.000", "0.000"],
  ["variation", "alternating occasionally", "0.005", "0.005"],
  ["variation", "alternating frequently", "0.010", "0.015"],
  ["obstructions", "negligible", "0.000", "0.000"],
  ["obstructions", "minor", "0.010", "0.015"],
  ["obstructions", "appreciable", "0.020", "0.030"],
  ["obstructions", "severe", "0.040", "0.060"],
  ["vegetation", "low", "0.005", "0.010"],
  ["vegetation", "medium", "0.010", "0.025"],
  ["vegetation", "high", "0.025", "0.050"],
  ["vegetation", "very high", "0.050", "0.100"],
  ["meandering", "minor", "1.00", "1.00"],
  ["meandering", "appreciable", "1.15", "1.15"],
  ["meandering", "severe", "1.30", "1.30"],
];

const tolerance = { absolute: 1e-12, because: "an entry of a table is the printed number itself" };

export const cowanTableCases: SourceCases = {
  source: "Cowan 1956, table of roughness",
  locator: "every entry",
  kind: "published",
  seen: "quoted",
  cases: entries.flatMap(([part, word, min, max]) =>
    Object.entries({ min, max }).map(
      ([bound, printed]): CaseRow => ({
        id: `Cowan.${part}, ${word}, ${bound}`,
        evaluates: "entry of Cowan's table",
        inputs: { part, word, bound },
        printed,
        tolerance,
      }),
    ),
  ),
};
