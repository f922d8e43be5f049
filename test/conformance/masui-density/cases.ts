import type { SourceCases } from "../case.js";

export const masui: SourceCases = {
  source: "Masui, Fujii and Takenaka, Metrologia, absolute density at 16 °C",
  locator: "abstract, at discovery.researcher.life",
  kind: "published",
  seen: "read",
  cases: [
    {
      id: "W-11",
      evaluates: "density, kg/m³, at °C",
      inputs: { celsius: 16 },
      printed: "998.9468",
      tolerance: {
        absolute: 0.001,
        because: "the uncertainty of 0.0006 and the printed digits of the tables",
      },
      disagrees:
        "the core is 0.0013 kg/m³ below this single measurement; the recommended table of 2001 is 0.0009 below it",
    },
  ],
};
