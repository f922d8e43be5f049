import type { SourceCases } from "../case.js";

export const wieselsberger: SourceCases = {
  source: "Wieselsberger 1921; Hoerner, Fluid-Dynamic Drag (1965)",
  locator: "plateau of cylinder drag, from memory",
  kind: "published",
  seen: "from-memory",
  cases: [
    {
      id: "D-55.1e4",
      evaluates: "drag coefficient of a cylinder",
      inputs: { reynolds: 1e4 },
      printed: "1.2",
      tolerance: { absolute: 0.05, because: "a plateau read off a chart" },
      disagrees: "Sucker and Brauer still climbs out of its dip near Re = 2000 here",
    },
    {
      id: "D-55.5e4",
      evaluates: "drag coefficient of a cylinder",
      inputs: { reynolds: 5e4 },
      printed: "1.2",
      tolerance: { absolute: 0.05, because: "a plateau read off a chart" },
    },
    {
      id: "D-55.1e5",
      evaluates: "drag coefficient of a cylinder",
      inputs: { reynolds: 1e5 },
      printed: "1.2",
      tolerance: { absolute: 0.05, because: "a plateau read off a chart" },
    },
    {
      id: "D-55.2e5",
      evaluates: "drag coefficient of a cylinder",
      inputs: { reynolds: 2e5 },
      printed: "1.2",
      tolerance: { absolute: 0.05, because: "a plateau read off a chart" },
    },
  ],
};
