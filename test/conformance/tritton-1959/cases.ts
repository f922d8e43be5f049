import type { SourceCases } from "../case.js";

export const tritton: SourceCases = {
  source: "Tritton, D. J., J. Fluid Mech. 6:547 (1959)",
  locator: "measured drag at Re = 20, 40, 100, from memory",
  kind: "published",
  seen: "from-memory",
  cases: [
    {
      id: "D-53.20",
      evaluates: "drag coefficient of a cylinder",
      inputs: { reynolds: 20 },
      printed: "2.22",
      tolerance: {
        relative: 0.17,
        because: "correlations of cylinder drag differ from experiment by 6 to 17 % between Re = 20 and 100",
      },
    },
    {
      id: "D-53.40",
      evaluates: "drag coefficient of a cylinder",
      inputs: { reynolds: 40 },
      printed: "1.48",
      tolerance: {
        relative: 0.17,
        because: "correlations of cylinder drag differ from experiment by 6 to 17 % between Re = 20 and 100",
      },
    },
    {
      id: "D-53.100",
      evaluates: "drag coefficient of a cylinder",
      inputs: { reynolds: 100 },
      printed: "1.25",
      tolerance: {
        relative: 0.17,
        because: "correlations of cylinder drag differ from experiment by 6 to 17 % between Re = 20 and 100",
      },
    },
  ],
};
