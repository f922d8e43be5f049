import type { SourceCases } from "../case.js";

export const tanaka: SourceCases = {
  source: "Tanaka, M. et al., Metrologia 38:301 (2001)",
  locator: "formula values printed at connorb.github.io/preMetabolizer/reference/calc_water_density.html",
  kind: "published",
  seen: "quoted",
  cases: [
    {
      id: "W-01",
      evaluates: "density, kg/m³, at °C",
      inputs: { celsius: 0 },
      printed: "999.8428",
      tolerance: {
        relative: 1e-5,
        because:
          "another formulation of the same water: the formulations differ by 3e-6, the project asks 1e-5",
      },
    },
    {
      id: "W-03",
      evaluates: "density, kg/m³, at °C",
      inputs: { celsius: 15 },
      printed: "999.1026",
      tolerance: {
        relative: 1e-5,
        because:
          "another formulation of the same water: the formulations differ by 3e-6, the project asks 1e-5",
      },
    },
    {
      id: "W-04",
      evaluates: "density, kg/m³, at °C",
      inputs: { celsius: 20 },
      printed: "998.2067",
      tolerance: {
        relative: 1e-5,
        because:
          "another formulation of the same water: the formulations differ by 3e-6, the project asks 1e-5",
      },
    },
    {
      id: "W-05",
      evaluates: "density, kg/m³, at °C",
      inputs: { celsius: 30 },
      printed: "995.6488",
      tolerance: {
        relative: 1e-5,
        because:
          "another formulation of the same water: the formulations differ by 3e-6, the project asks 1e-5",
      },
    },
  ],
};
