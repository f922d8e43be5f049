import type { SourceCases } from "../case.js";

export const floatMethod: SourceCases = {
  source: "Float method",
  locator: "waycalculator.com, Mean River Velocity in Float Method",
  kind: "practice",
  seen: "read",
  cases: [
    {
      id: "V-14",
      evaluates: "mean over surface",
      inputs: { exponent: 6 },
      printed: "0.85",
      tolerance: {
        absolute: 0.01,
        because: "one unit of the last digit: a round coefficient for any stream",
      },
    },
  ],
};
