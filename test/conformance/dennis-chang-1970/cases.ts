import type { SourceCases } from "../case.js";

export const dennisChang: SourceCases = {
  source: "Dennis, S. C. R.; Chang, G.-Z., J. Fluid Mech. 42:471 (1970)",
  locator: "steady drag at Re = 20, 40, from memory",
  kind: "independent",
  seen: "from-memory",
  cases: [
    {
      id: "D-54.20",
      evaluates: "drag coefficient of a cylinder",
      inputs: { reynolds: 20 },
      printed: "2.05",
      tolerance: {
        relative: 0.17,
        because: "correlations of cylinder drag differ from experiment by 6 to 17 % between Re = 20 and 100",
      },
    },
    {
      id: "D-54.40",
      evaluates: "drag coefficient of a cylinder",
      inputs: { reynolds: 40 },
      printed: "1.52",
      tolerance: {
        relative: 0.17,
        because: "correlations of cylinder drag differ from experiment by 6 to 17 % between Re = 20 and 100",
      },
    },
  ],
};
