import type { SourceCases } from "../case.js";

export const rushton: SourceCases = {
  source: "Rushton, Ward and Holdich, Solid-Liquid Filtration and Separation Technology (1996)",
  locator: "worked examples, as quoted by github:CalebBell/fluids@091070e",
  kind: "published",
  seen: "quoted",
  cases: [
    {
      id: "D-41",
      evaluates: "settling speed of a sphere, m/s",
      inputs: { diameter: 70e-6, grainDensity: 2600, density: 1000, viscosity: 1e-3 },
      printed: "4.06e-3",
      tolerance: { relative: 0.02, because: "the book uses Oseen's correction" },
    },
    {
      id: "D-42",
      evaluates: "settling speed of a sphere, m/s",
      inputs: { diameter: 50e-6, grainDensity: 2800, density: 1000, viscosity: 1e-3 },
      printed: "2.453e-3",
      tolerance: { relative: 0.015, because: "the spread of the drag correlations at this speed" },
      disagrees: "the book uses Stokes' law, without inertia, at Re = 0.12: the core is 3.4 % slower",
    },
  ],
};
