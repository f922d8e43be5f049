import type { SourceCases } from "../case.js";

export const kell: SourceCases = {
  source: "Kell, G. S., J. Chem. Eng. Data 20:97 (1975)",
  locator: "formula and table values, 0 to 30 °C",
  kind: "published",
  seen: "recomputed",
  cases: [
    {
      id: "W-10.0",
      evaluates: "density, kg/m³, at °C",
      inputs: { celsius: 0 },
      printed: "999.840",
      tolerance: {
        relative: 1e-5,
        because:
          "another formulation of the same water: the formulations differ by 3e-6, the project asks 1e-5",
      },
    },
    {
      id: "W-10.4",
      evaluates: "density, kg/m³, at °C",
      inputs: { celsius: 4 },
      printed: "999.972",
      tolerance: {
        relative: 1e-5,
        because:
          "another formulation of the same water: the formulations differ by 3e-6, the project asks 1e-5",
      },
    },
    {
      id: "W-10.10",
      evaluates: "density, kg/m³, at °C",
      inputs: { celsius: 10 },
      printed: "999.700",
      tolerance: {
        relative: 1e-5,
        because:
          "another formulation of the same water: the formulations differ by 3e-6, the project asks 1e-5",
      },
    },
    {
      id: "W-10.15",
      evaluates: "density, kg/m³, at °C",
      inputs: { celsius: 15 },
      printed: "999.100",
      tolerance: {
        relative: 1e-5,
        because:
          "another formulation of the same water: the formulations differ by 3e-6, the project asks 1e-5",
      },
    },
    {
      id: "W-10.20",
      evaluates: "density, kg/m³, at °C",
      inputs: { celsius: 20 },
      printed: "998.204",
      tolerance: {
        relative: 1e-5,
        because:
          "another formulation of the same water: the formulations differ by 3e-6, the project asks 1e-5",
      },
    },
    {
      id: "W-10.25",
      evaluates: "density, kg/m³, at °C",
      inputs: { celsius: 25 },
      printed: "997.045",
      tolerance: {
        relative: 1e-5,
        because:
          "another formulation of the same water: the formulations differ by 3e-6, the project asks 1e-5",
      },
    },
    {
      id: "W-10.30",
      evaluates: "density, kg/m³, at °C",
      inputs: { celsius: 30 },
      printed: "995.647",
      tolerance: {
        relative: 1e-5,
        because:
          "another formulation of the same water: the formulations differ by 3e-6, the project asks 1e-5",
      },
    },
  ],
};
