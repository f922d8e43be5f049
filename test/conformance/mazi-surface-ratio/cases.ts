import type { SourceCases } from "../case.js";

export const mazi: SourceCases = {
  source: "Mazi et al., mean-to-surface velocity ratio",
  locator: "synapsesocial.com/ar/papers/69eb0961553a5433e34b3ea2",
  kind: "published",
  seen: "read",
  cases: [
    { id: "V-10", evaluates: "mean over surface", inputs: { depthOverZ0: 1000 }, printed: "0.86" },
    {
      id: "V-17.5",
      evaluates: "mean over surface",
      inputs: { depthOverZ0: 5 / (8.61 * 5 ** -1.821) },
      printed: "0.620",
      kind: "analytic",
      tolerance: { absolute: 0.005, because: "the study neglects z0/h in its depth mean" },
    },
    {
      id: "V-17.10",
      evaluates: "mean over surface",
      inputs: { depthOverZ0: 10 / (8.61 * 10 ** -1.821) },
      printed: "0.773",
      kind: "analytic",
      tolerance: { absolute: 0.005, because: "the study neglects z0/h in its depth mean" },
    },
    {
      id: "V-17.20",
      evaluates: "mean over surface",
      inputs: { depthOverZ0: 20 / (8.61 * 20 ** -1.821) },
      printed: "0.842",
      kind: "analytic",
      tolerance: { absolute: 0.005, because: "the study neglects z0/h in its depth mean" },
    },
  ],
};
