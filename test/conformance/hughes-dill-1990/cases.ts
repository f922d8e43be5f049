import type { SourceCases } from "../case.js";

const fish = { preyMillimetres: 6, fishCentimetres: 20 };

export const hughesDill: SourceCases = {
  source: "Hughes, N. F.; Dill, L. M., Can. J. Fish. Aquat. Sci. 47:2039 (1990)",
  locator: "reaction and capture distance, formulas as quoted in public code, values computed from them",
  kind: "analytic",
  seen: "quoted",
  cases: [
    { id: "F-01", evaluates: "reaction distance, cm", inputs: fish, printed: "70.6813" },
    {
      id: "F-02",
      evaluates: "capture distance, cm",
      inputs: { ...fish, speed: 0.3, greatestSpeed: 0.9 },
      printed: "66.6389",
    },
    {
      id: "F-02.too fast",
      evaluates: "capture distance, cm",
      inputs: { ...fish, speed: 0.9, greatestSpeed: 0.9 / 1.005 },
      printed: "0.0000000",
    },
  ],
};
