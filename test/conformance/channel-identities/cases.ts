import type { SourceCases } from "../case.js";

const ofC18 = { units: "m", width: 4, discharge: 7 };
const ofC18v = { units: "m", run: 3, discharge: 7 };
const ofJ06 = { units: "m", width: 4, discharge: 20, depth: 0.5 };

export const channelIdentities: SourceCases = {
  source: "Identities of critical flow and of the jump",
  locator: "α Q² B/(g A³) = 1 and Q²/(gA) + Aȳ conserved",
  kind: "analytic",
  seen: "derived",
  cases: [
    {
      id: "C-18.rectangle-depth",
      evaluates: "critical depth over (q²/g)^(1/3)",
      inputs: ofC18,
      printed: "1",
      tolerance: { absolute: 1e-12, because: "exact" },
    },
    {
      id: "C-18.rectangle",
      evaluates: "least energy over critical depth",
      inputs: ofC18,
      printed: "1.5",
      tolerance: { absolute: 1e-12, because: "exact" },
    },
    {
      id: "C-18.v",
      evaluates: "least energy over critical depth",
      inputs: ofC18v,
      printed: "1.25",
      tolerance: { absolute: 1e-12, because: "exact" },
    },
    {
      id: "J-06",
      evaluates: "head lost in a jump over (y2 − y1)³/(4 y1 y2)",
      inputs: ofJ06,
      printed: "1",
      tolerance: { absolute: 1e-12, because: "exact" },
    },
  ],
};
