import type { SourceCases } from "../case.js";

const inputs = { units: "us-1.49", diameter: 3, n: 0.015, slope: 0.002, discharge: 15, gravity: 32.2 };

export const automaticSolution: SourceCases = {
  source: "An automatically generated solution of a pipe problem",
  locator: "D = 36 in, n = 0.015, Q = 15 ft³/s",
  kind: "published",
  seen: "read",
  cases: [
    {
      id: "T5.pipe.mild",
      evaluates: "normal depth",
      inputs: inputs,
      printed: "2.17",
      disagrees: "true is 1.64 ft",
    },
    {
      id: "T5.pipe.steep",
      evaluates: "normal depth",
      inputs: { ...inputs, slope: 0.02 },
      printed: "1.06",
      disagrees: "true is 0.87 ft",
    },
    {
      id: "T5.pipe.critical",
      evaluates: "critical depth",
      inputs: inputs,
      printed: "1.21",
      disagrees: "true is 1.235 ft",
    },
  ],
};
