import type { SourceCases } from "../case.js";

export const rantz: SourceCases = {
  source: "Rantz, S. E., USGS Water-Supply Paper 2175 (1982)",
  locator: "p. 137, from memory",
  kind: "published",
  seen: "from-memory",
  cases: [
    {
      id: "V-13",
      evaluates: "mean over surface",
      inputs: { depthOverZ0: 1000 },
      printed: "0.875",
      tolerance: { absolute: 0.025, because: "the range is 0.85 to 0.90" },
    },
  ],
};
