import type { SourceCases } from "../case.js";

const inputs = { units: "us-1.486", width: 4, run: 3, depth: 1.454, n: 0.055, slope: 0.02, gravity: 32.2 };

export const fang: SourceCases = {
  source: "X. Fang, Open Channel Flow Calculator",
  locator: "example 1, as quoted by github:cran/iemisc@991a620",
  kind: "published",
  seen: "quoted",
  cases: [
    {
      id: "U-04.discharge",
      evaluates: "discharge of uniform flow",
      inputs: inputs,
      printed: "43.9882",
      tolerance: { absolute: 0.0001, because: "the list of check values allows the last digit" },
    },
    {
      id: "U-04.speed",
      evaluates: "mean speed in a section",
      inputs: inputs,
      printed: "3.6179",
      tolerance: { absolute: 0.0001, because: "the list of check values allows the last digit" },
    },
    { id: "U-04.froude", evaluates: "Froude number in a section", inputs: inputs, printed: "0.65" },
  ],
};
