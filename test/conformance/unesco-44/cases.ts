import type { SourceCases } from "../case.js";

export const unesco: SourceCases = {
  source: "UNESCO Technical Papers in Marine Science 44 (1983), eq. 14",
  locator: "warsa.de/warsa/_sources/tutorial/water.rst.txt",
  kind: "published",
  seen: "quoted",
  cases: [
    {
      id: "W-06",
      evaluates: "density, kg/m³, at °C",
      inputs: { celsius: 20 },
      printed: "998.2063193824",
      tolerance: {
        relative: 1e-5,
        because:
          "another formulation of the same water: the formulations differ by 3e-6, the project asks 1e-5",
      },
    },
  ],
};
