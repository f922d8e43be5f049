import type { SourceCases } from "../case.js";

const evaluates = "mixing layer, mean over u*";

export const katul: SourceCases = {
  source: "Katul et al., Water Resour. Res. 38(11):1250 (2002)",
  locator: "depth mean over shear velocity; formula from memory, values computed from it",
  kind: "analytic",
  seen: "from-memory",
  cases: [
    { id: "R-20.katul", evaluates, inputs: { submergence: 0.5 }, printed: "1.677" },
    { id: "R-21.katul", evaluates, inputs: { submergence: 1 }, printed: "2.548" },
    { id: "katul.two-stones", evaluates, inputs: { submergence: 2 }, printed: "4.500000000000" },
    { id: "R-23.katul", evaluates, inputs: { submergence: 5 }, printed: "7.086" },
  ],
};
