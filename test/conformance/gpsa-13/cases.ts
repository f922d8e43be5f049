import type { SourceCases } from "../case.js";

const poundPerCubicFoot = 0.45359237 / 0.3048 ** 3;

export const gpsa: SourceCases = {
  source: "GPSA Engineering Data Book, 13th ed.",
  locator: "Example 7-1, as quoted by github:CalebBell/fluids@091070e",
  kind: "published",
  seen: "quoted",
  cases: [
    {
      id: "D-40",
      evaluates: "settling speed of a sphere, ft/s",
      inputs: {
        diameter: 150e-6,
        grainDensity: 31.2 * poundPerCubicFoot,
        density: 2.07 * poundPerCubicFoot,
        viscosity: 1.2e-5,
      },
      printed: "0.46",
      tolerance: { absolute: 0.01, because: "the example reads its drag coefficient from a chart" },
    },
  ],
};
