import type { SourceCases } from "../case.js";

const ofC13 = { units: "us-1.49", width: 12, run: 2, discharge: 300, gravity: 32.2 };
const ofC14 = { units: "us-1.49", width: 12, discharge: 200, gravity: 32.2 };

export const hwang: SourceCases = {
  source: "Houghtalen et al., Fundamentals of Hydraulic Engineering Systems, quiz of ch. 6",
  locator: "items 41 and 44, read at coursepaper.com",
  kind: "published",
  seen: "read",
  cases: [
    { id: "C-13", evaluates: "critical depth", inputs: ofC13, printed: "2.34" },
    {
      id: "C-14",
      evaluates: "critical depth",
      inputs: ofC14,
      printed: "2.32",
      disagrees: "(q²/g)^(1/3) is 2.051 ft: the printed solution is of another problem",
    },
  ],
};
