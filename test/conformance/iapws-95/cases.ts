import type { CaseRow, SourceCases } from "../case.js";
import vectors from "./vectors.json" with { type: "json" };

const short = "the core uses the short formula for 0.1 MPa";

function rows(vector: (typeof vectors)[number]): readonly CaseRow[] {
  const { celsius } = vector;
  return [
    {
      id: `iapws-95.density.${celsius}`,
      evaluates: "density, kg/m³, at °C",
      inputs: { celsius },
      printed: vector.density,
      tolerance: { relative: 1e-6, because: short },
    },
    {
      id: `iapws-95.viscosity.${celsius}`,
      evaluates: "viscosity, µPa s, at °C",
      inputs: { celsius },
      printed: vector.viscosity,
      tolerance: { relative: 2e-4, because: short },
    },
    {
      id: `iapws-95.surface-tension.${celsius}`,
      evaluates: "surface tension, mN/m, at °C",
      inputs: { celsius },
      printed: vector.surfaceTension,
    },
  ];
}

export const iapws95: SourceCases = {
  source: "IAPWS-95, R12-08 and R1-76(2014) by python3-iapws 1.5.2",
  locator: "iapws-95/vectors.py",
  kind: "independent",
  seen: "derived",
  cases: vectors.flatMap(rows),
};
