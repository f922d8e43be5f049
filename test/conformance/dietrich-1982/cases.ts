import type { SourceCases } from "../case.js";

const quartz = { grainDensity: 2650, density: 1000, viscosity: 1.004e-3 };

export const dietrich: SourceCases = {
  source: "Dietrich, W. E., Water Resour. Res. 18(6):1615 (1982)",
  locator: "eq. 9, formula from memory, values computed from it",
  kind: "independent",
  seen: "recomputed",
  cases: [
    {
      id: "D-46.0.1mm",
      evaluates: "settling speed of a sphere, m/s",
      inputs: { diameter: 1e-4, ...quartz },
      printed: "7.461e-3",
      tolerance: { relative: 0.05, because: "another correlation of settling speed" },
      disagrees: "his fit is 6.4 % below at Re = 0.8",
    },
    {
      id: "D-46.0.5mm",
      evaluates: "settling speed of a sphere, m/s",
      inputs: { diameter: 5e-4, ...quartz },
      printed: "73.84e-3",
      tolerance: { relative: 0.05, because: "another correlation of settling speed" },
      disagrees: "his fit is 7.0 % below at Re = 39",
    },
    {
      id: "D-46.1mm",
      evaluates: "settling speed of a sphere, m/s",
      inputs: { diameter: 1e-3, ...quartz },
      printed: "154.9e-3",
      tolerance: { relative: 0.05, because: "another correlation of settling speed" },
    },
  ],
};
