import type { SourceCases } from "../case.js";

export const nezuNakagawa: SourceCases = {
  source: "Nezu, I.; Nakagawa, H., Turbulence in Open-Channel Flows (1993)",
  locator: "universal functions of intensity; values computed from them",
  kind: "analytic",
  seen: "recomputed",
  cases: [
    {
      id: "V-35.0.1",
      evaluates: "turbulence along over u*",
      inputs: { relativeHeight: 0.1 },
      printed: "2.0811",
    },
    {
      id: "V-35.0.5",
      evaluates: "turbulence along over u*",
      inputs: { relativeHeight: 0.5 },
      printed: "1.3950",
    },
    {
      id: "V-35.0.9",
      evaluates: "turbulence along over u*",
      inputs: { relativeHeight: 0.9 },
      printed: "0.9351",
    },
    { id: "V-35.energy", evaluates: "turbulent energy over u*² at the bed", inputs: {}, printed: "4.780" },
  ],
};
