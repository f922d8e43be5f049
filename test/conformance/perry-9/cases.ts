import type { SourceCases } from "../case.js";

export const perry: SourceCases = {
  source: "Perry's Chemical Engineers' Handbook, 9th ed.",
  locator: "Table 2-135, saturated liquid",
  kind: "published",
  seen: "read",
  cases: [
    {
      id: "W-28.280",
      evaluates: "viscosity, µPa s, at K",
      inputs: { kelvin: 280 },
      printed: "1433.7",
      tolerance: {
        relative: 2e-4,
        because: "the handbook differs from the IAPWS formulation at saturation by up to 1.1e-4",
      },
    },
    {
      id: "W-28.290",
      evaluates: "viscosity, µPa s, at K",
      inputs: { kelvin: 290 },
      printed: "1084.0",
      tolerance: {
        relative: 2e-4,
        because: "the handbook differs from the IAPWS formulation at saturation by up to 1.1e-4",
      },
    },
    {
      id: "W-28.300",
      evaluates: "viscosity, µPa s, at K",
      inputs: { kelvin: 300 },
      printed: "853.84",
      tolerance: {
        relative: 2e-4,
        because: "the handbook differs from the IAPWS formulation at saturation by up to 1.1e-4",
      },
    },
  ],
};
