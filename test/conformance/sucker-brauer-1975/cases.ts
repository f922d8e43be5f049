import type { SourceCases } from "../case.js";

export const suckerBrauer: SourceCases = {
  source: "Sucker, D.; Brauer, H., Waerme- und Stoffuebertragung 8:149 (1975)",
  locator: "round values, as quoted at glama.ai/mcp/servers/gchen19/AnkusDrive",
  kind: "published",
  seen: "quoted",
  cases: [
    {
      id: "D-50.1",
      evaluates: "drag coefficient of a cylinder",
      inputs: { reynolds: 1 },
      printed: "10",
      tolerance: { relative: 0.05, because: "quoted as round values" },
    },
    {
      id: "D-50.100",
      evaluates: "drag coefficient of a cylinder",
      inputs: { reynolds: 100 },
      printed: "1.45",
      tolerance: { relative: 0.05, because: "quoted as round values" },
    },
    {
      id: "D-50.1e5",
      evaluates: "drag coefficient of a cylinder",
      inputs: { reynolds: 1e5 },
      printed: "1.2",
      tolerance: { relative: 0.05, because: "quoted as round values" },
    },
  ],
};
