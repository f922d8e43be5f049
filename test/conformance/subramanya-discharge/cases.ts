import type { SourceCases } from "../case.js";

const notes = {
  stations: [0, 1, 3, 5, 7, 9, 11, 12],
  depths: [0, 1.1, 2, 2.5, 2, 1.7, 1, 0],
  turns: [0, 39, 58, 112, 90, 45, 30, 0],
  seconds: [100, 100, 100, 150, 150, 100, 100, 100],
};
const evaluates = "discharge of field notes";

export const subramanyaDischarge: SourceCases = {
  source: "Subramanya, Engineering Hydrology, example 4.1",
  locator: "example 4.1, and the same notes by two other rules",
  kind: "analytic",
  seen: "derived",
  cases: [
    {
      id: "Q-01",
      evaluates,
      inputs: { ...notes, rule: "triangle" },
      printed: "6.45",
      kind: "published",
      seen: "recomputed",
    },
    {
      id: "Q-01.end-width",
      evaluates: "width of the first panel inside the edge",
      inputs: { ...notes, rule: "triangle" },
      printed: "2.0",
      kind: "published",
      seen: "recomputed",
    },
    { id: "Q-01.recomputed", evaluates, inputs: { ...notes, rule: "triangle" }, printed: "6.4531" },
    { id: "T7.half-spacing", evaluates, inputs: { ...notes, rule: "half-spacing" }, printed: "6.236" },
    { id: "Q-03", evaluates, inputs: { ...notes, rule: "mean-section" }, printed: "6.0052" },
  ],
};
