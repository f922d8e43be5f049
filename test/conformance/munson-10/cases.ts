import type { SourceCases } from "../case.js";

const inputs = { units: "us-1.49", width: 12, run: 1.19175359259421, depth: 5, n: 0.03, slope: 0.0014 };

export const munson: SourceCases = {
  source: "Munson et al., Fundamentals of Fluid Mechanics",
  locator: "example 10.3, from memory, its inputs give its output",
  kind: "published",
  seen: "recomputed",
  cases: [
    { id: "U-06.area", evaluates: "area of a section", inputs: inputs, printed: "89.8" },
    {
      id: "U-06.perimeter",
      evaluates: "wetted perimeter",
      inputs: inputs,
      printed: "27.6",
      tolerance: { absolute: 0.05, because: "half of the last digit" },
    },
    {
      id: "U-06.n030",
      evaluates: "discharge of uniform flow",
      inputs: inputs,
      printed: "366",
      tolerance: { relative: 0.003, because: "10.98/n was rounded on the way" },
    },
    {
      id: "U-06.n012",
      evaluates: "discharge of uniform flow",
      inputs: { ...inputs, n: 0.012 },
      printed: "915",
      tolerance: { relative: 0.003, because: "10.98/n was rounded on the way" },
    },
  ],
};
